#include "core/json/write_archive.hpp"

#include <cassert>

namespace loam::json {

WriteArchive::WriteArchive()
{
    levels_.push_back({"", Node::object()});
}

Node WriteArchive::finish()
{
    assert(levels_.size() == 1);
    return take().node;
}

WriteArchive::Level WriteArchive::take()
{
    Level level = std::move(levels_.back());
    levels_.pop_back();
    return level;
}

void WriteArchive::put(Key key, Node value)
{
    levels_.back().node.add(std::string(key.name), std::move(value));
}

void WriteArchive::fixed(Key key, const Node& value)
{
    put(key, value);
}

void WriteArchive::extras(Extras& extras)
{
    for (const auto& [key, value] : extras) {
        assert(key.substr(0, 2) == "x_");
        put({key, {}}, value);
    }
}

void WriteArchive::on_number(Key key, Need, std::optional<double>& value, Bounds)
{
    if (value) {
        put(key, Node::of(*value));
    }
}

void WriteArchive::on_integer(Key key, Need, std::optional<std::int64_t>& value, Bounds)
{
    if (value) {
        put(key, Node::of(*value));
    }
}

void WriteArchive::on_decimal(Key key, Need, std::optional<Decimal>& value, Bounds)
{
    if (value) {
        put(key, Node::literal(value->text()));
    }
}

void WriteArchive::on_text(Key key, Need, std::optional<std::string>& value, TextRule)
{
    if (value) {
        put(key, Node::of(std::string_view(*value)));
    }
}

void WriteArchive::on_flag(Key key, Need, std::optional<bool>& value)
{
    if (value) {
        put(key, Node::of(*value));
    }
}

void WriteArchive::on_choice(Key key, Need, std::optional<std::size_t>& index, std::span<const std::string_view> names)
{
    if (index) {
        assert(*index < names.size());
        put(key, Node::of(names[*index]));
    }
}

void WriteArchive::on_choices(Key key, std::vector<std::size_t>& indices, std::span<const std::string_view> names,
                              std::size_t)
{
    if (indices.empty()) {
        return;
    }
    Node list = Node::array();
    for (const std::size_t index : indices) {
        assert(index < names.size());
        list.add(Node::of(names[index]));
    }
    put(key, std::move(list));
}

void WriteArchive::on_texts(Key key, std::vector<std::string>& values, TextRule, ListRule)
{
    if (values.empty()) {
        return;
    }
    Node list = Node::array();
    for (const std::string& value : values) {
        list.add(Node::of(std::string_view(value)));
    }
    put(key, std::move(list));
}

bool WriteArchive::begin_object(Key key, Need need, bool given)
{
    if (need == Need::optional && !given) {
        return false;
    }
    levels_.push_back({std::string(key.name), Node::object()});
    return true;
}

void WriteArchive::end_object()
{
    Level level = take();
    levels_.back().node.add(std::move(level.key), std::move(level.node));
}

std::size_t WriteArchive::begin_list(Key key, std::size_t size, ListRule rule)
{
    levels_.push_back({std::string(key.name), Node::array(), rule.min_items > 0});
    return size;
}

bool WriteArchive::begin_item(std::size_t)
{
    levels_.push_back({"", Node::object()});
    return true;
}

void WriteArchive::end_item()
{
    Level level = take();
    levels_.back().node.add(std::move(level.node));
}

void WriteArchive::end_list()
{
    Level level = take();
    if (!level.node.items.empty() || level.keep_if_empty) {
        levels_.back().node.add(std::move(level.key), std::move(level.node));
    }
}

} // namespace loam::json
