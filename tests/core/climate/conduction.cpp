// The conduction kernel against ISO 10211:2017 Annex A (figures as kept by two open-source repositories).
#include <cmath>
#include <numbers>
#include <numeric>

#include "tests/catch.hpp"

#include "core/climate/bricks.hpp"
#include "core/climate/spd.hpp"

using namespace loam::climate;

namespace {

// Bricks with temperatures fixed beyond some of their sides.
struct Block {
    Bricks bricks;
    std::vector<double> diagonal = std::vector<double>(bricks.count(), 0.0);
    std::vector<double> right = std::vector<double>(bricks.count(), 0.0);

    void touch(std::size_t brick, double w_k, double celsius)
    {
        diagonal[brick] += w_k;
        right[brick] += w_k * celsius;
    }
    double face_w_k(std::size_t i, std::size_t j, std::size_t k, double beyond_m2k_w) const
    {
        const std::size_t at = bricks.at(i, j, k);
        return bricks.dx_m[i] * bricks.dy_m[j] /
               (0.5 * bricks.thickness_m[at] / bricks.conductivity_w_mk[at] + beyond_m2k_w);
    }
    std::vector<double> solve() const
    {
        SpdSolver solver;
        const auto links = conduction_links(bricks);
        solver.set_pattern(sparse_order(bricks.count(), links), links);
        REQUIRE(solver.factor(links, diagonal));
        std::vector<double> celsius = right;
        solver.solve(celsius);
        return celsius;
    }
};

Bricks even(std::size_t nx, std::size_t nz, double dx_m, double dz_m)
{
    return {.nx = nx,
            .ny = 1,
            .nz = nz,
            .dx_m = std::vector<double>(nx, dx_m),
            .dy_m = {1.0},
            .thickness_m = std::vector<double>(nx * nz, dz_m),
            .conductivity_w_mk = std::vector<double>(nx * nz, 1.0),
            .joint_m2k_w = {}};
}

// Case 1 with `per_pitch` cells per pitch of the standard's grid; temperature at node (row, column), 1-based.
struct HalfColumn {
    std::size_t per_pitch;
    std::vector<double> celsius;
    double at(std::size_t row, std::size_t column) const
    {
        const std::size_t nz = 8 * per_pitch;
        const std::size_t i = column * per_pitch;
        const std::size_t k = nz - row * per_pitch;
        const auto cell = [&](std::size_t x, std::size_t z) { return celsius[x * nz + z]; };
        if (column == 4) // on the line of symmetry: even in x, so 9/8 and -1/8 of the nearest cells
            return 0.5 *
                   (1.125 * (cell(i - 1, k - 1) + cell(i - 1, k)) - 0.125 * (cell(i - 2, k - 1) + cell(i - 2, k)));
        return 0.25 * (cell(i - 1, k - 1) + cell(i, k - 1) + cell(i - 1, k) + cell(i, k));
    }
};

HalfColumn half_column(std::size_t per_pitch)
{
    const std::size_t nx = 4 * per_pitch;
    const std::size_t nz = 8 * per_pitch;
    const double step = 1.0 / static_cast<double>(nx);
    Block block{even(nx, nz, step, step)};
    for (std::size_t i = 0; i < nx; ++i) {
        block.touch(block.bricks.at(i, 0, nz - 1), block.face_w_k(i, 0, nz - 1, 0.0), 20.0);
        block.touch(block.bricks.at(i, 0, 0), block.face_w_k(i, 0, 0, 0.0), 0.0);
    }
    for (std::size_t k = 0; k < nz; ++k)
        block.touch(block.bricks.at(0, 0, k), side_conductance_w_k(block.bricks, 0, 0, k, Side::left, 0.0), 0.0);
    return {per_pitch, block.solve()};
}

// Series for the full column of width 1 and height 1 (its lower edge cold like its sides).
double exact(std::size_t row, std::size_t column)
{
    const double x = 0.125 * static_cast<double>(column);
    const double y = 1.0 - 0.125 * static_cast<double>(row);
    double sum = 0.0;
    for (int n = 1; n < 200; n += 2) {
        const double npi = n * std::numbers::pi;
        sum += 80.0 / npi * std::sin(npi * x) * std::sinh(npi * y) / std::sinh(npi);
    }
    return sum;
}

} // namespace

// Source: ISO 10211 Annex A case 1, criterion 0.1 K.
TEST_CASE("the half square column has the standard's temperatures")
{
    const double printed[7][4] = {{9.7, 13.4, 14.7, 15.1}, {5.3, 8.6, 10.3, 10.8}, {3.2, 5.6, 7.0, 7.5},
                                  {2.0, 3.6, 4.7, 5.0},    {1.3, 2.3, 3.0, 3.2},   {0.7, 1.4, 1.8, 1.9},
                                  {0.3, 0.6, 0.8, 0.9}};
    const HalfColumn column = half_column(8);
    for (std::size_t row = 1; row <= 7; ++row)
        for (std::size_t c = 1; c <= 4; ++c)
            CHECK(std::abs(column.at(row, c) - printed[row - 1][c - 1]) <= 0.1);
}

