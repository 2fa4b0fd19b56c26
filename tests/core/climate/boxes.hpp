// Boxes that the climate tests share. Material values: glass and coir as in DIN EN 12524 and, for coir, the peat line
// of Moene & van Dam 2014, Table 2.2; spreads as a keeper who measured nothing would have to state them.
#pragma once

#include <utility>

#include "core/climate/steady.hpp"

namespace loam::climate::test {

inline Sheet glass(double thickness_m)
{
    return {.material = "float-glass",
            .thickness_m = thickness_m,
            .conductivity_w_mk = {0.95, 1.0, 1.05},
            .heat_capacity_j_m3k = 1.875e6,
            .emissivity = {0.82, 0.84, 0.89},
            .lamp_transmittance = {0.65, 0.75, 0.84},
            .lamp_absorptance = {0.09, 0.17, 0.28}};
}

inline Sheet towel()
{
    return {.material = "towel",
            .thickness_m = 0.004,
            .conductivity_w_mk = {0.04, 0.06, 0.10},
            .heat_capacity_j_m3k = 4e5,
            .emissivity = {0.88, 0.92, 0.95},
            .lamp_transmittance = {0.0, 0.05, 0.10},
            .lamp_absorptance = {0.4, 0.6, 0.8}};
}

// The wetness of the damp bed is our own estimate: a quarter of open water evaporates about 0.2 l a day here, what a
// daily misting supplies; a freshly soaked surface evaporates three times as much and is not kept so for long.
inline BedLayer coir(double depth_m, bool damp)
{
    return {.material = "coir-fine",
            .depth_left_m = depth_m,
            .depth_right_m = depth_m,
            .conductivity_dry_w_mk = {0.035, 0.045, 0.06},
            .conductivity_per_water_w_mk = {0.4, 0.511, 0.6},
            .water_damp = damp ? Range{0.15, 0.25, 0.40} : Range{0.02, 0.05, 0.08},
            .water_dry = {0.02, 0.05, 0.08},
            .heat_capacity_dry_j_m3k = 1.5e5,
            .emissivity = {0.90, 0.93, 0.96},
            .lamp_absorptance = {0.70, 0.80, 0.90},
            .wetness = damp ? Range{0.10, 0.25, 0.50} : exactly(0.0)};
}

inline Lamp flood(double power_w)
{
    return {.id = "flood",
            .at = {0.22, 0.2286, 0.50},
            .power_w = {0.95 * power_w, power_w, 1.05 * power_w},
            .radiant_share = {0.70, 0.80, 0.86},
            .convective_share = {0.10, 0.16, 0.25},
            .beam_deg = {40.0, 60.0, 90.0},
            .length_m = 0.0,
            .above_top = true,
            .thermal = false,
            .at_night = false,
            .control = {}};
}

inline Mat mat(double power_w)
{
    Mat made;
    made.id = "mat";
    made.place = MatPlace::under_base;
    made.area = {0.08, 0.0886, 0.28, 0.28};
    made.power_w = {0.9 * power_w, power_w, 1.1 * power_w};
    made.air_gap_m = 0.006;
    return made;
}

// 36 x 18 x 18 in with a fine mesh top.
inline Box glass_box(double bed_m = 0.10, bool damp = true)
{
    Box box;
    box.length_m = 0.9144;
    box.width_m = 0.4572;
    box.height_m = 0.4572;
    box.walls = glass(0.005);
    box.base = glass(0.005);
    box.top = TopKind::mesh;
    box.mesh_open_fraction = {0.58, 0.65, 0.72};
    box.bed = {coir(bed_m, damp)};
    box.underlay = {{.material = "particleboard",
                     .thickness_m = 0.018,
                     .conductivity_w_mk = {0.12, 0.15, 0.18},
                     .heat_capacity_j_m3k = 1.1e6,
                     .emissivity = exactly(0.9),
                     .lamp_transmittance = exactly(0.0),
                     .lamp_absorptance = exactly(0.7)}};
    box.film_factor = {0.8, 1.0, 1.25};
    box.exchange_factor = {0.5, 1.0, 1.5};
    box.leak_air_changes_per_h = {0.3, 1.0, 3.0};
    box.evaporation_factor = {0.75, 1.0, 1.4};
    box.mixing_w_m2k = {1.5, 3.0, 6.0};
    return box;
}

// The common setting up: towel over the cool half, flood lamp over the warm side, mat at full under it.
inline Box furnished_box(double bed_m = 0.10, bool damp = true)
{
    Box box = glass_box(bed_m, damp);
    box.covers = {{.id = "towel", .area = {0.4572, 0.0, 0.4572, 0.4572}, .sheet = towel(), .leak = {0.0, 0.05, 0.15}}};
    box.lamps = {flood(100.0)};
    box.mats = {mat(18.0)};
    box.bowls = {{.id = "bowl", .area = {0.60, 0.12, 0.20, 0.20}, .water_depth_m = 0.03}};
    return box;
}

inline Case home_day(Range room_c = {20.0, 21.5, 23.0})
{
    return {.id = "winter-day", .room = {.temperature_c = room_c, .relative_humidity = {0.35, 0.45, 0.55}}};
}

// Left and right exchanged.
inline Box mirrored(Box box)
{
    const auto turn = [&](Rect& rect) { rect.x_m = box.length_m - rect.x_m - rect.length_m; };
    for (auto& cover : box.covers)
        turn(cover.area);
    for (auto& mat : box.mats)
        turn(mat.area);
    for (auto& bowl : box.bowls)
        turn(bowl.area);
    for (auto& perch : box.perches)
        turn(perch.area);
    for (auto& lamp : box.lamps)
        lamp.at.x_m = box.length_m - lamp.at.x_m;
    for (auto& layer : box.bed)
        std::swap(layer.depth_left_m, layer.depth_right_m);
    return box;
}

} // namespace loam::climate::test
