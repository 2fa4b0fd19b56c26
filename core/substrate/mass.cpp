#include "core/substrate/mass.hpp"

#include "core/independent.hpp"
#include "core/units.hpp"

namespace loam::substrate {

double footprint_m2(const ShellForm& shell)
{
    const double both_walls_m = 2.0 * shell.walls.thickness_m;
    return (shell.length_m + both_walls_m) * (shell.width_m + both_walls_m);
}

Range shell_kg(const ShellForm& shell)
{
    const double long_m2 = (shell.length_m + 2.0 * shell.walls.thickness_m) * shell.height_m;
    const double side_m2 = shell.width_m * shell.height_m;
    const double plan_m2 = footprint_m2(shell);
    const auto sheet_kg = [](const Panel& panel, double area_m2) {
        return scaled(panel.density_kg_m3, panel.thickness_m * area_m2);
    };
    // Sheets of one make share their spread: the walls are summed before they count as one.
    double walls_m2 = 0.0;
    std::vector<Range> sheets_kg = {sheet_kg(shell.base, plan_m2)};
    const auto add_wall = [&](const std::optional<Panel>& other, double area_m2) {
        if (other) {
            sheets_kg.push_back(sheet_kg(*other, area_m2));
        } else {
            walls_m2 += area_m2;
        }
    };
    add_wall(shell.front, long_m2);
    add_wall(shell.back, long_m2);
    add_wall(shell.left, side_m2);
    add_wall(shell.right, side_m2);
    sheets_kg.push_back(sheet_kg(shell.walls, walls_m2));
    for (const Panel& lining : shell.long_linings) {
        sheets_kg.push_back(sheet_kg(lining, long_m2));
    }
    for (const Panel& lining : shell.side_linings) {
        sheets_kg.push_back(sheet_kg(lining, side_m2));
    }
    if (shell.top) {
        sheets_kg.push_back(sheet_kg(*shell.top, plan_m2));
    }
    return sum_of_independent(sheets_kg);
}

std::optional<Load> load(const Masses& masses, double footprint_m2)
{
    if (!(footprint_m2 > 0.0)) {
        return std::nullopt;
    }
    const Range total_kg = sum_of_independent(
        {masses.shell_kg, masses.substrate_kg, masses.water_kg, masses.fittings_kg, masses.animals_kg});
    return Load{total_kg, scaled(total_kg, units::standard_gravity_m_s2 / footprint_m2 / 1000.0)};
}

} // namespace loam::substrate
