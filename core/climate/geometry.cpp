#include "core/climate/geometry.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/climate/blocks.hpp"
#include "core/climate/walls.hpp"

namespace loam::climate {

namespace {

bool is_positive(double value)
{
    return std::isfinite(value) && value > 0.0;
}

bool is_sheet(const Sheet& sheet)
{
    return is_positive(sheet.thickness_m) && is_positive(sheet.conductivity_w_mk.likely);
}

bool is_physical(const Box& box)
{
    if (!is_positive(box.length_m) || !is_positive(box.width_m) || !is_positive(box.height_m))
        return false;
    if (!is_sheet(box.walls) || !is_sheet(box.base) || (box.top == TopKind::pane && !is_sheet(box.top_sheet)))
        return false;
    for (const Sheet& sheet : box.underlay)
        if (!is_sheet(sheet))
            return false;
    for (const Plane plane : {Plane::front, Plane::back, Plane::left, Plane::right})
        for (const Sheet* sheet : wall_sheets(box, plane, /*under_mat=*/false))
            if (!is_sheet(*sheet))
                return false;
    for (const CoverPatch& cover : box.covers)
        if (!is_sheet(cover.sheet))
            return false;
    for (const BedLayer& layer : box.bed) {
        const bool sized = layer.depth_left_m >= 0.0 && layer.depth_right_m >= 0.0 &&
                           is_positive(layer.depth_left_m + layer.depth_right_m);
        if (!sized || !is_positive(layer.conductivity_dry_w_mk.likely))
            return false;
    }
    return true;
}

std::size_t patches_along(double side_m, double patch_m, std::size_t most)
{
    return std::clamp<std::size_t>(static_cast<std::size_t>(std::lround(side_m / patch_m)), 1, most);
}

void lay_columns(const Box& box, const Cells& cells, Geometry& g)
{
    double cell_m = cells.cell_m;
    const double floor_m2 = box.length_m * box.width_m;
    cell_m = std::max(cell_m, std::sqrt(floor_m2 / std::max(1, cells.most_columns)));
    g.nx = cells_along(box.length_m, patches_along(box.length_m, 0.3, 4), cell_m);
    g.ny = cells_along(box.width_m, patches_along(box.width_m, 0.4, 2), cell_m);
    g.dx_m = box.length_m / static_cast<double>(g.nx);
    g.dy_m = box.width_m / static_cast<double>(g.ny);
    g.depth_m.assign(g.columns(), 0.0);
    for (std::size_t c = 0; c < g.columns(); ++c)
        for (const BedLayer& layer : box.bed)
            g.depth_m[c] += std::lerp(layer.depth_left_m, layer.depth_right_m, g.x_m(c) / box.length_m);
    g.bed_mean_m = std::accumulate(g.depth_m.begin(), g.depth_m.end(), 0.0) / static_cast<double>(g.columns());
    g.air_height_m = box.height_m - g.bed_mean_m;
}

void lay_stack(const Box& box, const Cells& cells, Geometry& g)
{
    if (!box.underlay.empty())
        g.stack.push_back({BrickKind::bottom_face});
    for (std::size_t u = box.underlay.size(); u-- > 0;)
        g.stack.push_back({BrickKind::underlay, u});
    g.stack.push_back({BrickKind::mat_face});
    g.stack.push_back({BrickKind::pane});
    for (const Mat& mat : box.mats)
        if (mat.place == MatPlace::in_bed) {
            g.stack.push_back({BrickKind::bed_face});
            break;
        }
    for (std::size_t l = 0; l < box.bed.size(); ++l) {
        const double mean_m = 0.5 * (box.bed[l].depth_left_m + box.bed[l].depth_right_m);
        const auto parts = static_cast<std::size_t>(std::max(1.0, std::ceil(mean_m / cells.layer_m - 1e-9)));
        for (std::size_t part = 0; part < parts; ++part)
            g.stack.push_back({BrickKind::bed, l, 1.0 / static_cast<double>(parts),
                               mean_m / static_cast<double>(parts) / g.bed_mean_m});
    }
    g.stack.push_back({BrickKind::surface});
}

void lay_overlaps(const Box& box, Geometry& g)
{
    const auto on_columns = [&g](const Rect& area) {
        std::vector<double> shares(g.columns());
        for (std::size_t c = 0; c < g.columns(); ++c)
            shares[c] = overlap_m2(area, g.cell(c));
        return shares;
    };
    for (const Bowl& bowl : box.bowls)
        g.bowl_m2.push_back(on_columns(bowl.area));
    for (const Block& block : box.blocks)
        g.block_m2.push_back(block.hollow ? std::vector<double>() : under_block_m2(g, block));
    for (const Mat& mat : box.mats)
        g.mat_m2.push_back(on_wall(mat.place) ? std::vector<double>() : on_columns(mat.area));
}

Rect on_wall_rect(const Patch& patch)
{
    const std::size_t along = patch.plane == Plane::left || patch.plane == Plane::right ? 1 : 0;
    return {patch.at[along].from, patch.at[2].from, patch.at[along].to - patch.at[along].from,
            patch.at[2].to - patch.at[2].from};
}

void lay_wall(const Box& box, std::size_t p, Geometry& g)
{
    const Patch& patch = g.patches[p];
    const bool upper = patch.centre_m(2) > 0.5 * g.air_height_m;
    double bare_m2 = patch.area_m2();
    for (std::size_t m = 0; m < box.mats.size(); ++m) {
        if (plane_of(box.mats[m].place) != patch.plane)
            continue;
        const double area_m2 = std::min(bare_m2, overlap_m2(above_bed(box.mats[m], g), on_wall_rect(patch)));
        if (area_m2 <= 1e-9)
            continue;
        g.faces.push_back({FaceKind::wall, p, area_m2, upper, std::nullopt, m, patch.plane});
        bare_m2 -= area_m2;
    }
    if (bare_m2 > 1e-9)
        g.faces.push_back({FaceKind::wall, p, bare_m2, upper, std::nullopt, std::nullopt, patch.plane});
}

void lay_ceiling(const Box& box, std::size_t p, Geometry& g)
{
    const Patch& patch = g.patches[p];
    const Rect here{patch.at[0].from, patch.at[1].from, patch.at[0].to - patch.at[0].from,
                    patch.at[1].to - patch.at[1].from};
    double bare_m2 = patch.area_m2();
    for (std::size_t i = 0; i < box.covers.size(); ++i) {
        const double area_m2 = std::min(bare_m2, overlap_m2(box.covers[i].area, here));
        if (area_m2 <= 1e-9)
            continue;
        g.faces.push_back({FaceKind::cover, p, area_m2, true, i, std::nullopt});
        bare_m2 -= area_m2;
    }
    if (bare_m2 > 1e-9)
        g.faces.push_back(
            {box.top == TopKind::pane ? FaceKind::pane : FaceKind::mesh, p, bare_m2, true, std::nullopt, std::nullopt});
}

void lay_air_space(const Box& box, Geometry& g)
{
    const Patching patching{.length_m = box.length_m,
                            .width_m = box.width_m,
                            .height_m = g.air_height_m,
                            .along_x = patches_along(box.length_m, 0.3, 4),
                            .along_y = patches_along(box.width_m, 0.4, 2)};
    g.patches = box_patches(patching);
    g.views = view_matrix(g.patches);
    for (std::size_t c = 0; c < g.columns(); ++c) {
        const std::size_t i = c % g.nx * patching.along_x / g.nx;
        const std::size_t j = c / g.nx * patching.along_y / g.ny;
        g.floor_patch.push_back(j * patching.along_x + i); // the floor comes first
    }
    for (std::size_t p = 0; p < g.patches.size(); ++p) {
        if (g.patches[p].plane == Plane::ceiling)
            lay_ceiling(box, p, g);
        else if (g.patches[p].plane != Plane::floor)
            lay_wall(box, p, g);
    }
}

} // namespace

Rect Geometry::cell(std::size_t column) const
{
    return {static_cast<double>(column % nx) * dx_m, static_cast<double>(row_of(column)) * dy_m, dx_m, dy_m};
}

std::size_t Geometry::column_at(double x, double y) const
{
    const auto index = [](double at, double step, std::size_t count) {
        return static_cast<std::size_t>(std::clamp(std::floor(at / step), 0.0, static_cast<double>(count - 1)));
    };
    return index(y, dy_m, ny) * nx + index(x, dx_m, nx);
}

std::size_t Geometry::place_of(BrickKind kind) const
{
    const auto found = std::find_if(stack.begin(), stack.end(), [kind](const auto& at) { return at.kind == kind; });
    return static_cast<std::size_t>(found - stack.begin());
}

double overlap_m2(const Rect& a, const Rect& b)
{
    const double x = std::min(a.x_m + a.length_m, b.x_m + b.length_m) - std::max(a.x_m, b.x_m);
    const double y = std::min(a.y_m + a.width_m, b.y_m + b.width_m) - std::max(a.y_m, b.y_m);
    return x > 0.0 && y > 0.0 ? x * y : 0.0;
}

bool holds(const Rect& rect, double x_m, double y_m)
{
    return x_m >= rect.x_m && x_m <= rect.x_m + rect.length_m && y_m >= rect.y_m && y_m <= rect.y_m + rect.width_m;
}

std::optional<Plane> plane_of(MatPlace place)
{
    switch (place) {
    case MatPlace::back_wall:
        return Plane::back;
    case MatPlace::front_wall:
        return Plane::front;
    case MatPlace::left_wall:
        return Plane::left;
    case MatPlace::right_wall:
        return Plane::right;
    case MatPlace::under_base:
    case MatPlace::in_bed:
        break;
    }
    return std::nullopt;
}

bool on_wall(MatPlace place)
{
    return plane_of(place).has_value();
}

std::size_t cells_along(double side_m, std::size_t patches, double cell_m)
{
    const double per_patch = std::ceil(side_m / static_cast<double>(patches) / cell_m - 1e-9);
    return patches * static_cast<std::size_t>(std::max(1.0, per_patch));
}

Rect above_bed(const Mat& mat, const Geometry& geometry)
{
    Rect area = mat.area;
    area.y_m = std::clamp(area.y_m - geometry.bed_mean_m, 0.0, std::max(0.0, geometry.air_height_m - area.width_m));
    return area;
}

Box as_in_case(const Box& box, const Case& now)
{
    Box copy = box;
    if (now.fault == Fault::covers_off)
        copy.covers.clear();
    return copy;
}

std::optional<Geometry> lay_out(const Box& box, const Cells& cells)
{
    if (!is_physical(box))
        return std::nullopt;
    Geometry g;
    lay_columns(box, cells, g);
    if (!is_positive(g.air_height_m) || *std::max_element(g.depth_m.begin(), g.depth_m.end()) >= box.height_m)
        return std::nullopt;
    lay_stack(box, cells, g);
    lay_overlaps(box, g);
    lay_air_space(box, g);
    return g;
}

} // namespace loam::climate
