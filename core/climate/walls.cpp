#include "core/climate/walls.hpp"

#include <algorithm>

namespace loam::climate {

namespace {

const WallBuild* build_of(const Box& box, Plane plane)
{
    const auto plane_of = [](Wall wall) {
        switch (wall) {
        case Wall::front:
            return Plane::front;
        case Wall::back:
            return Plane::back;
        case Wall::left:
            return Plane::left;
        case Wall::right:
            break;
        }
        return Plane::right;
    };
    const auto found = std::find_if(box.other_walls.begin(), box.other_walls.end(),
                                    [&](const WallBuild& build) { return plane_of(build.wall) == plane; });
    return found != box.other_walls.end() ? &*found : nullptr;
}

} // namespace

std::vector<const Sheet*> wall_sheets(const Box& box, Plane plane, bool under_mat)
{
    const WallBuild* build = build_of(box, plane);
    if (build == nullptr)
        return {&box.walls};
    std::vector<const Sheet*> sheets;
    for (std::size_t i = build->inside.size(); i-- > 0;)
        sheets.push_back(&build->inside[i].sheet);
    sheets.push_back(build->panel ? &build->panel->sheet : &box.walls);
    if (!under_mat)
        for (const WallLayer& layer : build->outside)
            sheets.push_back(&layer.sheet);
    return sheets;
}

double resistance_m2k_w(const std::vector<const Sheet*>& sheets)
{
    double sum = 0.0;
    for (const Sheet* sheet : sheets)
        sum += sheet->thickness_m / sheet->conductivity_w_mk.likely;
    return sum;
}

LampShares lamp_shares(const std::vector<const Sheet*>& sheets)
{
    LampShares shares;
    for (const Sheet* sheet : sheets) {
        shares.absorbed += shares.passed * sheet->lamp_absorptance.likely;
        shares.passed *= sheet->lamp_transmittance.likely;
    }
    return shares;
}

} // namespace loam::climate
