// Bed, base and what lies under it as bricks.
#include <algorithm>
#include <cmath>

#include "core/climate/model.hpp"
#include "core/climate/walls.hpp"
#include "core/units.hpp"

namespace loam::climate {

namespace {

// A lamp dries the top of the bed, not all of it. Own estimate.
constexpr double drying_depth_m = 0.04;
// Glass edges beside the bed: natural convection by ISO 13789 Table 8 and long-wave at the room's temperature, so that
// a bed's warm flank needs no unknown of its own. It is a few per cent of the loss.
constexpr double flank_convection_w_m2k = 2.5;
constexpr double least_thickness_m = 1e-4;

double black_body_slope_w_m2k(double celsius)
{
    const double kelvin = units::kelvin_from_celsius(celsius);
    return 4.0 * units::stefan_boltzmann_w_m2_k4 * kelvin * kelvin * kelvin;
}

double water_share(const BedLayer& layer, double dryness)
{
    return std::lerp(layer.water_damp.likely, std::min(layer.water_dry.likely, layer.water_damp.likely), dryness);
}

// Fills one column from the bottom up: size and conductivity of its bricks, and what each of them stores, J/K.
void fill_column(const Box& box, const Scene& scene, std::size_t column, Bricks& bricks,
                 std::vector<double>& stored_j_k)
{
    const Geometry& g = scene.geometry;
    double below_surface_m = g.depth_m[column];
    for (std::size_t k = 0; k < g.nz(); ++k) {
        const StackPlace& place = g.stack[k];
        double thickness_m = 0.0;
        double conductivity = 1.0; // of a face, of no effect
        double stores_j_m3k = 0.0;
        if (place.kind == BrickKind::underlay) {
            thickness_m = box.underlay[place.layer].thickness_m;
            conductivity = box.underlay[place.layer].conductivity_w_mk.likely;
            stores_j_m3k = box.underlay[place.layer].heat_capacity_j_m3k;
        } else if (place.kind == BrickKind::pane) {
            thickness_m = box.base.thickness_m;
            conductivity = box.base.conductivity_w_mk.likely;
            stores_j_m3k = box.base.heat_capacity_j_m3k;
        } else if (place.kind == BrickKind::bed) {
            const BedLayer& layer = box.bed[place.layer];
            const double part_m =
                place.share * std::lerp(layer.depth_left_m, layer.depth_right_m, g.x_m(column) / box.length_m);
            thickness_m = std::max(part_m, least_thickness_m);
            const double middle_m = below_surface_m - 0.5 * part_m;
            const double dried = scene.dryness[column] * std::clamp(1.5 - middle_m / drying_depth_m, 0.0, 1.0);
            const double water = water_share(layer, dried);
            conductivity = layer.conductivity_dry_w_mk.likely + layer.conductivity_per_water_w_mk.likely * water;
            stores_j_m3k = layer.heat_capacity_dry_j_m3k + water_heat_j_m3k * water;
            below_surface_m -= part_m;
        }
        bricks.thickness_m[column * g.nz() + k] = thickness_m;
        bricks.conductivity_w_mk[column * g.nz() + k] = conductivity;
        stored_j_k[column * g.nz() + k] = thickness_m * g.dx_m * g.dy_m * stores_j_m3k;
    }
}

// An air gap under a mat: still air, since its warm side is above, and long-wave between plates of 0.9.
double gap_m2k_w(double gap_m)
{
    constexpr double air_w_mk = 0.0262; // Cengel Table A-15, 35 degC
    constexpr double plates = 1.0 / (2.0 / 0.9 - 1.0);
    return 1.0 / (air_w_mk / gap_m + plates * black_body_slope_w_m2k(35.0));
}

void add_gaps(const Box& box, const Scene& scene, Bricks& bricks)
{
    const Geometry& g = scene.geometry;
    const std::size_t face = g.place_of(BrickKind::mat_face);
    if (face == 0)
        return; // nothing lies below
    for (std::size_t m = 0; m < box.mats.size(); ++m) {
        const Mat& mat = box.mats[m];
        if (mat.place != MatPlace::under_base || mat.air_gap_m <= 0.0)
            continue;
        for (std::size_t c = 0; c < g.columns(); ++c)
            bricks.joint_m2k_w[c * g.nz() + face - 1] += gap_m2k_w(mat.air_gap_m) * g.mat_m2[m][c] / (g.dx_m * g.dy_m);
    }
}

void link_flanks(const Box& box, const Scene& scene, const Bricks& bricks, Model& model)
{
    const Geometry& g = scene.geometry;
    const auto beyond_m2k_w = [&](Plane plane) {
        const auto sheets = wall_sheets(box, plane, /*under_mat=*/false);
        const double outside_w_m2k = box.film_factor.likely * flank_convection_w_m2k +
                                     sheets.back()->emissivity.likely * black_body_slope_w_m2k(model.room.celsius);
        return resistance_m2k_w(sheets) + 1.0 / outside_w_m2k;
    };
    const double front_m2k_w = beyond_m2k_w(Plane::front);
    const double back_m2k_w = beyond_m2k_w(Plane::back);
    const double left_m2k_w = beyond_m2k_w(Plane::left);
    const double right_m2k_w = beyond_m2k_w(Plane::right);
    model.side_w_k.assign(model.layout.bricks, 0.0);
    const auto add = [&](std::size_t i, std::size_t j, Side side, double beyond) {
        for (std::size_t k = 0; k < g.nz(); ++k)
            if (g.stack[k].kind == BrickKind::bed)
                model.side_w_k[bricks.at(i, j, k)] += side_conductance_w_k(bricks, i, j, k, side, beyond);
    };
    for (std::size_t i = 0; i < g.nx; ++i) {
        add(i, 0, Side::front, front_m2k_w);
        add(i, g.ny - 1, Side::back, back_m2k_w);
    }
    for (std::size_t j = 0; j < g.ny; ++j) {
        add(0, j, Side::left, left_m2k_w);
        add(g.nx - 1, j, Side::right, right_m2k_w);
    }
}

} // namespace

bool set_conduction(Model& model, const Box& box, const Scene& scene)
{
    const Geometry& g = scene.geometry;
    Bricks bricks{.nx = g.nx,
                  .ny = g.ny,
                  .nz = g.nz(),
                  .dx_m = std::vector<double>(g.nx, g.dx_m),
                  .dy_m = std::vector<double>(g.ny, g.dy_m),
                  .thickness_m = std::vector<double>(model.layout.bricks),
                  .conductivity_w_mk = std::vector<double>(model.layout.bricks),
                  .joint_m2k_w = std::vector<double>(model.layout.bricks, 0.0)};
    model.stored_j_k.assign(model.layout.bricks, 0.0);
    for (std::size_t c = 0; c < g.columns(); ++c)
        fill_column(box, scene, c, bricks, model.stored_j_k);
    for (const double conductivity : bricks.conductivity_w_mk)
        if (!(conductivity > 0.0))
            return false;
    add_gaps(box, scene, bricks);
    model.links = conduction_links(bricks);
    model.stencil = stencil_of(bricks, model.links);
    link_flanks(box, scene, bricks, model);
    model.floor.dryness = scene.dryness;
    const Sheet& lowest = box.underlay.empty() ? box.base : box.underlay.back();
    model.underside.emissivity = lowest.emissivity.likely;
    return true;
}

} // namespace loam::climate
