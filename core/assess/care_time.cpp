#include "core/assess/care_time.hpp"

#include <algorithm>
#include <string>
#include <string_view>

#include "core/assess/context.hpp"

namespace loam::assess {

namespace {

constexpr double days_a_week = 7.0;
constexpr double weeks_a_month = 365.25 / 12.0 / 7.0;
constexpr double minutes_an_hour = 60.0;

Range product(const Range& a, const Range& b)
{
    return {a.low * b.low, a.likely * b.likely, a.high * b.high};
}

Range sum(const Range& a, const Range& b)
{
    return {a.low + b.low, a.likely + b.likely, a.high + b.high};
}

std::string_view name_of(catalog::Group group)
{
    switch (group) {
    case catalog::Group::land_turtle:
        return "land-turtle";
    case catalog::Group::tortoise:
        return "tortoise";
    case catalog::Group::lizard:
        return "lizard";
    case catalog::Group::snake:
        return "snake";
    case catalog::Group::frog:
        return "frog";
    }
    return {};
}

// Each species is fed by itself, its animals together.
std::optional<Range> feedings_per_week(const plan::Enclosure& enclosure, const catalog::Catalog& catalog)
{
    std::optional<Range> total;
    for (const catalog::Species* species : species_in(enclosure, catalog)) {
        const auto often = spread_of(catalog, "care.feedings_per_week." + std::string(name_of(species->group)));
        if (!often) {
            return std::nullopt;
        }
        total = sum(total.value_or(Range{}), *often);
    }
    return total;
}

Range mistings_per_week(const plan::Enclosure& enclosure)
{
    const bool by_machine = std::any_of(enclosure.equipment.begin(), enclosure.equipment.end(),
                                        [](const auto& device) { return device.kind == plan::DeviceKind::mister; });
    if (by_machine || enclosure.moisture.misting_l_per_day.value_or(0.0) <= 0.0) {
        return {};
    }
    const auto times = enclosure.moisture.mistings_per_day;
    return scaled(times ? exactly(static_cast<double>(*times)) : Range{1.0, 1.0, 3.0}, days_a_week);
}

double bowls_in(const plan::Enclosure& enclosure)
{
    return static_cast<double>(
        std::count_if(enclosure.fittings.begin(), enclosure.fittings.end(),
                      [](const auto& fitting) { return fitting.kind == plan::FittingKind::water_bowl; }));
}

} // namespace

std::vector<CareTime> care_times(const plan::Enclosure& enclosure, const WaterResult& water,
                                 const catalog::Catalog& catalog)
{
    std::vector<CareTime> times;
    if (animal_count(enclosure) == 0) {
        return times;
    }
    const auto add = [&](CareKind kind, const std::optional<Range>& often, std::string_view minutes_id) {
        const auto minutes = spread_of(catalog, minutes_id);
        if (often && often->high > 0.0 && minutes) {
            times.push_back({kind, *often, *minutes, scaled(product(*often, *minutes), 1.0 / minutes_an_hour)});
        }
    };
    add(CareKind::look, exactly(days_a_week), "care.look_min");
    add(CareKind::feeding, feedings_per_week(enclosure, catalog), "care.feeding_min");
    add(CareKind::water_change, scaled(water.changes_per_day, days_a_week * bowls_in(enclosure)),
        "care.water_change_min");
    add(CareKind::misting, mistings_per_week(enclosure), "care.misting_min");
    add(CareKind::weekly, exactly(1.0), "care.weekly_min");
    add(CareKind::monthly, exactly(1.0 / weeks_a_month), "care.monthly_min");
    return times;
}

std::optional<Range> hours_per_week(const std::vector<CareTime>& times)
{
    std::optional<Range> total;
    for (const CareTime& one : times) {
        total = sum(total.value_or(Range{}), one.hours_per_week);
    }
    return total;
}

} // namespace loam::assess
