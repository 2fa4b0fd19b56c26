#include "core/climate/bricks.hpp"

namespace loam::climate {

namespace {

double vertical_w_k(const Bricks& bricks, std::size_t lower, double area_m2)
{
    const std::size_t upper = lower + 1;
    double resistance_m2k_w = 0.5 * bricks.thickness_m[lower] / bricks.conductivity_w_mk[lower] +
                              0.5 * bricks.thickness_m[upper] / bricks.conductivity_w_mk[upper];
    if (!bricks.joint_m2k_w.empty())
        resistance_m2k_w += bricks.joint_m2k_w[lower];
    return area_m2 / resistance_m2k_w;
}

struct Sideways {
    double from_m = 0.0; // widths across the contact
    double to_m = 0.0;
    double along_m = 0.0;
};

void link_sideways(const Bricks& bricks, std::size_t a, std::size_t b, const Sideways& size, std::vector<Link>& links)
{
    const double contact_m = 0.5 * (bricks.thickness_m[a] + bricks.thickness_m[b]);
    if (contact_m <= 0.0)
        return;
    const double resistance =
        0.5 * size.from_m / bricks.conductivity_w_mk[a] + 0.5 * size.to_m / bricks.conductivity_w_mk[b];
    links.push_back({a, b, contact_m * size.along_m / resistance});
}

} // namespace

std::vector<Link> conduction_links(const Bricks& bricks)
{
    std::vector<Link> links;
    links.reserve(3 * bricks.count());
    for (std::size_t j = 0; j < bricks.ny; ++j)
        for (std::size_t i = 0; i < bricks.nx; ++i)
            for (std::size_t k = 0; k < bricks.nz; ++k) {
                const std::size_t here = bricks.at(i, j, k);
                const double dx_m = bricks.dx_m[i];
                const double dy_m = bricks.dy_m[j];
                if (k + 1 < bricks.nz)
                    links.push_back({here, here + 1, vertical_w_k(bricks, here, dx_m * dy_m)});
                if (i + 1 < bricks.nx)
                    link_sideways(bricks, here, bricks.at(i + 1, j, k), {dx_m, bricks.dx_m[i + 1], dy_m}, links);
                if (j + 1 < bricks.ny)
                    link_sideways(bricks, here, bricks.at(i, j + 1, k), {dy_m, bricks.dy_m[j + 1], dx_m}, links);
            }
    return links;
}

double side_conductance_w_k(const Bricks& bricks, std::size_t i, std::size_t j, std::size_t k, Side side,
                            double beyond_m2k_w)
{
    const std::size_t here = bricks.at(i, j, k);
    const bool along_y = side == Side::left || side == Side::right;
    const double across_m = along_y ? bricks.dx_m[i] : bricks.dy_m[j];
    const double along_m = along_y ? bricks.dy_m[j] : bricks.dx_m[i];
    return bricks.thickness_m[here] * along_m / (0.5 * across_m / bricks.conductivity_w_mk[here] + beyond_m2k_w);
}

} // namespace loam::climate
