#include <algorithm>
#include <cmath>

#include "core/light/uv.hpp"

namespace loam::light {

namespace {

constexpr double same_distance_m = 1e-3;

// The table by distance, without readings of zero, which say nothing of a power law; empty where it holds something
// that is no reading.
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

// y at x on the power law through two points.
double on_power_law(double x, double x0, double y0, double x1, double y1)
{
    return y0 * std::pow(x / x0, std::log(y1 / y0) / std::log(x1 / x0));
}

} // namespace

std::optional<double> uvi_below(const std::vector<UvPoint>& table, double distance_m)
{
    const std::vector<UvPoint> points = in_order(table);
    if (points.size() == 1 && std::abs(distance_m - points.front().distance_m) <= same_distance_m) {
        return points.front().uvi;
    }
    for (std::size_t i = 1; i < points.size(); ++i) {
        const UvPoint& near = points[i - 1];
        const UvPoint& far = points[i];
        if (near.distance_m <= distance_m && distance_m <= far.distance_m) {
            return on_power_law(distance_m, near.distance_m, near.uvi, far.distance_m, far.uvi);
        }
    }
    return std::nullopt;
}

std::optional<double> uvi_below_at_most(const std::vector<UvPoint>& table, double distance_m)
{
    const std::vector<UvPoint> points = in_order(table);
    if (!points.empty() && distance_m > points.back().distance_m) {
        return points.back().uvi;
    }
    return uvi_below(table, distance_m);
}

std::optional<double> distance_of_uvi(const std::vector<UvPoint>& table, double uvi)
{
    const std::vector<UvPoint> points = in_order(table);
    std::optional<double> distance_m;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const UvPoint& near = points[i - 1];
        const UvPoint& far = points[i];
        if (far.uvi >= near.uvi) {
            return std::nullopt;
        }
        if (far.uvi <= uvi && uvi <= near.uvi) {
            distance_m = on_power_law(uvi, near.uvi, near.distance_m, far.uvi, far.distance_m);
        }
    }
    return distance_m;
}

} // namespace loam::light
