#include "core/assess/year.hpp"

#include <algorithm>

#include "core/assess/cool_season.hpp"
#include "core/assess/photoperiod.hpp"
#include "core/light/photoperiod.hpp"
#include "core/light/timer_year.hpp"
#include "core/season/winter_share.hpp"

namespace loam::assess {

namespace {

// What all sheets here agree on; nullopt where one says nothing, or no hours suit all.
std::optional<light::HoursAsked> hours_asked(const Context& context, const Housed& housed)
{
    const auto species = species_in(housed.enclosure, context.catalog);
    light::HoursAsked asked;
    for (const catalog::Species* one : species) {
        if (!one->photoperiod_h.min || !one->photoperiod_h.max) {
            return std::nullopt;
        }
        asked.least_h = std::max(asked.least_h, *one->photoperiod_h.min);
        asked.most_h = std::min(asked.most_h, *one->photoperiod_h.max);
    }
    return species.empty() || asked.least_h > asked.most_h ? std::nullopt : std::optional(asked);
}

std::optional<light::OnOff> planned_times(const plan::Enclosure& enclosure)
{
    if (!enclosure.photoperiod) {
        return std::nullopt;
    }
    const auto on = light::minutes_of_clock(enclosure.photoperiod->on);
    const auto off = light::minutes_of_clock(enclosure.photoperiod->off);
    return on && off && *on != *off ? std::optional(light::OnOff{*on, *off}) : std::nullopt;
}

std::string clock(int minutes)
{
    const auto two = [](int value) { return (value < 10 ? "0" : "") + std::to_string(value); };
    return two(minutes / 60) + ':' + two(minutes % 60);
}

// Where times are planned, about their middle; else about noon, which a keeper can shift.
std::optional<LightTimes> times(const std::optional<light::OnOff>& planned, double hours)
{
    constexpr light::OnOff about_noon{6 * 60, 18 * 60};
    const auto set = light::about_the_same_middle(planned.value_or(about_noon), hours);
    return set ? std::optional(LightTimes{hours, clock(set->on), clock(set->off)}) : std::nullopt;
}

std::chrono::year_month_day date_of(int day_of_year) // in a year of 365 days
{
    return std::chrono::sys_days(std::chrono::year{2025} / 1 / 1) + std::chrono::days(day_of_year - 1);
}

// All animals have to rest, or the equipment runs for those that don't.
double running_share_on(const std::vector<CoolSeasonResult>& seasons, int day_of_year)
{
    if (seasons.empty()) {
        return 1.0;
    }
    double most = 0.0;
    const auto date = date_of(day_of_year);
    for (const CoolSeasonResult& one : seasons) {
        double share = 1.0;
        if (one.rest) { // which may reach into the next year
            const auto begins = std::chrono::year_month_day(one.rest->begins).year();
            for (const auto year : {begins, begins + std::chrono::years(1)}) {
                share = std::min(
                    share, season::running_share(*one.rest, std::chrono::sys_days(year / date.month() / date.day())));
            }
        }
        most = std::max(most, share);
    }
    return most;
}

power::DailyShare winter_year(season::Hemisphere hemisphere, double lag_d)
{
    power::DailyShare year;
    for (int day = 1; day <= power::days_of_year; ++day) {
        year[static_cast<std::size_t>(day - 1)] = *season::winter_share(hemisphere, day, lag_d);
    }
    return year;
}

std::vector<power::DailyShare> winter_years(const std::optional<double>& latitude_deg)
{
    constexpr season::Lag lag;
    const auto hemisphere = latitude_deg ? season::hemisphere_of(*latitude_deg) : std::nullopt;
    if (hemisphere) {
        return {winter_year(*hemisphere, lag.likely_d), winter_year(*hemisphere, lag.least_d),
                winter_year(*hemisphere, lag.most_d)};
    }
    power::DailyShare even;
    even.fill(0.5);
    return {even, winter_year(season::Hemisphere::north, lag.likely_d),
            winter_year(season::Hemisphere::south, lag.likely_d)};
}

struct Sky {
    std::optional<double> latitude_deg;
    std::optional<light::HoursAsked> asked;
    std::optional<double> hours(int day_of_year) const
    {
        return latitude_deg && asked ? light::hours_with_the_sky(*latitude_deg, day_of_year, *asked) : std::nullopt;
    }
};

// The times as stated, to the minute, where nothing changes them; else in steps that a timer can be set to.
std::optional<LightTimes> planned_on(const light::OnOff& stated, double hours, bool unchanged)
{
    return unchanged ? std::optional(LightTimes{hours, clock(stated.on), clock(stated.off)}) : times(stated, hours);
}

LightDay light_day(int day_of_year, const Sky& sky, const std::optional<light::OnOff>& planned, const YearStage& year)
{
    const power::YearCourse& course = year.course;
    const auto date = date_of(day_of_year);
    const auto index = static_cast<std::size_t>(day_of_year - 1);
    LightDay day;
    day.month = static_cast<int>(static_cast<unsigned>(date.month()));
    day.day = static_cast<int>(static_cast<unsigned>(date.day()));
    day.sky_h = sky.latitude_deg ? light::day_length_h(*sky.latitude_deg, day_of_year) : std::nullopt;
    day.running_share = course.running_share[index];
    if (planned) {
        const bool unchanged = !year.with_the_sky && day.running_share == 1.0;
        day.planned = planned_on(*planned, course.light_h[index] * day.running_share, unchanged);
    }
    if (const auto hours = sky.hours(day_of_year)) {
        day.by_the_sky = times(planned, *hours);
    }
    return day;
}

void report_no_sky(const Housed& housed, const Sky& sky, Notes& notes)
{
    const bool no_latitude = !sky.latitude_deg;
    report(notes, "photoperiod.sky-not-known", {Verdict::not_known, Direction::none}, housed.at(),
           because("rule.photoperiod", {}, {{"reason", no_latitude ? "latitude-not-stated" : "sheets-without-hours"}}))
        .remedy = state(no_latitude ? "/site/latitude_deg" : housed.pointer("/photoperiod/through_year"));
}

} // namespace

YearStage assess_year(const Context& context, const Housed& housed)
{
    YearStage stage;
    CoolSeasonStage cool = assess_cool_seasons(context, housed);
    stage.cool_seasons = std::move(cool.results);
    stage.notes = std::move(cool.notes);
    const Sky sky{context.plan.site.latitude_deg, hours_asked(context, housed)};
    const auto& photoperiod = housed.enclosure.photoperiod;
    const bool asked = photoperiod && photoperiod->through_year == plan::LightYear::with_the_sky;
    stage.with_the_sky = asked && sky.hours(1);
    if (asked && !stage.with_the_sky) {
        report_no_sky(housed, sky, stage.notes);
    }
    stage.hemisphere_known = sky.latitude_deg && season::hemisphere_of(*sky.latitude_deg);
    stage.course.winter_share = winter_years(sky.latitude_deg);
    const auto same = timed_hours(context, housed, stage.notes);
    const double same_h = same ? same->likely : 12.0; // no species known: as assess_power
    const auto planned = planned_times(housed.enclosure);
    for (int day = 1; day <= power::days_of_year; ++day) {
        const auto index = static_cast<std::size_t>(day - 1);
        stage.course.light_h[index] = stage.with_the_sky ? *sky.hours(day) : same_h;
        stage.course.running_share[index] = running_share_on(stage.cool_seasons, day);
        const auto date = date_of(day);
        if (date.day() == std::chrono::day{1} || date.day() == std::chrono::day{16}) {
            stage.light.push_back(light_day(day, sky, planned, stage));
        }
    }
    return stage;
}

} // namespace loam::assess
