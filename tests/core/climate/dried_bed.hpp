// A bed over a pane, dried and lit in one place, as bricks and as the input of another program.
#pragma once

#include <cmath>
#include <string>
#include <vector>

#include "core/climate/bricks.hpp"
#include "core/climate/stencil.hpp"

namespace loam::climate::test {

// 0.9 x 0.45 m of 5 mm glass under 100 mm of bed; over 0.2 x 0.2 m the upper half of the bed is dry and takes lamp
// light. Films above and below lead to air, the flanks are adiabatic.
struct DriedBed {
    double length_m = 0.9;
    double width_m = 0.45;
    double pane_m = 0.005;
    double bed_m = 0.1;
    double glass_w_mk = 1.0;
    double damp_w_mk = 0.17;
    double dry_w_mk = 0.07;
    double light_w_m2 = 600.0;
    double above_w_m2k = 10.0;
    double above_c = 25.0;
    double below_w_m2k = 8.0;
    double below_c = 21.0;
    std::size_t nx = 36; // columns and bed layers
    std::size_t ny = 18;
    std::size_t layers = 4;

    std::size_t nz() const { return layers + 1; } // the pane is one brick
    double dx_m() const { return length_m / static_cast<double>(nx); }
    double dy_m() const { return width_m / static_cast<double>(ny); }
    double layer_m() const { return bed_m / static_cast<double>(layers); }
    double light_m = 0.06; // standard deviation of the light
    bool is_dry(double x_m, double y_m) const { return x_m > 0.1 && x_m < 0.5 && y_m > 0.1 && y_m < 0.35; }
    double light_at_w_m2(double x_m, double y_m) const
    {
        const double x = (x_m - 0.3) / light_m;
        const double y = (y_m - 0.225) / light_m;
        return light_w_m2 * std::exp(-0.5 * (x * x + y * y));
    }
    double conductivity_w_mk(double x_m, double y_m, double z_m) const
    {
        if (z_m < pane_m)
            return glass_w_mk;
        return is_dry(x_m, y_m) && z_m > pane_m + 0.5 * bed_m ? dry_w_mk : damp_w_mk;
    }
};

// The equations of its bricks: conductances among them, a diagonal beside those, and the heat on the right-hand side.
struct BedSystem {
    std::vector<Link> links;
    std::vector<double> diagonal_w_k;
    std::vector<double> heat_w;
    Stencil stencil;
};
BedSystem system_of(const DriedBed& bed);

// Temperatures of the bricks' centres, column by column from below. By our own conduction with direct factors, as the
// ranges are worked out:
std::vector<double> solve_bricks(const DriedBed& bed);
// The same equations as the fine field solves them, iteratively; the residual falls to `share` of the heat. Empty where
// it does not.
std::vector<double> solve_as_field(const DriedBed& bed, const BedSystem& system, double share);

// The input of CalculiX for hexahedra that halve each brick's sides; the nodes named BRICKS are its centres, in order.
void write_calculix(const DriedBed& bed, const std::string& path);
// The temperatures at the bricks' centres that CalculiX left in its .dat file, in the order of ours.
std::vector<double> read_calculix(const DriedBed& bed, const std::string& path);

} // namespace loam::climate::test
