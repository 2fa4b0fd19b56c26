#include "core/assess/cover_places.hpp"

#include <algorithm>
#include <string>

namespace loam::assess {

namespace {

struct Ends {
    double left_m = 0.0;  // free from the left wall to here
    double right_m = 0.0; // and from here to the right one
};

Ends free_ends(const climate::Box& box, double clearance_m)
{
    Ends ends{box.length_m, 0.0};
    for (const climate::Lamp& lamp : box.lamps) {
        const double half_m = lamp.length_m / 2.0 + clearance_m;
        ends.left_m = std::min(ends.left_m, lamp.at.x_m - half_m);
        ends.right_m = std::max(ends.right_m, lamp.at.x_m + half_m);
    }
    ends.left_m = std::clamp(ends.left_m, 0.0, box.length_m);
    ends.right_m = std::clamp(ends.right_m, ends.left_m, box.length_m);
    return ends;
}

} // namespace

std::vector<climate::Rect> cover_places(const climate::Box& box, double share, double clearance_m)
{
    constexpr double least_m = 1e-3;
    if (box.top != climate::TopKind::mesh) {
        return {};
    }
    const Ends ends = free_ends(box, clearance_m);
    double wanted_m = std::clamp(share, 0.0, most_covered_share) * box.length_m;
    const double at_right_m = box.length_m - ends.right_m;
    const bool left_first = ends.left_m >= at_right_m;
    std::vector<climate::Rect> places;
    for (const bool left : {left_first, !left_first}) {
        const double length_m = std::min(wanted_m, left ? ends.left_m : at_right_m);
        if (length_m >= least_m) {
            places.push_back({left ? 0.0 : box.length_m - length_m, 0.0, length_m, box.width_m});
            wanted_m -= length_m;
        }
    }
    return places;
}

double coverable_share(const climate::Box& box, double clearance_m)
{
    double covered_m = 0.0;
    for (const climate::Rect& place : cover_places(box, most_covered_share, clearance_m)) {
        covered_m += place.length_m;
    }
    return covered_m / box.length_m;
}

double covered_share(const climate::Box& box)
{
    // The edges of the covers cut the top into a grid, whose fields each are covered or not.
    std::vector<double> xs{0.0, box.length_m};
    std::vector<double> ys{0.0, box.width_m};
    for (const climate::CoverPatch& cover : box.covers) {
        for (const double x : {cover.area.x_m, cover.area.x_m + cover.area.length_m}) {
            xs.push_back(std::clamp(x, 0.0, box.length_m));
        }
        for (const double y : {cover.area.y_m, cover.area.y_m + cover.area.width_m}) {
            ys.push_back(std::clamp(y, 0.0, box.width_m));
        }
    }
    std::sort(xs.begin(), xs.end());
    std::sort(ys.begin(), ys.end());
    double covered_m2 = 0.0;
    for (std::size_t i = 0; i + 1 < xs.size(); ++i) {
        for (std::size_t j = 0; j + 1 < ys.size(); ++j) {
            const double x = 0.5 * (xs[i] + xs[i + 1]);
            const double y = 0.5 * (ys[j] + ys[j + 1]);
            const auto lies_there = [&](const climate::CoverPatch& cover) {
                const climate::Rect& area = cover.area;
                return x > area.x_m && x < area.x_m + area.length_m && y > area.y_m && y < area.y_m + area.width_m;
            };
            if (std::any_of(box.covers.begin(), box.covers.end(), lies_there)) {
                covered_m2 += (xs[i + 1] - xs[i]) * (ys[j + 1] - ys[j]);
            }
        }
    }
    return covered_m2 / (box.length_m * box.width_m);
}

climate::Box with_cover_share(const climate::Box& box, double share, double clearance_m)
{
    climate::Box result = box;
    climate::CoverPatch cover;
    if (box.covers.empty()) {
        cover.sheet = box.walls; // only its tightness matters for moisture
        cover.sheet.thickness_m = 0.004;
        cover.leak = {0.0, 0.03, 0.1}; // at its rim: as the list of materials has it for a pane
    } else {
        cover = box.covers.front();
    }
    result.covers.clear();
    for (const climate::Rect& place : cover_places(box, share, clearance_m)) {
        cover.id = "tried-" + std::to_string(result.covers.size() + 1);
        cover.area = place;
        result.covers.push_back(cover);
    }
    return result;
}

} // namespace loam::assess
