// The steady climate of one enclosure in one room: the face of the module. What is inside may change, this stays.
#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/climate/box.hpp"
#include "core/climate/panel_field.hpp"
#include "core/climate/workspace.hpp"

namespace loam::climate {

enum class Measure { surface, ground, operative };

struct ZoneReading {
    Range surface_c;
    Range ground_c;    // shaded thermometer lying at ground level
    Range operative_c; // what an animal's back feels
    Range humidity;    // 0..1, where a hygrometer lies at ground level
    std::string
        limited_by; // id of the input that widens most what the zone is judged by: surface for basking, else ground
    double limited_share = 0.0; // its share of the variance, 0..1
    Rect area;                  // where the zone lies
    friend bool operator==(const ZoneReading&, const ZoneReading&) = default;
};

// Likely values on the floor, row by row from the front-left; cell centres at ((i + 0.5) dx, (j + 0.5) dy).
struct FloorField {
    std::size_t nx = 0;
    std::size_t ny = 0;
    double dx_m = 0.0;
    double dy_m = 0.0;
    std::vector<double> surface_c;
    std::vector<double> ground_c;
    std::vector<double> operative_c;
    std::vector<double> humidity;  // 0..1, at ground level: the lower air's vapour at the ground's temperature
    std::vector<double> beam_w_m2; // lamp irradiance at the surface
    double ground_at(double x_m, double y_m) const; // ground_c of the cell there, or of the nearest; needs one
    friend bool operator==(const FloorField&, const FloorField&) = default;
};

// A vertical cut along x through the middle of the width (or through the hottest cell), for the section drawing.
struct SectionField {
    std::size_t nx = 0;
    std::size_t nz = 0;
    std::vector<double> z_m;           // cell centres, base pane at 0
    std::vector<double> temperature_c; // row by row from the bottom
    double lower_air_c = 0.0;
    double upper_air_c = 0.0;
    friend bool operator==(const SectionField&, const SectionField&) = default;
};

struct DeviceState {
    std::string id;
    Range power_w;          // drawn on average
    Range duty;             // of the installed power, 0..1
    bool saturated = false; // at its limit, and the target is not met
    friend bool operator==(const DeviceState&, const DeviceState&) = default;
};

// The hottest place of walls or top.
struct PanelPeak {
    Range temperature_c;
    Point at;
    friend bool operator==(const PanelPeak&, const PanelPeak&) = default;
};

struct CaseResult {
    std::string id;
    bool converged = false;
    int iterations = 0;
    Range room_c;            // as the case has it
    double residual_w = 0.0; // largest heat residual of any cell
    double power_w = 0.0;    // drawn by all devices, likely
    double input_w = 0.0;    // of that, what is released inside the box
    double loss_w = 0.0;     // to the room by conduction, radiation, air and vapour, likely; equals input_w
    ZoneReading basking;     // body-sized patch of the highest surface temperature
    ZoneReading warm;
    ZoneReading cool;
    Range gradient_k;          // warm side less cool side at ground level, two thirds of the length apart
    Range floor_share_in_band; // filled by `share_in_band`
    Range hottest_surface_c;   // touchable from above, perches included, bed dry under the lamp
    Point hottest_at;
    Range hottest_digging_c; // anywhere an animal gets by digging, down to the base pane
    Range hottest_pane_c;    // a wall's inside where a mat sits on it; without one the warmest wall's mean
    Range lower_air_c;
    Range upper_air_c;
    Range ground_humidity;       // 0..1 at ground level away from the lamps: the cool side's, by which it is judged
    Range air_humidity;          // 0..1 in the lower air
    Range evaporation_l_per_day; // from bed and bowls, misted water included
    Range bowl_evaporation_l_per_day;    // of that, from the bowls
    double condensation_l_per_day = 0.0; // on panes and bed, which drips and runs back into the bed; likely
    double coldest_pane_c = 0.0;
    bool condensation = false; // on the coldest pane, likely
    double heat_of_evaporation_w = 0.0;
    std::vector<DeviceState> devices;
    FloorField floor;
    SectionField section;
    std::vector<PanelField> panels;        // front, back, left, right, top
    std::optional<PanelPeak> hottest_wall; // inside, as high up as an animal reaches, mats on walls apart
    std::optional<PanelPeak> hottest_top;  // either face; absent where nothing closes the top
    friend bool operator==(const CaseResult&, const CaseResult&) = default;
};

// The widest allowed cells; cells grow where the floor would need more columns. The field is solved finely; how far
// inputs move a reading is worked out on wider cells, since it is the same within a few per cent and asked of many
// inputs.
struct Resolution {
    double cell_m = 0.025;  // on the floor
    double layer_m = 0.025; // through the bed
    int most_columns = 1000;
    double range_cell_m = 0.09;
    double range_layer_m = 0.04;
    int most_range_columns = 100;
    double course_layer_m = 0.02; // on the same wide cells: what runs over hours
    friend bool operator==(const Resolution&, const Resolution&) = default;
};

// Solves one case. Reports non-convergence in the result; returns nullopt only where `stop` was requested or the box
// is not physical (a side, depth or thickness that is not positive and finite).
std::optional<CaseResult> solve_steady(const Box& given, const Case& room, Workspace& workspace,
                                       std::stop_token stop = {}, const Resolution& resolution = {});

// For searches, at a fraction of the cost: every range holds only its likely value, within 0.01 K of what solve_steady
// says, and there are no fields for drawings.
std::optional<CaseResult> solve_likely(const Box& given, const Case& room, Workspace& workspace,
                                       std::stop_token stop = {}, const Resolution& resolution = {});

// For looking while something is being moved: likely values as solve_likely gives them, with the fields for drawings.
std::optional<CaseResult> solve_field(const Box& given, const Case& room, Workspace& workspace,
                                      std::stop_token stop = {}, const Resolution& resolution = {});

// Share of the floor whose reading lies between the bounds (an absent one does not bind); low and high are the least
// and the most as the whole field shifts through the range of the zone readings.
Range share_in_band(const CaseResult& result, Measure measure, std::optional<double> min_c,
                    std::optional<double> max_c);

} // namespace loam::climate
