// The fine field's own solver converges as its bricks shrink: on a manufactured solution in a bed whose conductivity
// varies, and with the whole balance of a box on three grids.
#include <cmath>
#include <memory>
#include <numbers>

#include "tests/catch.hpp"

#include "core/climate/krylov.hpp"
#include "tests/core/climate/solved.hpp"

using namespace loam::climate;
using namespace loam::climate::test;

namespace {

// Method of manufactured solutions (Roache 2002, J. Fluids Eng. 124, 4-10; from memory): a temperature is chosen, the
// heat that it takes follows from the differential equation by hand, and the solver has to find the temperature again.
// T = 20 + cos(pi x / a) cos(pi y / b) g(z), k = k0 (1 + e cos(pi x / a)) (1 + z / h). No heat passes the flanks; below
// and above films lead to air as warm as the chosen temperature asks.
struct Manufactured {
    double a = 0.9;
    double b = 0.45;
    double h = 0.12;
    double k0 = 0.2;
    double e = 0.5;
    double film = 9.0;
    static constexpr double pi = std::numbers::pi;

    double g(double z) const { return 8.0 * std::sin(2.0 * z / h) + 4.0; }
    double g1(double z) const { return 16.0 / h * std::cos(2.0 * z / h); }
    double g2(double z) const { return -32.0 / (h * h) * std::sin(2.0 * z / h); }
    double k(double x, double z) const { return k0 * (1.0 + e * std::cos(pi * x / a)) * (1.0 + z / h); }
    double celsius(double x, double y, double z) const
    {
        return 20.0 + std::cos(pi * x / a) * std::cos(pi * y / b) * g(z);
    }
    // - div (k grad T), W/m3
    double source(double x, double y, double z) const
    {
        const double cx = std::cos(pi * x / a);
        const double sx = std::sin(pi * x / a);
        const double cy = std::cos(pi * y / b);
        const double along_x = k0 * (1.0 + z / h) * cy * g(z) * (pi / a) * (pi / a) *
                               ((1.0 + e * cx) * cx - e * sx * sx); // of - d/dx (k dT/dx)
        const double along_y = k(x, z) * cx * cy * (pi / b) * (pi / b) * g(z);
        const double along_z = -k0 * (1.0 + e * cx) * cx * cy * (g1(z) / h + (1.0 + z / h) * g2(z));
        return along_x + along_y + along_z;
    }
    // Air that the films need for the flow through the lower and the upper face.
    double air_c(double x, double y, double z, double outwards) const
    {
        const double slope = std::cos(pi * x / a) * std::cos(pi * y / b) * g1(z);
        return celsius(x, y, z) + k(x, z) * slope * outwards / film;
    }
};

struct Errors {
    double most_k = 0.0;
    double mean_k = 0.0;
};

// As many bricks a side as 8 x 4 x 3 times `times`.
Errors errors_at(std::size_t times)
{
    const Manufactured body;
    const std::size_t nx = 8 * times;
    const std::size_t ny = 4 * times;
    const std::size_t nz = 3 * times;
    const double dx = body.a / static_cast<double>(nx);
    const double dy = body.b / static_cast<double>(ny);
    const double dz = body.h / static_cast<double>(nz);
    Bricks bricks{.nx = nx,
                  .ny = ny,
                  .nz = nz,
                  .dx_m = std::vector<double>(nx, dx),
                  .dy_m = std::vector<double>(ny, dy),
                  .thickness_m = std::vector<double>(nx * ny * nz, dz),
                  .conductivity_w_mk = {},
                  .joint_m2k_w = {}};
    Model model;
    model.layout.bricks = bricks.count();
    model.nx = nx;
    model.nz = nz;
    model.floor_patch.assign(nx * ny, 0);
    Slopes slopes;
    slopes.clear(bricks.count());
    std::vector<double> right(model.layout.size(), 0.0);
    std::vector<double> chosen;
    const auto each = [&](const auto& at) {
        for (std::size_t c = 0; c < nx * ny; ++c)
            for (std::size_t k = 0; k < nz; ++k)
                at(c * nz + k, k, (static_cast<double>(c % nx) + 0.5) * dx, (static_cast<double>(c / nx) + 0.5) * dy,
                   (static_cast<double>(k) + 0.5) * dz);
    };
    each([&](std::size_t, std::size_t, double x, double y, double z) {
        bricks.conductivity_w_mk.push_back(body.k(x, z));
        chosen.push_back(body.celsius(x, y, z));
    });
    each([&](std::size_t brick, std::size_t k, double x, double y, double z) {
        right[brick] = body.source(x, y, z) * dx * dy * dz;
        const auto face = [&](double face_z, double outwards) {
            const double w_k = dx * dy / (0.5 * dz / bricks.conductivity_w_mk[brick] + 1.0 / body.film);
            slopes.diagonal[brick] += w_k;
            right[brick] += w_k * body.air_c(x, y, face_z, outwards);
        };
        if (k == 0)
            face(0.0, -1.0);
        if (k + 1 == nz)
            face(body.h, 1.0);
    });
    model.stencil = stencil_of(bricks, conduction_links(bricks));
    const std::size_t shared = model.layout.size() - bricks.count();
    for (std::size_t place = 0; place < shared; ++place)
        slopes.shared_shared.push_back({place, place, 1.0});
    const auto conditioner = std::make_shared<const Conditioner>(mean_layers(model, slopes), model.floor_patch);
    const auto found = KrylovSolver(model, slopes, conditioner).solve(right, 1e-11);
    REQUIRE(found);
    Errors errors;
    double square = 0.0;
    for (std::size_t brick = 0; brick < chosen.size(); ++brick) {
        const double error_k = std::abs((*found)[brick] - chosen[brick]);
        errors.most_k = std::max(errors.most_k, error_k);
        square += error_k * error_k;
    }
    errors.mean_k = std::sqrt(square / static_cast<double>(chosen.size()));
    return errors;
}

} // namespace

