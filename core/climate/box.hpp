// What the climate balance needs to know of one enclosure, free of files and catalogs. Every uncertain input is a
// Range {5th, 50th, 95th percentile}; the balance is solved at the likely values and differentiated for the rest.
// Coordinates as in the plan: origin front-left on the inner face of the base pane, z up.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/explain.hpp"

namespace loam::climate {

struct Rect {
    double x_m = 0.0;
    double y_m = 0.0;
    double length_m = 0.0;
    double width_m = 0.0;
    friend bool operator==(const Rect&, const Rect&) = default;
};

// A flat sheet: wall, base, ceiling, cover or what lies under the base.
struct Sheet {
    std::string material;
    double thickness_m = 0.0;
    Range conductivity_w_mk;
    double heat_capacity_j_m3k = 0.0;
    Range emissivity;
    Range lamp_transmittance; // of a lamp's beam
    Range lamp_absorptance;
    friend bool operator==(const Sheet&, const Sheet&) = default;
};

// One layer of the bed, from the base pane upwards. k = k_dry + k_per_water * theta, theta the water fraction.
struct BedLayer {
    std::string material;
    double depth_left_m = 0.0;
    double depth_right_m = 0.0;
    Range conductivity_dry_w_mk;
    Range conductivity_per_water_w_mk;
    Range water_damp; // volume share of water where the bed is kept damp
    Range water_dry;  // where it is left to dry, as under a lamp
    double heat_capacity_dry_j_m3k = 0.0;
    Range emissivity;
    Range lamp_absorptance;
    Range wetness; // evaporating share of the damp surface, 0..1
    friend bool operator==(const BedLayer&, const BedLayer&) = default;
};

enum class TopKind { mesh, pane, open };

struct CoverPatch {
    std::string id;
    Rect area;
    Sheet sheet;
    Range leak; // share of the mesh's flow that it still passes, 0..1
    friend bool operator==(const CoverPatch&, const CoverPatch&) = default;
};

struct Vent {
    double free_area_m2 = 0.0;
    double height_m = 0.0;
    friend bool operator==(const Vent&, const Vent&) = default;
};

enum class Wall { front, back, left, right };

struct WallLayer {
    std::string id;
    Sheet sheet;
    friend bool operator==(const WallLayer&, const WallLayer&) = default;
};

// A wall that is not a bare `Box::walls`. Linings in the order away from the panel; outside ones are cut out around a
// mat, which sticks to the panel.
struct WallBuild {
    Wall wall = Wall::front;
    std::optional<WallLayer> panel; // absent: `Box::walls`
    std::vector<WallLayer> inside;
    std::vector<WallLayer> outside;
    friend bool operator==(const WallBuild&, const WallBuild&) = default;
};

enum class ControlKind { none, dimmer, thermostat };

struct Point {
    double x_m = 0.0;
    double y_m = 0.0;
    double z_m = 0.0;
    friend bool operator==(const Point&, const Point&) = default;
};

struct Control {
    ControlKind kind = ControlKind::none;
    double level = 1.0;         // of a dimmer, share of full power
    double setpoint_c = 0.0;    // of a thermostat
    bool off = false;           // held off for the moment; the bed below stays as dry as its lamp made it
    std::optional<Point> probe; // absent: the thermostat's probe is not placed, so it counts as unregulated
    friend bool operator==(const Control&, const Control&) = default;
};

// A lamp, ceramic heater or radiant panel: watts split into a beam and a convective plume.
struct Lamp {
    std::string id;
    Point at; // centre of the face
    Range power_w;
    Range radiant_share;
    Range convective_share;
    Range beam_deg;         // full width at half maximum; 120 is Lambertian
    double length_m = 0.0;  // of a tube or panel along x, 0 for a point
    bool above_top = false; // hangs outside: its convective share stays in the room
    double dome_m = 0.0;    // diameter of a dome whose rim lies on the mesh; 0: none
    bool thermal = false;   // glows dark (ceramic, panel): long-wave, so glass stops it and bodies absorb as they emit
    bool at_night = false;
    Control control;
    friend bool operator==(const Lamp&, const Lamp&) = default;
};

// `in_bed` lies on the base pane under the bed; on a wall it sticks to the outside.
enum class MatPlace { under_base, in_bed, back_wall, front_wall, left_wall, right_wall };

struct Mat {
    std::string id;
    MatPlace place = MatPlace::under_base;
    Rect area; // on a wall: x_m along the wall, y_m the height of its lower edge, width_m its height
    Range power_w;
    bool at_night = true;
    Control control;
    double air_gap_m = 0.0; // below a mat under the base
    friend bool operator==(const Mat&, const Mat&) = default;
};

struct Bowl {
    std::string id;
    Rect area;
    double water_depth_m = 0.03;
    friend bool operator==(const Bowl&, const Bowl&) = default;
};

// A fitting an animal can stand on: what it can reach rises by its height.
struct Perch {
    std::string id;
    Rect area;
    double height_m = 0.0;
    friend bool operator==(const Perch&, const Perch&) = default;
};

// Something that keeps lamp light from what lies below and behind it: a hide, a rock, a log. Stands on the bed.
struct Block {
    std::string id;
    Rect area;
    double rotation_deg = 0.0; // about its centre, counter-clockwise seen from above
    double height_m = 0.0;
    bool hollow = false; // what its roof takes up does not reach the bed below
    friend bool operator==(const Block&, const Block&) = default;
};

// Inputs that a keeper's readings have tied together: the box holds what remains of their ranges, and those are no
// longer independent of each other. Empty: they are.
struct Ties {
    std::vector<std::string> inputs; // named as in inputs.hpp
    std::vector<double> correlation; // row by row
    std::vector<double> narrowed;    // what remains of each input's own spread, 0..1
    double accuracy_k = 0.0;         // of the thermometer: no temperature is told closer than this because of it
    friend bool operator==(const Ties&, const Ties&) = default;
};

struct Box {
    double length_m = 0.0;
    double width_m = 0.0;
    double height_m = 0.0;
    Sheet walls; // where `other_walls` say nothing else
    std::vector<WallBuild> other_walls;
    Sheet base;
    TopKind top = TopKind::mesh;
    Sheet top_sheet;          // of a pane
    Range mesh_open_fraction; // of a mesh
    std::vector<CoverPatch> covers;
    std::vector<Vent> vents;
    std::vector<BedLayer> bed;
    std::vector<Sheet> underlay; // below the base pane, from it downwards; empty: stands free in room air
    std::vector<Lamp> lamps;
    std::vector<Mat> mats;
    std::vector<Bowl> bowls;
    std::vector<Perch> perches;
    std::vector<Block> blocks;
    double animal_back_m = 0.05; // height of the largest animal's back over what it stands on
    double animal_length_m = 0.15;
    bool climbs = false;
    Range misting_l_per_day;
    int mistings_per_day = 0; // while the lamps are on; 0: spread evenly over day and night
    // Coefficients of the model with their spread; 1 is the published correlation.
    Range film_factor = exactly(1.0);
    Range exchange_factor = exactly(1.0); // of buoyant flow through mesh and vents
    Range leak_air_changes_per_h = exactly(0.5);
    Range evaporation_factor = exactly(1.0);
    Range mixing_w_m2k = exactly(3.0); // between still lower and upper air, per floor area; heat from below adds to it
    // Share of the lamp heat that the mesh's wires catch which still comes down, by scatter and as warm air; the rest
    // rises. Wires hang between both airs, so it lies between nothing and half: own estimate, no measurement found.
    Range mesh_return = {0.0, 0.25, 0.5};
    double model_error_k = 1.0; // standard deviation that remains when all inputs are exact
    Ties ties;
    friend bool operator==(const Box&, const Box&) = default;
};

struct RoomState {
    Range temperature_c;
    Range relative_humidity; // 0..1
    friend bool operator==(const RoomState&, const RoomState&) = default;
};

enum class Fault { none, lamps_out, mats_stuck_on, covers_off, power_cut };

struct Case {
    std::string id; // "winter-day", …
    RoomState room;
    bool day = true; // timed devices on
    Fault fault = Fault::none;
    friend bool operator==(const Case&, const Case&) = default;
};

} // namespace loam::climate
