#include "core/substrate/bed.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>
#include <optional>

#include "core/independent.hpp"

namespace loam::substrate {

namespace {

constexpr double water_kg_m3 = 998.2; // at 20 degC

// Straight in x: value at the left wall and at the right one.
struct Line {
    double left = 0.0;
    double right = 0.0;
    double at(double share) const { return left + share * (right - left); }
};

// One layer between two straight surfaces.
struct Slice {
    Line bottom_m;
    Line top_m;
};

struct Corner {
    double x_m = 0.0;
    double y_m = 0.0;
};

std::vector<Corner> corners_of(const SunkPart& part)
{
    const double turn = part.rotation_deg * std::numbers::pi / 180.0;
    const double half_x_m = part.length_m / 2.0;
    const double half_y_m = part.width_m / 2.0;
    const auto turned = [&](double dx_m, double dy_m) {
        return Corner{part.x_m + half_x_m + dx_m * std::cos(turn) - dy_m * std::sin(turn),
                      part.y_m + half_y_m + dx_m * std::sin(turn) + dy_m * std::cos(turn)};
    };
    return {turned(-half_x_m, -half_y_m), turned(half_x_m, -half_y_m), turned(half_x_m, half_y_m),
            turned(-half_x_m, half_y_m)};
}

// How wide the part is at x, within the floor.
double chord_m(const std::vector<Corner>& corners, const Floor& floor, double x_m)
{
    std::optional<double> from_m;
    std::optional<double> to_m;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Corner& here = corners[i];
        const Corner& next = corners[(i + 1) % corners.size()];
        if ((here.x_m <= x_m) == (next.x_m <= x_m)) {
            continue;
        }
        const double y_m = here.y_m + (x_m - here.x_m) / (next.x_m - here.x_m) * (next.y_m - here.y_m);
        const double within_m = std::clamp(y_m, 0.0, floor.width_m);
        from_m = std::min(from_m.value_or(within_m), within_m);
        to_m = std::max(to_m.value_or(within_m), within_m);
    }
    return from_m ? *to_m - *from_m : 0.0;
}

double shared_height_m(const SunkPart& part, const Slice& slice, double share)
{
    const double from_m = std::max(part.bottom_m, slice.bottom_m.at(share));
    const double to_m = std::min(part.top_m, slice.top_m.at(share));
    return std::max(0.0, to_m - from_m);
}

void add_level_crossing(const Line& line, double level_m, const Floor& floor, std::vector<double>& cuts_m)
{
    if (line.left != line.right) {
        cuts_m.push_back((level_m - line.left) / (line.right - line.left) * floor.length_m);
    }
}

void add_wall_crossings(const std::vector<Corner>& corners, const Floor& floor, std::vector<double>& cuts_m)
{
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Corner& here = corners[i];
        const Corner& next = corners[(i + 1) % corners.size()];
        for (const double wall_m : {0.0, floor.width_m}) {
            if (here.y_m != next.y_m) {
                const double share = (wall_m - here.y_m) / (next.y_m - here.y_m);
                cuts_m.push_back(here.x_m + share * (next.x_m - here.x_m));
            }
        }
    }
}

// Every x at which the part's width or the height it shares with the layer may bend.
std::vector<double> bends_of(const SunkPart& part, const Slice& slice, const std::vector<Corner>& corners,
                             const Floor& floor)
{
    std::vector<double> cuts_m = {0.0, floor.length_m};
    for (const Corner& corner : corners) {
        cuts_m.push_back(corner.x_m);
    }
    for (const double level_m : {part.bottom_m, part.top_m}) {
        add_level_crossing(slice.bottom_m, level_m, floor, cuts_m);
        add_level_crossing(slice.top_m, level_m, floor, cuts_m);
    }
    add_wall_crossings(corners, floor, cuts_m);
    for (double& cut_m : cuts_m) {
        cut_m = std::clamp(cut_m, 0.0, floor.length_m);
    }
    std::sort(cuts_m.begin(), cuts_m.end());
    return cuts_m;
}

double taken_m3(const SunkPart& part, const Slice& slice, const Floor& floor)
{
    const std::vector<Corner> corners = corners_of(part);
    const std::vector<double> cuts_m = bends_of(part, slice, corners, floor);
    const double gauss = 0.5 / std::numbers::sqrt3;
    double volume_m3 = 0.0;
    for (std::size_t i = 1; i < cuts_m.size(); ++i) {
        const double width_m = cuts_m[i] - cuts_m[i - 1];
        for (const double offset : {0.5 - gauss, 0.5 + gauss}) {
            const double x_m = cuts_m[i - 1] + offset * width_m;
            volume_m3 +=
                0.5 * width_m * chord_m(corners, floor, x_m) * shared_height_m(part, slice, x_m / floor.length_m);
        }
    }
    return volume_m3;
}

LayerAmount amount_of(const Layer& layer, double volume_m3)
{
    assert(layer.settling.high < 1.0);
    LayerAmount amount;
    amount.id = layer.id;
    amount.settled_l = volume_m3 * 1000.0;
    amount.fill_in_l = scaled(reciprocal(remainder_of_one(layer.settling)), amount.settled_l);
    amount.dry_kg = scaled(layer.dry_density_kg_m3, volume_m3);
    amount.water_l = scaled(layer.water_fraction, amount.settled_l);
    amount.damp_kg = sum_of_independent({amount.dry_kg, scaled(layer.water_fraction, volume_m3 * water_kg_m3)});
    return amount;
}

} // namespace

std::vector<LayerAmount> bed_amounts(const Floor& floor, const std::vector<Layer>& layers,
                                     const std::vector<SunkPart>& sunk)
{
    std::vector<LayerAmount> amounts;
    Line surface_m;
    for (const Layer& layer : layers) {
        const Slice slice = {surface_m, {surface_m.left + layer.depth_left_m, surface_m.right + layer.depth_right_m}};
        double volume_m3 = floor.length_m * floor.width_m * (layer.depth_left_m + layer.depth_right_m) / 2.0;
        for (const SunkPart& part : sunk) {
            volume_m3 -= floor.length_m > 0.0 ? taken_m3(part, slice, floor) : 0.0;
        }
        amounts.push_back(amount_of(layer, std::max(0.0, volume_m3)));
        surface_m = slice.top_m;
    }
    return amounts;
}

double surface_m(const Floor& floor, const std::vector<Layer>& layers, double x_m)
{
    assert(floor.length_m > 0.0);
    Line surface_m;
    for (const Layer& layer : layers) {
        surface_m.left += layer.depth_left_m;
        surface_m.right += layer.depth_right_m;
    }
    return surface_m.at(x_m / floor.length_m);
}

} // namespace loam::substrate
