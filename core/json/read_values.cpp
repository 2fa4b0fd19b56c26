// How ReadArchive takes single values, and the bounds it holds them to.
#include <algorithm>

#include "core/json/kind_name.hpp"
#include "core/json/nearest_name.hpp"
#include "core/json/number_text.hpp"
#include "core/json/pattern.hpp"
#include "core/json/pointer.hpp"
#include "core/json/problem_codes.hpp"
#include "core/json/read_archive.hpp"
#include "core/json/shown.hpp"
#include "core/json/utf8.hpp"

namespace loam::json {

namespace {

std::string joined(std::span<const std::string_view> names)
{
    std::string text;
    for (const std::string_view name : names) {
        text += text.empty() ? "" : ", ";
        text += name;
    }
    return text;
}

std::string shown_node(const Node& node)
{
    const bool scalar = node.kind == Kind::string || node.kind == Kind::number;
    return scalar ? shown(node.text) : std::string(kind_name(node.kind));
}

bool same_constant(const Node& found, const Node& expected)
{
    if (found.kind == Kind::number && expected.kind == Kind::number) {
        return double_of(found.text) == double_of(expected.text);
    }
    return found == expected;
}

} // namespace

void ReadArchive::fixed(Key key, const Node& value)
{
    const Node* const found = member(key, Need::required, value.kind);
    if (found != nullptr && !same_constant(*found, value)) {
        add(pointer_to(levels_.back().pointer, key.name), problem::wrong_constant,
            {shown_node(value), shown_node(*found)});
    }
}

bool ReadArchive::within(const std::string& where, std::string_view literal, double value, const Bounds& bounds)
{
    std::string_view code;
    if (value > bounds.max) {
        code = problem::above_maximum;
    } else if (bounds.exclusive_min && value <= bounds.min) {
        code = problem::not_above;
    } else if (value < bounds.min) {
        code = problem::below_minimum;
    } else {
        return true;
    }
    add(where, code, {shown(literal), number_text(bounds.min), number_text(bounds.max)});
    return false;
}

// The number as written, where it is there and within its bounds.
const Node* ReadArchive::number_member(Key key, Need need, const Bounds& bounds)
{
    const Node* const found = member(key, need, Kind::number);
    if (found == nullptr) {
        return nullptr;
    }
    const auto value = double_of(found->text);
    return value && within(pointer_to(levels_.back().pointer, key.name), found->text, *value, bounds) ? found : nullptr;
}

void ReadArchive::on_number(Key key, Need need, std::optional<double>& value, Bounds bounds)
{
    const Node* const found = number_member(key, need, bounds);
    value = found == nullptr ? std::nullopt : double_of(found->text);
    if (value) {
        *value += 0.0; // -0 becomes 0
    }
}

// The bounds come first: a number beyond every integer is above the maximum, not "not whole".
void ReadArchive::on_integer(Key key, Need need, std::optional<std::int64_t>& value, Bounds bounds)
{
    const Node* const found = number_member(key, need, bounds);
    value = found == nullptr ? std::nullopt : integer_of(found->text);
    if (found != nullptr && !value) {
        add(pointer_to(levels_.back().pointer, key.name), problem::not_whole, {shown(found->text)});
    }
}

void ReadArchive::on_decimal(Key key, Need need, std::optional<Decimal>& value, Bounds bounds)
{
    const Node* const found = number_member(key, need, bounds);
    value = found == nullptr ? std::nullopt : Decimal::parse(found->text);
    if (found != nullptr && !value) {
        add(pointer_to(levels_.back().pointer, key.name), problem::not_plain_decimal, {shown(found->text)});
    }
}

bool ReadArchive::text_fits(const std::string& where, const std::string& text, const TextRule& rule)
{
    const std::size_t length = code_points(text);
    if (length < rule.min_length) {
        add(where, problem::too_short, {std::to_string(length), std::to_string(rule.min_length)});
    } else if (length > rule.max_length) {
        add(where, problem::too_long, {std::to_string(length), std::to_string(rule.max_length)});
    } else if (has_control_character(text)) {
        add(where, problem::control_character, {});
    } else if (!rule.pattern.empty() && !matches(rule.pattern, text)) {
        add(where, problem::pattern, {shown(text), std::string(rule.pattern)});
    } else {
        return true;
    }
    return false;
}

void ReadArchive::on_text(Key key, Need need, std::optional<std::string>& value, TextRule rule)
{
    value.reset();
    const Node* const found = member(key, need, Kind::string);
    if (found != nullptr && text_fits(pointer_to(levels_.back().pointer, key.name), found->text, rule)) {
        value = found->text;
    }
}

void ReadArchive::on_flag(Key key, Need need, std::optional<bool>& value)
{
    value.reset();
    if (const Node* const found = member(key, need, Kind::boolean)) {
        value = found->boolean;
    }
}

std::optional<std::size_t> ReadArchive::index_of(const std::string& where, const Node& node,
                                                 std::span<const std::string_view> names)
{
    const auto name = std::find(names.begin(), names.end(), node.text);
    if (name != names.end()) {
        return static_cast<std::size_t>(name - names.begin());
    }
    std::vector<std::string> args{shown(node.text), joined(names)};
    if (const auto nearest = nearest_name(node.text, names)) {
        args.emplace_back(*nearest);
    }
    add(where, problem::unknown_choice, std::move(args));
    return std::nullopt;
}

void ReadArchive::on_choice(Key key, Need need, std::optional<std::size_t>& index,
                            std::span<const std::string_view> names)
{
    index.reset();
    if (const Node* const found = member(key, need, Kind::string)) {
        index = index_of(pointer_to(levels_.back().pointer, key.name), *found, names);
    }
}

void ReadArchive::on_choices(Key key, std::vector<std::size_t>& indices, std::span<const std::string_view> names,
                             std::size_t min_items)
{
    indices.clear();
    const Node* const found = list_member(key, {min_items, names.size()});
    if (found == nullptr) {
        return;
    }
    const std::string where = pointer_to(levels_.back().pointer, key.name);
    for (std::size_t i = 0; i < found->items.size(); ++i) {
        const Node& item = found->items[i];
        const std::string item_where = pointer_to(where, i);
        if (!is_kind(item_where, item, Kind::string)) {
            continue;
        }
        const auto index = index_of(item_where, item, names);
        if (index && std::find(indices.begin(), indices.end(), *index) != indices.end()) {
            add(item_where, problem::repeated_choice, {item.text});
        } else if (index) {
            indices.push_back(*index);
        }
    }
}

void ReadArchive::on_texts(Key key, std::vector<std::string>& values, TextRule each, ListRule rule)
{
    values.clear();
    const Node* const found = list_member(key, rule);
    if (found == nullptr) {
        return;
    }
    const std::string where = pointer_to(levels_.back().pointer, key.name);
    for (std::size_t i = 0; i < found->items.size(); ++i) {
        const Node& item = found->items[i];
        const std::string item_where = pointer_to(where, i);
        if (is_kind(item_where, item, Kind::string) && text_fits(item_where, item.text, each)) {
            values.push_back(item.text);
        }
    }
}

} // namespace loam::json
