// Amounts counted in whole millionths of their unit, so that sums and comparisons of them are exact: three bags of
// 0.7 l cover 2.1 l.
#pragma once

#include <cmath>
#include <cstdint>
#include <optional>

namespace loam::buying {

inline constexpr double millionths_per_unit = 1e6;
inline constexpr double most_units = 1e12;

// To the nearest millionth. nullopt for a negative, non-finite or larger amount than can be counted.
inline std::optional<std::int64_t> millionths(double amount)
{
    if (!(amount >= 0.0 && amount <= most_units)) {
        return std::nullopt;
    }
    return std::llround(amount * millionths_per_unit);
}

inline double units(std::int64_t millionths)
{
    return static_cast<double>(millionths) / millionths_per_unit;
}

} // namespace loam::buying