// Source: the analytic series of the same case.
TEST_CASE("the error of conduction falls with the square of the cell")
{
    const auto error = [](std::size_t per_pitch) {
        const HalfColumn column = half_column(per_pitch);
        return std::abs(column.at(4, 2) - exact(4, 2));
    };
    const double coarse = error(4);
    const double fine = error(8);
    CHECK(fine < 0.01);
    CHECK(std::log2(coarse / fine) > 1.7);
    CHECK(std::log2(coarse / fine) < 2.4);
}

namespace {

// Case 2: sizes in mm. Cells are fine where the aluminium is thin.
std::vector<double> steps(const std::vector<std::pair<double, int>>& parts)
{
    std::vector<double> sizes;
    for (const auto& [length_mm, count] : parts)
        sizes.insert(sizes.end(), static_cast<std::size_t>(count), length_mm / 1000.0 / count);
    return sizes;
}

double conductivity_at(double x_mm, double y_mm)
{
    if (y_mm > 41.5)
        return 1.15; // concrete
    const bool skin = y_mm < 1.5;
    const bool leg = x_mm < 1.5 && y_mm < 36.5;
    const bool flange = x_mm < 15.0 && y_mm > 35.0 && y_mm < 36.5;
    if (skin || leg || flange)
        return 230.0;               // aluminium
    if (x_mm < 15.0 && y_mm > 36.5) // timber
        return 0.12;
    return 0.029; // insulation
}

} // namespace

// Source: ISO 10211 Annex A case 2, criterion 0.1 K and 0.1 W/m.
TEST_CASE("the wall with a metal profile has the standard's temperatures and heat flow")
{
    const auto dx = steps({{1.5, 4}, {13.5, 27}, {35, 35}, {150, 50}, {300, 30}});
    const auto dz = steps({{1.5, 4}, {33.5, 60}, {1.5, 4}, {5, 12}, {6, 12}});
    Block block{Bricks{.nx = dx.size(),
                       .ny = 1,
                       .nz = dz.size(),
                       .dx_m = dx,
                       .dy_m = {1.0},
                       .thickness_m = std::vector<double>(dx.size() * dz.size()),
                       .conductivity_w_mk = std::vector<double>(dx.size() * dz.size()),
                       .joint_m2k_w = {}}};
    double x = 0.0;
    for (std::size_t i = 0; i < dx.size(); x += dx[i++]) {
        double z = 0.0;
        for (std::size_t k = 0; k < dz.size(); z += dz[k++]) {
            const std::size_t at = block.bricks.at(i, 0, k);
            block.bricks.thickness_m[at] = dz[k];
            block.bricks.conductivity_w_mk[at] =
                conductivity_at(1000.0 * (x + 0.5 * dx[i]), 1000.0 * (z + 0.5 * dz[k]));
        }
    }
    const std::size_t top = dz.size() - 1;
    for (std::size_t i = 0; i < dx.size(); ++i) {
        block.touch(block.bricks.at(i, 0, 0), block.face_w_k(i, 0, 0, 0.11), 20.0);
        block.touch(block.bricks.at(i, 0, top), block.face_w_k(i, 0, top, 0.06), 0.0);
    }
    const auto celsius = block.solve();
    double flow_w = 0.0;
    for (std::size_t i = 0; i < dx.size(); ++i)
        flow_w += block.face_w_k(i, 0, 0, 0.11) * (20.0 - celsius[block.bricks.at(i, 0, 0)]);
    CHECK(std::abs(flow_w - 9.5) <= 0.1);
    // At a boundary face the temperature follows from the flow through its film.
    const auto face = [&](std::size_t i, std::size_t k, double beyond, double air_c) {
        return air_c + block.face_w_k(i, 0, k, beyond) / dx[i] * beyond * (celsius[block.bricks.at(i, 0, k)] - air_c);
    };
    const std::size_t last = dx.size() - 1;
    CHECK(std::abs(face(0, top, 0.06, 0.0) - 7.1) <= 0.1);    // A
    CHECK(std::abs(face(last, top, 0.06, 0.0) - 0.8) <= 0.1); // B
    CHECK(std::abs(face(0, 0, 0.11, 20.0) - 16.8) <= 0.1);    // H
    CHECK(std::abs(face(last, 0, 0.11, 20.0) - 18.3) <= 0.1); // I
    const auto mean = [&](std::size_t i, std::size_t k) {     // on the face between a brick and the one above it
        const std::size_t a = block.bricks.at(i, 0, k);
        const double down = block.bricks.conductivity_w_mk[a] / dz[k];
        const double up = block.bricks.conductivity_w_mk[a + 1] / dz[k + 1];
        return (down * celsius[a] + up * celsius[a + 1]) / (down + up);
    };
    const std::size_t under_concrete = 4 + 60 + 4 + 12 - 1;
    const std::size_t flange = 4 + 60 + 4 - 1;
    CHECK(std::abs(mean(0, under_concrete) - 7.9) <= 0.1);    // C
    CHECK(std::abs(mean(30, under_concrete) - 6.3) <= 0.15);  // D: on the corner of timber, read 0.25 mm inside it
    CHECK(std::abs(mean(last, under_concrete) - 0.8) <= 0.1); // E
    CHECK(std::abs(mean(0, flange) - 16.4) <= 0.1);           // F
    CHECK(std::abs(mean(30, flange) - 16.3) <= 0.1);          // G, on the metal side
}
