#include <algorithm>
#include <cmath>

#include "core/climate/panels.hpp"

namespace loam::climate {

namespace {

bool is_side(Plane plane)
{
    return plane == Plane::left || plane == Plane::right;
}

// The numbers of patches along and up a plane.
struct Counts {
    std::size_t along = 0;
    std::size_t up = 0;
};

Counts patch_counts(const Geometry& g, Plane plane)
{
    std::vector<double> along;
    std::vector<double> up;
    for (const Patch& patch : g.patches)
        if (patch.plane == plane) {
            along.push_back(patch.at[is_side(plane) ? 1 : 0].from);
            up.push_back(patch.at[plane == Plane::ceiling ? 1 : 2].from);
        }
    const auto distinct = [](std::vector<double> values) {
        std::sort(values.begin(), values.end());
        return static_cast<std::size_t>(std::unique(values.begin(), values.end()) - values.begin());
    };
    return {distinct(along), distinct(up)};
}

std::size_t patch_at(const Geometry& g, Plane plane, double along_m, double up_m)
{
    for (std::size_t p = 0; p < g.patches.size(); ++p) {
        const Patch& patch = g.patches[p];
        const Span& along = patch.at[is_side(plane) ? 1 : 0];
        const Span& up = patch.at[plane == Plane::ceiling ? 1 : 2];
        if (patch.plane == plane && along_m > along.from && along_m < along.to && up_m > up.from && up_m < up.to)
            return p;
    }
    return 0; // not reached: patches tile the plane and no cell's centre lies on a seam
}

// Where a face covers only a part of its patch: a mat or a cover by its rectangle, else what is left.
std::size_t face_at(const Box& box, const Geometry& g, std::size_t patch, double along_m, double up_m)
{
    std::size_t bare = 0;
    for (std::size_t f = 0; f < g.faces.size(); ++f) {
        const Face& face = g.faces[f];
        if (face.patch != patch)
            continue;
        if (!face.cover && !face.mat) {
            bare = f;
            continue;
        }
        const Rect area = face.cover ? box.covers[*face.cover].area : above_bed(box.mats[*face.mat], g);
        if (holds(area, along_m, up_m))
            return f;
        if (g.faces[bare].patch != patch)
            bare = f; // nothing is left bare
    }
    return bare;
}

Point point_on(const Box& box, const Geometry& g, Plane plane, double along_m, double up_m)
{
    switch (plane) {
    case Plane::left:
        return {0.0, along_m, g.bed_mean_m + up_m};
    case Plane::right:
        return {box.length_m, along_m, g.bed_mean_m + up_m};
    case Plane::front:
        return {along_m, 0.0, g.bed_mean_m + up_m};
    case Plane::back:
        return {along_m, box.width_m, g.bed_mean_m + up_m};
    case Plane::ceiling:
    case Plane::floor:
        break;
    }
    return {along_m, up_m, box.height_m};
}

} // namespace

PanelCells lay_panel(const Box& box, const Scene& scene, Plane plane, double cell_m)
{
    const Geometry& g = scene.geometry;
    const double along_side_m = is_side(plane) ? box.width_m : box.length_m;
    const double up_side_m = plane == Plane::ceiling ? box.width_m : g.air_height_m;
    const Counts patches = patch_counts(g, plane);
    PanelCells cells{.plane = plane,
                     .columns = cells_along(along_side_m, patches.along, cell_m),
                     .rows = cells_along(up_side_m, patches.up, cell_m),
                     .along_m = 0.0,
                     .up_m = 0.0,
                     .patch = {},
                     .face = {},
                     .at = {}};
    cells.along_m = along_side_m / static_cast<double>(cells.columns);
    cells.up_m = up_side_m / static_cast<double>(cells.rows);
    for (std::size_t j = 0; j < cells.rows; ++j)
        for (std::size_t i = 0; i < cells.columns; ++i) {
            const double along_m = (static_cast<double>(i) + 0.5) * cells.along_m;
            const double up_m = (static_cast<double>(j) + 0.5) * cells.up_m;
            const std::size_t patch = patch_at(g, plane, along_m, up_m);
            cells.patch.push_back(patch);
            cells.face.push_back(face_at(box, g, patch, along_m, up_m));
            cells.at.push_back(point_on(box, g, plane, along_m, up_m));
        }
    return cells;
}

Point centre_of(const PanelField& field, std::size_t cell)
{
    const std::size_t column = cell % field.columns;
    const std::size_t row = cell / field.columns;
    const double along_m = (static_cast<double>(column) + 0.5) * field.along_m;
    const double up_m = (static_cast<double>(row) + 0.5) * field.up_m;
    if (field.plane == Plane::ceiling)
        return {along_m, up_m, field.from_z_m};
    if (is_side(field.plane))
        return {field.across_m, along_m, field.from_z_m + up_m};
    return {along_m, field.across_m, field.from_z_m + up_m};
}

} // namespace loam::climate
