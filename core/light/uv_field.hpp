// UV over the places that an animal can reach: a map at the height of its back, the strongest it can come to, and how
// much floor is left dark.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/light/prepared_lamp.hpp"
#include "core/light/uv.hpp"

namespace loam::light {

// A flat place an animal can stand on: the bed, a rock, a hide's roof.
struct Standing {
    std::string id;
    Patch area;
    double height_m = 0.0; // over the base pane
    friend bool operator==(const Standing&, const Standing&) = default;
};

struct Nearest {
    std::string lamp;
    std::string standing;
    Point back;               // of the animal when it is nearest to the lamp's face
    double distance_m = 0.0;  // from the face (of a tube: from its nearest point)
    std::optional<Range> uvi; // from all lamps there; absent: not known
    friend bool operator==(const Nearest&, const Nearest&) = default;
};

// What: for each lamp, the nearest that the animal's back comes to it. Empty where there is nothing to stand on.
// Method: nearest point of each rectangle raised by the back's height. Range: standing places below the lamp.
std::vector<Nearest> nearest_to_lamps(const std::vector<UvLamp>& lamps, const Top& top,
                                      const std::vector<Standing>& places, double back_height_m);

// Cells over the floor, row by row from the front left corner, which is the origin.
struct UvGrid {
    std::size_t nx = 0;
    std::size_t ny = 0;
    double dx_m = 0.0;
    double dy_m = 0.0;

    std::size_t cells() const { return nx * ny; }
    std::size_t column(std::size_t cell) const { return cell % nx; }
    std::size_t row(std::size_t cell) const { return cell / nx; }
    double x_m(std::size_t cell) const { return (static_cast<double>(column(cell)) + 0.5) * dx_m; }
    double y_m(std::size_t cell) const { return (static_cast<double>(row(cell)) + 0.5) * dy_m; }
    friend bool operator==(const UvGrid&, const UvGrid&) = default;
};

// Cells of at most 25 mm; on floors of more than a square metre as many as make 1600, since the light is smooth.
// Range: sides > 0.
UvGrid uv_grid(double length_m, double width_m);

struct UvMap {
    UvGrid grid;
    std::vector<double> back_m;            // height of the back over the base pane
    std::vector<std::optional<Range>> uvi; // absent: not known
    std::vector<double> at_most;           // the high end, or where not known an upper bound; infinite: none
    friend bool operator==(const UvMap&, const UvMap&) = default;
};

// What: UV index at the back of an animal on top of whatever stands at each place. `back_m` as in UvMap.
// Method: uvi_at and uvi_at_most at each cell's centre. Range: as many heights as cells.
UvMap uv_map(const std::vector<PreparedLamp>& lamps, const UvGrid& grid, std::vector<double> back_m);

struct FloorShare {
    double surely = 0.0;  // share of the floor where the index is below the limit even at its upper bound
    double at_most = 0.0; // everywhere but where it surely reaches the limit
    friend bool operator==(const FloorShare&, const FloorShare&) = default;
};

// What: share of the floor where the UV index stays under `limit_uvi`: the retreat that every animal needs.
// Method: the cells of the map; one whose centre lies under a roof counts as dark.
// Source: the need of a UV-free retreat from Baines et al. 2016, J Zoo Aquar Res 4(1):42-63 (secondary).
FloorShare dark_share(const UvMap& map, const std::vector<Patch>& roofs, double limit_uvi);

// What: the cell with the highest likely index; nullopt where none is known.
std::optional<std::size_t> strongest_cell(const UvMap& map);

} // namespace loam::light
