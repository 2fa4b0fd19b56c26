#include "core/substrate/pane.hpp"

#include <algorithm>
#include <array>

namespace loam::substrate {

namespace {

// One row of the table, by short side over long side.
struct Row {
    double b_over_a = 0.0;
    double beta = 0.0;  // stress
    double alpha = 0.0; // deflection
};

constexpr std::array<Row, 10> rows = {{{0.0, 0.7500, 0.1421},
                                       {1.0 / 5.0, 0.7476, 0.1417},
                                       {1.0 / 4.0, 0.7410, 0.1400},
                                       {1.0 / 3.0, 0.7134, 0.1335},
                                       {1.0 / 2.0, 0.6102, 0.1110},
                                       {1.0 / 1.8, 0.5688, 0.1017},
                                       {1.0 / 1.6, 0.5172, 0.0906},
                                       {1.0 / 1.4, 0.4530, 0.0770},
                                       {1.0 / 1.2, 0.3762, 0.0616},
                                       {1.0, 0.2874, 0.0444}}};

Row row_at(double b_over_a)
{
    std::size_t next = 1;
    while (next + 1 < rows.size() && b_over_a > rows[next].b_over_a) {
        ++next;
    }
    const Row& before = rows[next - 1];
    const Row& after = rows[next];
    const double share = (b_over_a - before.b_over_a) / (after.b_over_a - before.b_over_a);
    return {b_over_a, before.beta + share * (after.beta - before.beta),
            before.alpha + share * (after.alpha - before.alpha)};
}

} // namespace

std::optional<PaneBending> bending(const EvenlyLoadedPane& pane)
{
    const double a_m = std::max(pane.long_side_m, pane.short_side_m);
    const double b_m = std::min(pane.long_side_m, pane.short_side_m);
    const double t_m = pane.thickness_m;
    if (!(b_m > 0.0) || !(t_m > 0.0) || t_m > b_m / 10.0 || pane.pressure_pa < 0.0) {
        return std::nullopt;
    }
    const Row row = row_at(b_m / a_m);
    const double slenderness = b_m / t_m;
    const PaneBending result = {.stress_pa = row.beta * pane.pressure_pa * slenderness * slenderness,
                                .deflection_m = row.alpha * pane.pressure_pa * b_m * slenderness * slenderness *
                                                slenderness / pane.youngs_modulus_pa};
    if (result.deflection_m > t_m / 2.0) {
        return std::nullopt;
    }
    return result;
}

} // namespace loam::substrate
