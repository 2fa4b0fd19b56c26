#include "app/desk/views/course_targets.hpp"

#include <algorithm>
#include <string>

namespace loam::desk {

namespace {

const assess::HeatCase* find_case(const assess::EnclosureResult& enclosure, const std::string& id)
{
    const auto found = std::find_if(enclosure.heat.begin(), enclosure.heat.end(),
                                    [&id](const assess::HeatCase& heat) { return heat.id == id; });
    return found == enclosure.heat.end() ? nullptr : &*found;
}

// A course's readings are of the surface at the basking spot and at ground level elsewhere.
bool same_measure(const assess::ZoneResult& zone)
{
    return zone.measure == (zone.zone == assess::Zone::basking ? climate::Measure::surface : climate::Measure::ground);
}

void add_bands(const assess::HeatCase* heat, const words::Hours& when, std::vector<TargetBand>& bands)
{
    if (heat == nullptr || when.to_h <= when.from_h) {
        return;
    }
    const std::size_t first = bands.size();
    for (const assess::ZoneResult& zone : heat->zones) {
        if (!same_measure(zone) || (!zone.target_c.min && !zone.target_c.max)) {
            continue;
        }
        const auto same = std::find_if(
            bands.begin() + static_cast<std::ptrdiff_t>(first), bands.end(), [&zone](const TargetBand& band) {
                return band.target_c.min == zone.target_c.min && band.target_c.max == zone.target_c.max;
            });
        if (same != bands.end()) {
            same->every_zone = true;
        } else {
            bands.push_back({zone.zone, false, zone.target_c, when});
        }
    }
}

std::vector<words::Hours> dark_hours(const std::vector<words::Hours>& lit, double last_h)
{
    std::vector<words::Hours> dark;
    double from_h = 0.0;
    for (const words::Hours& each : lit) {
        if (each.from_h > from_h) {
            dark.push_back({from_h, each.from_h});
        }
        from_h = each.to_h;
    }
    if (from_h < last_h) {
        dark.push_back({from_h, last_h});
    }
    return dark;
}

std::string season_of(const std::string& id)
{
    return id == "summer" || id == "heat-wave" || id == "mat-stuck-on" ? "summer" : "winter";
}

} // namespace

std::vector<TargetBand> target_bands(const assess::EnclosureResult& enclosure, const assess::CourseResult& course)
{
    std::vector<TargetBand> bands;
    if (course.course.points.empty()) {
        return bands;
    }
    const std::string season = season_of(course.id);
    const std::vector<words::Hours> lit = words::lit_hours(course.course);
    for (const words::Hours& each : lit) {
        add_bands(find_case(enclosure, season + "-day"), each, bands);
    }
    if (words::course_kind(course.id) == words::CourseKind::day) {
        for (const words::Hours& each : dark_hours(lit, course.course.points.back().hour)) {
            add_bands(find_case(enclosure, season + "-night"), each, bands);
        }
    }
    return bands;
}

std::vector<HumidityBand> humidity_bands(const assess::EnclosureResult& enclosure, const assess::CourseResult& course)
{
    std::vector<HumidityBand> bands;
    if (course.course.points.empty()) {
        return bands;
    }
    const auto add = [&](const std::string& id, const words::Hours& when) {
        const auto found = std::find_if(enclosure.humidity.begin(), enclosure.humidity.end(),
                                        [&id](const assess::HumidityCase& humidity) { return humidity.id == id; });
        if (found != enclosure.humidity.end() && (found->target.min || found->target.max)) {
            bands.push_back({found->target, when});
        }
    };
    const std::string season = season_of(course.id);
    const double last_h = course.course.points.back().hour;
    if (words::course_kind(course.id) != words::CourseKind::day) {
        add(season + "-day", {0.0, last_h});
        return bands;
    }
    const std::vector<words::Hours> lit = words::lit_hours(course.course);
    for (const words::Hours& each : lit) {
        add(season + "-day", each);
    }
    for (const words::Hours& each : dark_hours(lit, last_h)) {
        add(season + "-night", each);
    }
    return bands;
}

} // namespace loam::desk
