#include "core/light/photoperiod.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace loam::light {

namespace {

constexpr double pi = std::numbers::pi;
constexpr double degree = pi / 180.0;
constexpr int minutes_per_day = 24 * 60;

std::optional<int> two_digits(std::string_view text)
{
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    if (text.size() != 2 || !digit(text[0]) || !digit(text[1])) {
        return std::nullopt;
    }
    return (text[0] - '0') * 10 + (text[1] - '0');
}

} // namespace

std::optional<double> day_length_h(double latitude_deg, int day_of_year, double sun_below_horizon_deg)
{
    if (!(std::abs(latitude_deg) <= 90.0) || day_of_year < 1 || day_of_year > 366) {
        return std::nullopt;
    }
    // The letters of the source: theta, the earth's place on its way; phi, the sun's declination; p and L.
    const double theta = 0.2163108 + 2.0 * std::atan(0.9671396 * std::tan(0.00860 * (day_of_year - 186)));
    const double phi = std::asin(0.39795 * std::cos(theta));
    const double latitude = latitude_deg * degree;
    const double above = std::sin(sun_below_horizon_deg * degree) + std::sin(latitude) * std::sin(phi);
    const double across = std::cos(latitude) * std::cos(phi);
    if (std::abs(above) >= across) { // polar day or night, and the poles themselves
        return above > 0.0 ? 24.0 : 0.0;
    }
    return 24.0 - 24.0 / pi * std::acos(above / across);
}

std::optional<int> day_of_year(std::chrono::year_month_day date)
{
    if (!date.ok()) {
        return std::nullopt;
    }
    const auto new_year = std::chrono::sys_days(date.year() / std::chrono::January / 1);
    return static_cast<int>((std::chrono::sys_days(date) - new_year).count()) + 1;
}

std::optional<YearOfLight> year_of_light(double latitude_deg)
{
    YearOfLight year = {0.0, 24.0};
    for (int day = 1; day <= 365; ++day) {
        const std::optional<double> length_h = day_length_h(latitude_deg, day);
        if (!length_h) {
            return std::nullopt;
        }
        year.longest_h = std::max(year.longest_h, *length_h);
        year.shortest_h = std::min(year.shortest_h, *length_h);
    }
    return year;
}

std::optional<int> minutes_of_clock(std::string_view hh_mm)
{
    if (hh_mm.size() != 5 || hh_mm[2] != ':') {
        return std::nullopt;
    }
    const std::optional<int> hours = two_digits(hh_mm.substr(0, 2));
    const std::optional<int> minutes = two_digits(hh_mm.substr(3, 2));
    if (!hours || !minutes || *hours > 23 || *minutes > 59) {
        return std::nullopt;
    }
    return *hours * 60 + *minutes;
}

std::optional<double> hours_between(std::string_view on, std::string_view off)
{
    const std::optional<int> from = minutes_of_clock(on);
    const std::optional<int> to = minutes_of_clock(off);
    if (!from || !to || *from == *to) {
        return std::nullopt;
    }
    return ((*to - *from + minutes_per_day) % minutes_per_day) / 60.0;
}

} // namespace loam::light
