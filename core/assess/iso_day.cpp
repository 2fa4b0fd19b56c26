#include "core/assess/iso_day.hpp"

#include <charconv>

namespace loam::assess {

std::optional<std::chrono::sys_days> day_of(const std::string& iso)
{
    int parts[3] = {0, 0, 0};
    const std::size_t starts[3] = {0, 5, 8};
    const std::size_t lengths[3] = {4, 2, 2};
    if (iso.size() != 10) {
        return std::nullopt;
    }
    for (std::size_t i = 0; i < 3; ++i) {
        const char* from = iso.data() + starts[i];
        const auto [end, error] = std::from_chars(from, from + lengths[i], parts[i]);
        if (error != std::errc() || end != from + lengths[i]) {
            return std::nullopt;
        }
    }
    const std::chrono::year_month_day day{std::chrono::year(parts[0]),
                                          std::chrono::month(static_cast<unsigned>(parts[1])),
                                          std::chrono::day(static_cast<unsigned>(parts[2]))};
    return day.ok() ? std::optional(std::chrono::sys_days(day)) : std::nullopt;
}

std::string iso_of(std::chrono::sys_days day)
{
    const std::chrono::year_month_day date(day);
    const auto digits = [](unsigned value, std::size_t width) {
        const std::string text = std::to_string(value);
        return std::string(width > text.size() ? width - text.size() : 0, '0') + text;
    };
    return digits(static_cast<unsigned>(static_cast<int>(date.year())), 4) + '-' +
           digits(static_cast<unsigned>(date.month()), 2) + '-' + digits(static_cast<unsigned>(date.day()), 2);
}

} // namespace loam::assess
