// Everything with a plug: lamps, heaters, mats, misters, fans, and how each is controlled.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/json/node.hpp"

namespace loam::plan {

enum class DeviceKind {
    flood_lamp,
    uv_tube,
    uv_compact,
    mercury_vapour_lamp,
    metal_halide_lamp,
    led_strip,
    ceramic_heater,
    radiant_panel,
    heat_mat,
    mister,
    fan
};

// Where a device sits. Lamps and heaters hang `overhead` (above a mesh or inside, by their height);
// a mat lies `under_base` or on a wall's outside, or `in_bed` on the base pane under the substrate.
enum class Place { overhead, under_base, in_bed, back_wall, front_wall, left_wall, right_wall };

enum class Supply { timed, always_on };

enum class ControlKind { none, dimmer, thermostat };

// How a thermostat regulates: switching, letting through some pulses of the mains, or cutting each wave.
enum class ThermostatMethod { on_off, pulse, dimming };

struct Probe {
    double x_m = 0.0;
    double y_m = 0.0;
    double z_m = 0.0;
    json::Extras extras;
    friend bool operator==(const Probe&, const Probe&) = default;
};

struct Control {
    ControlKind kind = ControlKind::none;
    std::optional<double> level;      // of a dimmer, 0..1
    std::optional<double> setpoint_c; // of a thermostat
    std::optional<Probe> probe;       // of a thermostat
    std::optional<ThermostatMethod> method;
    std::optional<double> rating_w;     // the most that it may feed
    std::optional<double> hysteresis_k; // of one that switches: between switching off and on again
    json::Extras extras;
    friend bool operator==(const Control&, const Control&) = default;
};

// One line of a maker's distance table, or one reading of a meter.
struct UvPoint {
    double distance_m = 0.3;
    double uvi = 1.0;
    json::Extras extras;
    friend bool operator==(const UvPoint&, const UvPoint&) = default;
};

struct Device {
    std::string id;
    DeviceKind kind = DeviceKind::flood_lamp;
    std::optional<double> power_w;
    std::optional<Place> place; // absent: overhead, but for a heat mat, which must say
    double x_m = 0.0;           // centre of a lamp or panel, front-left corner of a mat
    double y_m = 0.0;
    std::optional<double> z_m;                     // lower edge of a mat on a wall
    std::optional<double> height_above_base_m;     // of a lamp's or panel's face
    std::optional<double> length_m;                // of a mat, panel or tube along x (on a side wall: along y)
    std::optional<double> width_m;                 // of a mat or panel along y (on a wall: along z)
    std::optional<double> beam_deg;                // full width at half maximum
    std::optional<double> clearance_m;             // from combustibles, by the maker
    std::optional<double> dome_diameter_m;         // of a dome whose rim lies on the mesh
    std::optional<bool> guarded;                   // an animal can't touch it
    std::optional<double> holder_rating_w;         // the most that its lamp holder may take
    std::optional<double> air_gap_m;               // below a mat under the base
    std::optional<std::string> below;              // material under that mat or gap
    std::optional<double> age_hours;               // burnt so far
    std::optional<double> reference_open_fraction; // mesh between lamp and meter when the table was taken; absent: none
    std::vector<UvPoint> uvi_table;                // without mesh unless said; one alone is a meter's reading
    std::optional<double> uvi_age_hours;           // burnt when the table was taken; absent: new
    std::optional<Supply> supply;
    std::optional<std::string> strip;
    Control control;
    json::Extras extras;
    friend bool operator==(const Device&, const Device&) = default;
};

} // namespace loam::plan
