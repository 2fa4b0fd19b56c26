// The place the enclosures stand in: room, circuits, outlet strips, stands.
// An absent optional is *assumed* by the assessment, with a bracket, never filled in silently.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/json/node.hpp"
#include "core/money.hpp"

namespace loam::plan {

struct RoomCase {
    std::optional<double> day_c;
    std::optional<double> night_c;
    std::optional<double> relative_humidity; // 0..1
    json::Extras extras;
    friend bool operator==(const RoomCase&, const RoomCase&) = default;
};

struct PowerCut {
    std::optional<double> hours;
    std::optional<double> room_c; // what the room falls to meanwhile
    json::Extras extras;
    friend bool operator==(const PowerCut&, const PowerCut&) = default;
};

enum class SunReaches { no, yes, unknown };

struct Room {
    RoomCase winter;
    RoomCase summer;
    std::optional<double> heat_wave_c;
    std::optional<PowerCut> power_cut;
    std::optional<SunReaches> sun_reaches;
    std::optional<double> loss_w_k; // what it loses to the outside, W for each kelvin; absent: what boxes give off
                                    // counts as part of the stated temperatures
    json::Extras extras;
    friend bool operator==(const Room&, const Room&) = default;
};

struct Circuit {
    std::string id;
    double voltage_v = 230.0;
    double rating_a = 16.0;
    std::optional<double> other_load_w; // everything else that hangs on it
    json::Extras extras;
    friend bool operator==(const Circuit&, const Circuit&) = default;
};

struct Strip {
    std::string id;
    std::string circuit;
    std::optional<double> rating_a;
    std::optional<std::int64_t> timed_outlets;
    std::optional<std::int64_t> always_on_outlets;
    std::optional<std::string> fed_from; // another strip's id: a daisy chain
    std::optional<bool> residual_current_protected;
    json::Extras extras;
    friend bool operator==(const Strip&, const Strip&) = default;
};

struct Stand {
    std::string id;
    std::optional<double> rated_load_kg;
    json::Extras extras;
    friend bool operator==(const Stand&, const Stand&) = default;
};

enum class WaterSource { tap, filtered, reverse_osmosis };

struct Water {
    std::optional<WaterSource> source;
    std::optional<double> reject_l_per_l; // of reverse osmosis: litres to the drain for each litre made
    std::optional<double> cartridge_l;    // what one cartridge or set of filters is good for
    std::optional<bool> conditioned;      // whether conditioner goes into it
    std::optional<Decimal> price_per_m3;  // with what is charged for the drain
    json::Extras extras;
    friend bool operator==(const Water&, const Water&) = default;
};

struct Site {
    std::optional<double> latitude_deg;
    std::optional<Decimal> electricity_price_per_kwh;
    Water water;
    Room room;
    std::vector<Circuit> circuits;
    std::vector<Strip> strips;
    std::vector<Stand> stands;
    json::Extras extras;
    friend bool operator==(const Site&, const Site&) = default;
};

} // namespace loam::plan
