#include "core/light/uv_readings.hpp"

#include <algorithm>
#include <cmath>

namespace loam::light {

namespace {

constexpr double reading_reach = 2.0; // how many times nearer and farther than it was taken one reading holds

// By distance and without zeros; empty where the list holds something that is no reading.
std::vector<UvPoint> in_order(std::vector<UvPoint> table)
{
    std::sort(table.begin(), table.end(),
              [](const UvPoint& a, const UvPoint& b) { return a.distance_m < b.distance_m; });
    for (std::size_t i = 0; i < table.size(); ++i) {
        const bool repeats = i > 0 && table[i].distance_m == table[i - 1].distance_m;
        if (!(table[i].distance_m > 0.0) || !(table[i].uvi >= 0.0) || repeats) {
            return {};
        }
    }
    std::erase_if(table, [](const UvPoint& point) { return point.uvi == 0.0; });
    return table;
}

} // namespace

double line_integral(double u_m, double p_m)
{
    return u_m / (2.0 * p_m * p_m * (p_m * p_m + u_m * u_m)) + std::atan(u_m / p_m) / (2.0 * p_m * p_m * p_m);
}

Readings::Readings(const UvLamp& lamp) : tube_m_(lamp.length_m), behind_m_(lamp.light_behind_m)
{
    for (const UvPoint& point : in_order(lamp.table)) {
        knots_.push_back({point.distance_m, point.uvi, std::log(point.distance_m), std::log(point.uvi)});
    }
    if (knots_.size() == 1) {
        const double distance_m = knots_.front().distance_m;
        at_reading_ = {fall(distance_m, behind_m_.low), fall(distance_m, behind_m_.likely),
                       fall(distance_m, behind_m_.high)};
    }
}

std::optional<Reach> Readings::reach() const
{
    if (knots_.empty()) {
        return std::nullopt;
    }
    if (knots_.size() == 1) {
        return Reach{knots_.front().distance_m / reading_reach, knots_.front().distance_m * reading_reach};
    }
    return Reach{knots_.front().distance_m, knots_.back().distance_m};
}

// How the light falls with distance, to a factor.
double Readings::fall(double distance_m, double behind_m) const
{
    const double from_source_m = distance_m + behind_m;
    const double square = from_source_m * from_source_m;
    return tube_m_ > 0.0 ? square * line_integral(tube_m_ / 2.0, from_source_m) : 1.0 / square;
}

Range Readings::by_law(double distance_m) const
{
    const double uvi = knots_.front().uvi;
    const double near_face = uvi * fall(distance_m, behind_m_.low) / at_reading_.low;
    const double likely = uvi * fall(distance_m, behind_m_.likely) / at_reading_.likely;
    const double far_behind = uvi * fall(distance_m, behind_m_.high) / at_reading_.high;
    return {std::min(near_face, far_behind), likely, std::max(near_face, far_behind)};
}

std::optional<Range> Readings::below(double distance_m) const
{
    const std::optional<Reach> held = reach();
    if (!held || !(distance_m >= held->nearest_m) || !(distance_m <= held->farthest_m)) {
        return std::nullopt;
    }
    if (knots_.size() == 1) {
        return by_law(distance_m);
    }
    std::size_t i = 1;
    while (knots_[i].distance_m < distance_m) {
        ++i;
    }
    const Knot& near = knots_[i - 1];
    const Knot& far = knots_[i];
    const double part = (std::log(distance_m) - near.log_distance) / (far.log_distance - near.log_distance);
    return exactly(std::exp(std::lerp(near.log_uvi, far.log_uvi, part)));
}

std::optional<double> Readings::below_at_most(double distance_m) const
{
    const std::optional<Reach> held = reach();
    if (!held) {
        return std::nullopt;
    }
    const std::optional<Range> there = below(std::min(distance_m, held->farthest_m));
    return there ? std::optional(there->high) : std::nullopt;
}

} // namespace loam::light
