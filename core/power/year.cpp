#include "core/power/year.hpp"

#include <algorithm>

#include "core/independent.hpp"

namespace loam::power {

namespace {

// Hours at full winter and at full summer duty, over 1000.
struct Kilohours {
    double winter = 0.0;
    double summer = 0.0;
};

struct YearKilohours {
    std::array<Kilohours, 12> months;
    Kilohours year;
};

YearKilohours kilohours(const Device& device, const YearCourse& course, const DailyShare& winter_share)
{
    YearKilohours sum;
    for (int day = 0; day < days_of_year; ++day) {
        const auto i = static_cast<std::size_t>(day);
        const double hours = (device.timed ? course.light_h[i] : 24.0) * course.running_share[i] / 1000.0;
        for (Kilohours* into : {&sum.months[static_cast<std::size_t>(month_of(day))], &sum.year}) {
            into->winter += hours * winter_share[i];
            into->summer += hours * (1.0 - winter_share[i]);
        }
    }
    return sum;
}

Range joined(const Range& winter_w, const Range& summer_w, const Kilohours& hours)
{
    return {winter_w.low * hours.winter + summer_w.low * hours.summer,
            winter_w.likely * hours.winter + summer_w.likely * hours.summer,
            winter_w.high * hours.winter + summer_w.high * hours.summer};
}

void widen(Range& range, const Range& other)
{
    range.low = std::min(range.low, other.low);
    range.high = std::max(range.high, other.high);
}

} // namespace

int month_of(int day)
{
    constexpr std::array first_of{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334};
    return static_cast<int>(std::upper_bound(first_of.begin(), first_of.end(), day) - first_of.begin()) - 1;
}

DeviceYear year_of(const Device& device, const YearCourse& course)
{
    const Range winter_w = product_of_independent({device.connected_w, device.duty_winter});
    const Range summer_w = product_of_independent({device.connected_w, device.duty_summer});
    DeviceYear result;
    result.id = device.id;
    for (std::size_t way = 0; way < course.winter_share.size(); ++way) {
        const YearKilohours hours = kilohours(device, course, course.winter_share[way]);
        const Range year = joined(winter_w, summer_w, hours.year);
        if (way == 0) {
            result.year_kwh = year;
        }
        widen(result.year_kwh, year);
        for (std::size_t month = 0; month < result.month_kwh.size(); ++month) {
            const Range kwh = joined(winter_w, summer_w, hours.months[month]);
            if (way == 0) {
                result.month_kwh[month] = kwh;
            }
            widen(result.month_kwh[month], kwh);
        }
    }
    return result;
}

Year year_together(const std::vector<DeviceYear>& devices)
{
    Year sum;
    std::vector<Range> parts(devices.size());
    for (std::size_t month = 0; month < sum.month_kwh.size(); ++month) {
        std::transform(devices.begin(), devices.end(), parts.begin(),
                       [month](const DeviceYear& device) { return device.month_kwh[month]; });
        sum.month_kwh[month] = sum_of_independent(parts);
    }
    std::transform(devices.begin(), devices.end(), parts.begin(),
                   [](const DeviceYear& device) { return device.year_kwh; });
    sum.year_kwh = sum_of_independent(parts);
    return sum;
}

} // namespace loam::power
