#include "app/sheets/outer_size.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace loam::sheets {

namespace {

// Of one wall with what lies on its outside.
std::optional<double> thickness_of(const plan::Shell& shell, plan::Wall wall)
{
    std::optional<double> thickness_m = shell.wall_thickness_m;
    for (const plan::Panel& panel : shell.panels) {
        if (panel.wall == wall) {
            thickness_m = panel.thickness_m;
        }
    }
    for (const plan::Lining& lining : shell.linings) {
        if (lining.wall == wall && lining.side == plan::Side::outside) {
            thickness_m =
                thickness_m && lining.thickness_m ? std::optional(*thickness_m + *lining.thickness_m) : std::nullopt;
        }
    }
    return thickness_m;
}

} // namespace

std::optional<OuterSize> outer_size(const plan::Shell& shell)
{
    const auto left = thickness_of(shell, plan::Wall::left);
    const auto right = thickness_of(shell, plan::Wall::right);
    const auto front = thickness_of(shell, plan::Wall::front);
    const auto back = thickness_of(shell, plan::Wall::back);
    const bool pane = shell.top.kind == plan::TopKind::glass || shell.top.kind == plan::TopKind::board;
    const std::optional<double> top = pane ? shell.top.thickness_m : std::optional(0.0);
    if (!left || !right || !front || !back || !shell.base_thickness_m || !top) {
        return std::nullopt;
    }
    return OuterSize{shell.length_m + *left + *right, shell.width_m + *front + *back,
                     shell.height_m + *shell.base_thickness_m + *top};
}

Sides sides_of(const OuterSize& size)
{
    std::array sides{size.length_m, size.width_m, size.height_m};
    std::sort(sides.begin(), sides.end());
    return {sides[0], sides[1], sides[2]};
}

double height_to_turn_m(const Sides& sides)
{
    return std::hypot(sides.longest_m, sides.least_m);
}

} // namespace loam::sheets
