#include "core/plan/migrations.hpp"

#include <algorithm>
#include <array>
#include <cassert>

#include "core/json/number_text.hpp"
#include "core/plan/plan.hpp"

namespace loam::plan {

namespace {

using json::Kind;
using json::Node;

Node* find(Node& object, std::string_view key)
{
    const auto found = std::find(object.keys.begin(), object.keys.end(), key);
    return found == object.keys.end() ? nullptr : &object.items[static_cast<std::size_t>(found - object.keys.begin())];
}

// Takes the member out; a null node where there is none.
Node take(Node& object, std::string_view key)
{
    Node* const found = find(object, key);
    if (found == nullptr) {
        return {};
    }
    const auto offset = found - object.items.data();
    Node value = std::move(*found);
    object.items.erase(object.items.begin() + offset);
    object.keys.erase(object.keys.begin() + offset);
    return value;
}

void rename(Node& object, std::string_view from, std::string_view to)
{
    const auto key = std::find(object.keys.begin(), object.keys.end(), from);
    if (key != object.keys.end()) {
        *key = to;
    }
}

// The member, made where it is absent.
Node& member_object(Node& object, std::string_view key)
{
    if (find(object, key) == nullptr) {
        object.add(std::string(key), Node::object());
    }
    return *find(object, key);
}

template <class Change> void for_each_object(Node& parent, std::string_view list, Change change)
{
    Node* const items = find(parent, list);
    if (items == nullptr || items->kind != Kind::array) {
        return;
    }
    for (Node& item : items->items) {
        if (item.kind == Kind::object) {
            change(item);
        }
    }
}

void centimetres_to_metres(Node& layer)
{
    Node* const depth = find(layer, "depth_cm");
    if (depth == nullptr || depth->kind != Kind::number) {
        return;
    }
    if (const auto depth_cm = json::double_of(depth->text)) {
        *depth = Node::of(*depth_cm / 100.0);
        rename(layer, "depth_cm", "depth_m");
    }
}

void lamp_to_device(Node& lamp)
{
    rename(lamp, "watts", "power_w");
    rename(lamp, "height_m", "height_above_base_m");
    lamp.add("kind", Node::of("flood-lamp"));
    lamp.add("control", Node::object().add("kind", Node::of("none")));
}

void lamps_to_equipment(Node& enclosure)
{
    const Node* const equipment = enclosure.find("equipment");
    const Node* const lamps = enclosure.find("lamps");
    const bool clear =
        lamps != nullptr && lamps->kind == Kind::array && (equipment == nullptr || equipment->kind == Kind::array);
    if (!clear) {
        return;
    }
    for_each_object(enclosure, "lamps", lamp_to_device);
    if (equipment == nullptr) {
        rename(enclosure, "lamps", "equipment");
        return;
    }
    for (Node& lamp : take(enclosure, "lamps").items) {
        find(enclosure, "equipment")->add(std::move(lamp));
    }
}

void room_temperature_to_cases(Node& document)
{
    const Node* const temperature = document.find("room_temp_c");
    if (temperature == nullptr || temperature->kind != Kind::number) {
        return;
    }
    Node& site = member_object(document, "site");
    if (site.kind != Kind::object) {
        return;
    }
    Node& room = member_object(site, "room");
    if (room.kind != Kind::object) {
        return;
    }
    const Node value = take(document, "room_temp_c");
    // `site` may have moved with the member that was taken out.
    Node& moved_room = *find(*find(document, "site"), "room");
    for (const std::string_view season : {"winter", "summer"}) {
        Node& room_case = member_object(moved_room, season);
        if (room_case.kind == Kind::object && room_case.find("day_c") == nullptr) {
            room_case.add("day_c", value);
        }
    }
}

void from_0_to_1(Node& document)
{
    if (document.find("jurisdiction") == nullptr) {
        document.add("jurisdiction", Node::of("none"));
    }
    room_temperature_to_cases(document);
    for_each_object(document, "enclosures", [](Node& enclosure) {
        for_each_object(enclosure, "substrate", centimetres_to_metres);
        lamps_to_equipment(enclosure);
    });
}

// The step at index n leads from version n to n + 1.
constexpr std::array<void (*)(Node&), static_cast<std::size_t>(current_version)> steps{from_0_to_1};

} // namespace

void migrate(Node& document, std::int64_t from)
{
    assert(document.kind == Kind::object && from >= 0 && from <= current_version);
    for (auto version = static_cast<std::size_t>(from); version < steps.size(); ++version) {
        steps[version](document);
    }
    if (Node* const version = find(document, "version")) {
        *version = Node::of(current_version);
    }
}

} // namespace loam::plan