// Source: the manufactured solution above, worked out by hand.
TEST_CASE("the field's solver finds a chosen temperature in an uneven bed with an error of second order")
{
    const Errors coarse = errors_at(2);
    const Errors middle = errors_at(4);
    const Errors fine = errors_at(8);
    INFO("largest " << coarse.most_k << ", " << middle.most_k << ", " << fine.most_k << " K; mean " << coarse.mean_k
                    << ", " << middle.mean_k << ", " << fine.mean_k << " K");
    CHECK(fine.most_k < 0.02);
    for (const double order : {std::log2(coarse.mean_k / middle.mean_k), std::log2(middle.mean_k / fine.mean_k),
                               std::log2(coarse.most_k / middle.most_k), std::log2(middle.most_k / fine.most_k)}) {
        CHECK(order > 1.8);
        CHECK(order < 2.2);
    }
}

namespace {

// Whole cells to each patch of radiation on every grid, and the mat along their edges.
Box gridded_box()
{
    Box box = furnished_box(0.10, false);
    box.length_m = 0.9;
    box.width_m = 0.4;
    box.covers.clear();
    box.bowls.clear();
    box.mats[0].area = {0.1, 0.1, 0.2, 0.2};
    box.lamps[0].at = {0.2, 0.2, 0.50};
    return box;
}

// Means of the floor's surface on the warm half and on the other, and the air over it.
struct Means {
    double warm_c = 0.0;
    double cool_c = 0.0;
    double air_c = 0.0;
};

Means means_at(const Box& box, double cell_m)
{
    const Resolution resolution{.cell_m = cell_m, .layer_m = cell_m, .most_columns = 100000};
    Workspace workspace;
    const auto result = solve_field(box, home_day(), workspace, {}, resolution);
    REQUIRE(result);
    REQUIRE(result->converged);
    const FloorField& floor = result->floor;
    REQUIRE(floor.nx == static_cast<std::size_t>(std::lround(0.9 / cell_m)));
    Means means{.air_c = result->lower_air_c.likely};
    const double half = 0.5 * static_cast<double>(floor.surface_c.size());
    for (std::size_t c = 0; c < floor.surface_c.size(); ++c)
        (c % floor.nx < floor.nx / 2 ? means.warm_c : means.cool_c) += floor.surface_c[c] / half;
    return means;
}

double order_of(double coarse, double middle, double fine)
{
    return std::log2(std::abs((coarse - middle) / (middle - fine)));
}

} // namespace

// Source: observed order on three grids, Roache 1994, J. Fluids Eng. 116, 405-413 (from memory). Beside a wall a bed's
// temperature falls within conductivity over film, a centimetre in a usual bed: the square shows where the cells
// resolve that, or where nothing passes the walls.
TEST_CASE("the whole balance of a box converges with the square of its cells")
{
    Box conducting = gridded_box();
    conducting.mats.clear();
    conducting.bed[0].conductivity_dry_w_mk = loam::exactly(1.0);
    conducting.bed[0].conductivity_per_water_w_mk = loam::exactly(0.0);
    Box insulated = gridded_box();
    insulated.mats.clear();
    insulated.walls.thickness_m = 0.10;
    insulated.walls.conductivity_w_mk = loam::exactly(1e-4);
    for (const Box& box : {conducting, insulated}) {
        const Means coarse = means_at(box, 0.05);
        const Means middle = means_at(box, 0.025);
        const Means fine = means_at(box, 0.0125);
        CHECK(order_of(coarse.warm_c, middle.warm_c, fine.warm_c) == Approx(2.0).margin(0.25));
        if (box == conducting)
            CHECK(order_of(coarse.air_c, middle.air_c, fine.air_c) == Approx(2.0).margin(0.25));
    }
}

TEST_CASE("on its usual cells a usual dry box is within two tenths of a kelvin of cells a quarter as wide")
{
    const Means usual = means_at(gridded_box(), 0.025);
    const Means fine = means_at(gridded_box(), 0.00625);
    CHECK(usual.warm_c == Approx(fine.warm_c).margin(0.2));
    CHECK(usual.cool_c == Approx(fine.cool_c).margin(0.1));
    CHECK(usual.air_c == Approx(fine.air_c).margin(0.05));
}
