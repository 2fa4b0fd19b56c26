#include "core/power/energy.hpp"

#include "core/independent.hpp"

namespace loam::power {

namespace {

constexpr double days_per_year = 365.0;

Range kwh_per_day(const Device& device, const Range& duty)
{
    return scaled(product_of_independent({device.connected_w, duty}), device.hours_per_day / 1000.0);
}

// Winter and summer share the device's wattage, so their errors go together and end joins end.
Range mean_of(const Range& winter, const Range& summer)
{
    return {(winter.low + summer.low) / 2.0, (winter.likely + summer.likely) / 2.0, (winter.high + summer.high) / 2.0};
}

} // namespace

Energy energy(const Device& device)
{
    Energy result;
    result.id = device.id;
    result.winter_kwh_per_day = kwh_per_day(device, device.duty_winter);
    result.summer_kwh_per_day = kwh_per_day(device, device.duty_summer);
    result.kwh_per_year = scaled(mean_of(result.winter_kwh_per_day, result.summer_kwh_per_day), days_per_year);
    return result;
}

Together together(const std::vector<Device>& devices)
{
    std::vector<Range> connected_w;
    std::vector<Range> winter_kwh;
    std::vector<Range> summer_kwh;
    std::vector<Range> year_kwh;
    Together result;
    for (const Device& device : devices) {
        const Energy one = energy(device);
        connected_w.push_back(device.connected_w);
        winter_kwh.push_back(one.winter_kwh_per_day);
        summer_kwh.push_back(one.summer_kwh_per_day);
        year_kwh.push_back(one.kwh_per_year);
        ++(device.timed ? result.timed_outlets : result.always_on_outlets);
    }
    result.connected_w = sum_of_independent(connected_w);
    result.winter_kwh_per_day = sum_of_independent(winter_kwh);
    result.summer_kwh_per_day = sum_of_independent(summer_kwh);
    result.kwh_per_year = sum_of_independent(year_kwh);
    result.mean_kwh_per_day = scaled(result.kwh_per_year, 1.0 / days_per_year);
    return result;
}

} // namespace loam::power
