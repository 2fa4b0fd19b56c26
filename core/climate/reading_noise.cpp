#include "core/climate/reading_noise.hpp"

#include <cmath>

namespace loam::climate {

namespace {

double thermometer(const TakenReading& one, const TakenReading& other, bool same)
{
    constexpr double shared = 0.8;
    if (one.at.measure != other.at.measure)
        return 0.0;
    return (same ? 1.0 : shared) * one.accuracy_k * other.accuracy_k / 3.0;
}

double model(const TakenReading& one, const TakenReading& other, const Box& box)
{
    if (one.lamps_on != other.lamps_on)
        return 0.0;
    const double apart_m = std::hypot(one.at.x_m - other.at.x_m, one.at.y_m - other.at.y_m);
    const double alike = std::exp(-3.0 * apart_m / box.length_m);
    return (one.at.measure == other.at.measure ? 1.0 : 0.5) * alike * box.model_error_k * box.model_error_k;
}

} // namespace

std::vector<double> noise_of(const std::vector<TakenReading>& readings, const Box& box)
{
    std::vector<double> noise;
    for (std::size_t i = 0; i < readings.size(); ++i)
        for (std::size_t j = 0; j < readings.size(); ++j)
            noise.push_back(thermometer(readings[i], readings[j], i == j) + model(readings[i], readings[j], box));
    return noise;
}

} // namespace loam::climate
