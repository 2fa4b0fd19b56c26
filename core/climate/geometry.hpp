// Where everything in the box lies: columns and bricks of the floor, faces of the air space, what overlaps what.
#pragma once

#include <algorithm>
#include <cstddef>
#include <optional>
#include <vector>

#include "core/climate/box.hpp"
#include "core/climate/enclosure.hpp"
#include "core/climate/steady.hpp"

namespace loam::climate {

// The widest allowed cells; they grow where the floor would need more columns.
struct Cells {
    double cell_m = 0.0;
    double layer_m = 0.0;
    int most_columns = 0;
    friend bool operator==(const Cells&, const Cells&) = default;
};
inline Cells field_cells(const Resolution& resolution)
{
    return {resolution.cell_m, resolution.layer_m, resolution.most_columns};
}
inline Cells range_cells(const Resolution& resolution)
{
    return {std::max(resolution.cell_m, resolution.range_cell_m),
            std::max(resolution.layer_m, resolution.range_layer_m), resolution.most_range_columns};
}

inline Cells course_cells(const Resolution& resolution)
{
    return {std::max(resolution.cell_m, resolution.range_cell_m), resolution.course_layer_m,
            resolution.most_range_columns};
}

// From the bottom of every column upwards. The base pane's underside is where a mat under it sits.
enum class BrickKind { bottom_face, underlay, mat_face, pane, bed_face, bed, surface };

struct StackPlace {
    BrickKind kind = BrickKind::surface;
    std::size_t layer = 0; // of the underlay or the bed
    double share = 1.0;    // of that layer's thickness
    double of_depth = 0.0; // share of the whole bed's mean depth
};

enum class FaceKind { wall, pane, cover, mesh };

// One evenly warm piece of a wall or of the top. A wall mat's piece is a face of its own.
struct Face {
    FaceKind kind = FaceKind::wall;
    std::size_t patch = 0;
    double area_m2 = 0.0;
    bool upper = false;                              // touches the upper air
    std::optional<std::size_t> cover = std::nullopt; // lies on the mesh or the pane here
    std::optional<std::size_t> mat = std::nullopt;   // sticks to its outside
    Plane plane = Plane::ceiling;
};

struct Geometry {
    std::size_t nx = 0;
    std::size_t ny = 0;
    double dx_m = 0.0;
    double dy_m = 0.0;
    std::vector<StackPlace> stack;
    std::vector<double> depth_m; // of the bed, per column
    double bed_mean_m = 0.0;
    double air_height_m = 0.0;
    std::vector<Patch> patches;
    Square views;
    std::vector<std::size_t> floor_patch;      // per column
    std::vector<std::vector<double>> bowl_m2;  // per bowl and column
    std::vector<std::vector<double>> mat_m2;   // per mat on the floor and column
    std::vector<std::vector<double>> block_m2; // per block and column, of a solid one
    std::vector<Face> faces;

    std::size_t columns() const { return nx * ny; }
    std::size_t nz() const { return stack.size(); }
    double x_m(std::size_t column) const { return (static_cast<double>(column % nx) + 0.5) * dx_m; }
    double y_m(std::size_t column) const { return (static_cast<double>(row_of(column)) + 0.5) * dy_m; }
    std::size_t row_of(std::size_t column) const { return column / nx; }
    Rect cell(std::size_t column) const;
    std::size_t surface(std::size_t column) const { return column * nz() + nz() - 1; }
    std::size_t column_at(double x, double y) const; // nearest
    std::size_t place_of(BrickKind kind) const;      // first of its kind from below; nz() where there is none
};

// Columns are a whole number per patch, so that patches are sums of columns and a mirrored box has mirrored cells.
std::size_t cells_along(double side_m, std::size_t patches, double cell_m);

double overlap_m2(const Rect& a, const Rect& b);
bool holds(const Rect& rect, double x_m, double y_m);
bool on_wall(MatPlace place);
std::optional<Plane> plane_of(MatPlace place); // of a wall

// A wall mat's rectangle over the bed's mean surface: it is taken to heat the air space.
Rect above_bed(const Mat& mat, const Geometry& geometry);

// The box as the case leaves it: without covers where they were forgotten off.
Box as_in_case(const Box& box, const Case& now);

// nullopt where a side, depth or thickness is not positive and finite, or the bed leaves no air above it.
std::optional<Geometry> lay_out(const Box& box, const Cells& cells);

} // namespace loam::climate
