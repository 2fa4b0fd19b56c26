// The frame of reading: objects, lists, keys and problems. Values are read in read_values.cpp.
#include "core/json/read_archive.hpp"

#include <algorithm>
#include <cassert>

#include "core/json/kind_name.hpp"
#include "core/json/nearest_name.hpp"
#include "core/json/pointer.hpp"
#include "core/json/problem_codes.hpp"
#include "core/json/shown.hpp"

namespace loam::json {

namespace {

bool is_extra(std::string_view key)
{
    return key.substr(0, 2) == "x_";
}

} // namespace

bool ReadArchive::Level::knows(std::string_view key) const
{
    return std::find(known.begin(), known.end(), key) != known.end();
}

ReadArchive::ReadArchive(const Node& root)
{
    push(&root, "");
    if (!is_kind("", root, Kind::object)) {
        levels_.back().node = &nothing_;
    }
}

Problems ReadArchive::finish()
{
    assert(levels_.size() == 1);
    pop_object();
    // What follows from there being no object at all would only repeat it.
    const bool no_object =
        !problems_.empty() && problems_.front().where.empty() && problems_.front().code == problem::wrong_type;
    if (no_object) {
        problems_.resize(1);
        not_listed_ = 0;
    }
    if (not_listed_ > 0) {
        problems_.push_back({"", std::string(problem::more_problems), {std::to_string(not_listed_)}});
    }
    return std::move(problems_);
}

void ReadArchive::add(const std::string& where, std::string_view code, std::vector<std::string> args)
{
    if (problems_.size() < most_listed) {
        problems_.push_back({where, std::string(code), std::move(args)});
    } else {
        ++not_listed_;
    }
}

void ReadArchive::refuse(std::string_view key, std::string_view code, std::vector<std::string> args)
{
    const std::string& pointer = levels_.back().pointer;
    add(key.empty() ? pointer : pointer_to(pointer, key), code, std::move(args));
}

void ReadArchive::push(const Node* node, std::string pointer)
{
    levels_.push_back({node, std::move(pointer), {}, false});
}

void ReadArchive::pop_object()
{
    check_unknown_keys(levels_.back());
    levels_.pop_back();
}

void ReadArchive::check_unknown_keys(const Level& level)
{
    for (const std::string& key : level.node->keys) {
        if (level.knows(key) || (level.keeps_extras && is_extra(key))) {
            continue;
        }
        if (problems_.size() >= most_listed) {
            ++not_listed_; // looking for the nearest name is dear, and a hostile file may hold many keys
            continue;
        }
        std::vector<std::string> args{shown(key)};
        if (const auto nearest = nearest_name(key, level.known)) {
            args.emplace_back(*nearest);
        }
        add(pointer_to(level.pointer, key), problem::unknown_key, std::move(args));
    }
}

bool ReadArchive::is_kind(const std::string& where, const Node& node, Kind kind)
{
    if (node.kind == kind) {
        return true;
    }
    add(where, problem::wrong_type, {std::string(kind_name(kind)), std::string(kind_name(node.kind))});
    return false;
}

const Node* ReadArchive::member(Key key, Need need, Kind kind)
{
    Level& level = levels_.back();
    level.known.push_back(key.name);
    const Node* const found = level.node->find(key.name);
    const std::string where = pointer_to(level.pointer, key.name);
    if (found == nullptr) {
        if (need == Need::required) {
            add(where, problem::missing, {std::string(key.name)});
        }
        return nullptr;
    }
    return is_kind(where, *found, kind) ? found : nullptr;
}

const Node* ReadArchive::list_member(Key key, ListRule rule)
{
    const Need need = rule.min_items > 0 ? Need::required : Need::optional;
    const Node* const found = member(key, need, Kind::array);
    if (found == nullptr) {
        return nullptr;
    }
    const std::string where = pointer_to(levels_.back().pointer, key.name);
    const std::size_t count = found->items.size();
    if (count < rule.min_items) {
        add(where, problem::too_few_items, {std::to_string(count), std::to_string(rule.min_items)});
    }
    if (count > rule.max_items) {
        // A list that is too long is refused unread: a million animals cost nothing.
        add(where, problem::too_many_items, {std::to_string(count), std::to_string(rule.max_items)});
        return nullptr;
    }
    return found;
}

bool ReadArchive::begin_object(Key key, Need need, bool)
{
    const Node* const found = member(key, need, Kind::object);
    if (found == nullptr) {
        return false;
    }
    push(found, pointer_to(levels_.back().pointer, key.name));
    return true;
}

void ReadArchive::end_object()
{
    pop_object();
}

std::size_t ReadArchive::begin_list(Key key, std::size_t, ListRule rule)
{
    const Node* const found = list_member(key, rule);
    push(found, pointer_to(levels_.back().pointer, key.name));
    return found == nullptr ? 0 : found->items.size();
}

bool ReadArchive::begin_item(std::size_t index)
{
    const Level& list = levels_.back();
    const Node& item = list.node->items[index];
    std::string where = pointer_to(list.pointer, index);
    if (!is_kind(where, item, Kind::object)) {
        return false;
    }
    push(&item, std::move(where));
    return true;
}

void ReadArchive::end_item()
{
    pop_object();
}

void ReadArchive::end_list()
{
    levels_.pop_back();
}

void ReadArchive::extras(Extras& extras)
{
    Level& level = levels_.back();
    level.keeps_extras = true;
    extras.clear();
    for (std::size_t i = 0; i < level.node->keys.size(); ++i) {
        const std::string& key = level.node->keys[i];
        if (is_extra(key) && !level.knows(key)) { // a coordinate is called "x_m"
            extras.emplace_back(key, level.node->items[i]);
        }
    }
}

} // namespace loam::json
