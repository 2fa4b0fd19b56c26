#include "core/season/rest.hpp"

#include <algorithm>

namespace loam::season {

using std::chrono::days;
using std::chrono::sys_days;

namespace {

constexpr int week_d = 7;

bool is_sound(const Rest& rest)
{
    return rest.wind_down_weeks >= 1 && rest.cold_weeks >= 1 && rest.warm_up_weeks >= 1;
}

Stage stage_of(const Rest& rest, sys_days day)
{
    return day < cold_from(rest) ? Stage::wind_down : day < cold_until(rest) ? Stage::cold : Stage::warm_up;
}

double between(double from, double to, double share)
{
    return from + (to - from) * share;
}

} // namespace

sys_days cold_from(const Rest& rest)
{
    return rest.begins + days(week_d * rest.wind_down_weeks);
}

sys_days cold_until(const Rest& rest)
{
    return cold_from(rest) + days(week_d * rest.cold_weeks);
}

sys_days ends(const Rest& rest)
{
    return cold_until(rest) + days(week_d * rest.warm_up_weeks);
}

double running_share(const Rest& rest, sys_days day)
{
    if (!is_sound(rest) || day < rest.begins || day >= ends(rest)) {
        return 1.0;
    }
    if (day >= cold_until(rest)) {
        return static_cast<double>((day - cold_until(rest)).count()) / (week_d * rest.warm_up_weeks);
    }
    if (day >= cold_from(rest)) {
        return 0.0;
    }
    const double half_d = week_d * rest.wind_down_weeks / 2.0;
    const auto left_d = static_cast<double>((cold_from(rest) - day).count());
    return std::min(1.0, left_d / half_d);
}

std::vector<Week> weeks(const Rest& rest)
{
    std::vector<Week> all;
    if (!is_sound(rest)) {
        return all;
    }
    for (sys_days from = rest.begins; from < ends(rest); from += days(week_d)) {
        Week week;
        week.number = static_cast<int>(all.size()) + 1;
        week.stage = stage_of(rest, from);
        week.from = from;
        week.running_share_at_end = running_share(rest, from + days(week_d));
        week.by_its_end_c = {between(rest.cold_c.low, rest.usual_c.low, week.running_share_at_end),
                             between(rest.cold_c.high, rest.usual_c.high, week.running_share_at_end)};
        all.push_back(week);
    }
    return all;
}

std::vector<WeighIn> weigh_ins(const Rest& rest, double mass_kg, const Losses& losses)
{
    const auto is_share = [](double share) { return share >= 0.0 && share <= 1.0; };
    std::vector<WeighIn> all;
    if (!is_sound(rest) || !(mass_kg > 0.0) || !is_share(losses.stop) || !is_share(losses.monthly)) {
        return all;
    }
    constexpr double month_d = 30.44;
    const double stop_kg = mass_kg * (1.0 - losses.stop);
    for (sys_days on = cold_from(rest); on <= cold_until(rest); on += days(week_d)) {
        const double months = static_cast<double>((on - cold_from(rest)).count()) / month_d;
        all.push_back({on, std::max(stop_kg, mass_kg * (1.0 - losses.monthly * months)), stop_kg});
    }
    return all;
}

} // namespace loam::season
