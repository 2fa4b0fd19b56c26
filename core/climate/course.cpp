#include "core/climate/course.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/course_run.hpp"

namespace loam::climate {

namespace {

std::optional<Course> run(CourseRun& running, const std::vector<Stretch>& stretches, const std::stop_token& stop)
{
    Course course;
    for (const Stretch& stretch : stretches) {
        if (!running.go(stretch, course))
            return stop.stop_requested() ? std::nullopt : std::optional(course);
    }
    course.complete = true;
    if (course.points.size() > 1) // what is drawn once the devices have switched, not what was
        course.points[0].power_w = course.points[1].power_w;
    return course;
}

// Cuts the stretch that `hour` lies in, so that something may happen there.
Stretch& cut_at(std::vector<Stretch>& stretches, double hour, double from_c)
{
    double begin_h = 0.0;
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        const double into_h = hour - begin_h;
        const double whole_h = stretches[i].hours;
        if (into_h < 1e-9)
            return stretches[i];
        if (into_h < whole_h - 1e-9) {
            Stretch first = stretches[i];
            first.hours = into_h;
            first.room_to_c = std::lerp(from_c, stretches[i].room_to_c, into_h / whole_h);
            stretches[i].hours = whole_h - into_h;
            stretches[i].mist_kg_m2 = 0.0;
            stretches.insert(stretches.begin() + static_cast<std::ptrdiff_t>(i), first);
            return stretches[i + 1];
        }
        begin_h += whole_h;
        from_c = stretches[i].room_to_c;
    }
    return stretches.back();
}

std::vector<Stretch> stretches_of(const Box& box, const DayPlan& plan)
{
    const double dark_h = 24.0 - plan.lit_h;
    const double day_c = plan.day.room.temperature_c.likely;
    const double night_c = plan.night.room.temperature_c.likely;
    const double up_h = std::min(plan.ramp_h, 0.5 * plan.lit_h);
    const double down_h = std::min(plan.ramp_h, 0.5 * dark_h);
    std::vector<Stretch> stretches;
    const auto add = [&](const Case& now, double hours, double room_to_c) {
        if (hours > 0.0)
            stretches.push_back({now, hours, room_to_c});
    };
    add(plan.day, up_h, day_c);
    add(plan.day, plan.lit_h - up_h, day_c);
    add(plan.night, down_h, night_c);
    add(plan.night, dark_h - down_h, night_c);
    // The first misting when the lamps go on, the others evenly after it.
    const double kg_m2 =
        box.misting_l_per_day.likely / std::max(1, box.mistings_per_day) / (box.length_m * box.width_m);
    for (int i = 0; i < box.mistings_per_day; ++i)
        cut_at(stretches, plan.lit_h * i / box.mistings_per_day, night_c).mist_kg_m2 += kg_m2;
    return stretches;
}

// Drills and warming up are not the time to mist in.
Box misted_evenly(Box box)
{
    box.mistings_per_day = 0;
    return box;
}

// What stores heat: bricks, airs, vapours and bowls.
std::size_t stored(const Layout& layout)
{
    return layout.bricks + 4 + layout.bowls;
}

double largest_change_k(const Layout& layout, const std::vector<double>& change)
{
    double most = 0.0;
    for (std::size_t i = 0; i < stored(layout); ++i)
        if (i != layout.lower_vapour() && i != layout.upper_vapour())
            most = std::max(most, std::abs(change[i]));
    return most;
}

// By how much the slowest of what settles shrinks from one day to the next, as two days' changes have it.
double shrinkage(const std::vector<double>& before, const std::vector<double>& after)
{
    double both = 0.0;
    double first = 0.0;
    for (std::size_t i = 0; i < before.size(); ++i) {
        both += before[i] * after[i];
        first += before[i] * before[i];
    }
    return first > 0.0 ? both / first : 0.0;
}

} // namespace

std::optional<Course> follow(const Box& box, const Event& event, Workspace& workspace, std::stop_token stop,
                             const Resolution& resolution)
{
    CourseRun running(misted_evenly(box), resolution, workspace, stop);
    return running.begin(event.from) ? run(running, event.stretches, stop) : std::nullopt;
}

std::optional<Course> warm_up(const Box& box, const Case& now, double hours, Workspace& workspace, std::stop_token stop,
                              const Resolution& resolution)
{
    CourseRun running(misted_evenly(box), resolution, workspace, stop);
    if (!running.begin(now))
        return std::nullopt;
    running.cool_down();
    return run(running, {{now, hours, now.room.temperature_c.likely}}, stop);
}

std::optional<Course> periodic_day(const Box& box, const DayPlan& plan, Workspace& workspace, std::stop_token stop,
                                   const Resolution& resolution)
{
    constexpr double repeats_k = 0.02;
    constexpr int most_days = 12;
    CourseRun running(box, resolution, workspace, stop);
    if (!running.begin(plan.day))
        return std::nullopt;
    const std::vector<Stretch> stretches = stretches_of(box, plan);
    std::vector<double> last_change;
    std::optional<Course> course;
    for (int day = 0; day < most_days; ++day) {
        const std::vector<double> begin = running.values();
        course = run(running, stretches, stop);
        if (!course || !course->complete)
            return course;
        // Back to the lamps, so that both ends are values of one layout.
        if (!running.turn_to(plan.day))
            return std::nullopt;
        std::vector<double> change = running.values();
        for (std::size_t i = 0; i < change.size(); ++i)
            change[i] -= begin[i];
        course->unrest_k = largest_change_k(running.model().layout, change);
        if (course->unrest_k < repeats_k)
            return course;
        change.resize(stored(running.model().layout));
        const double share = last_change.empty() ? 0.0 : shrinkage(last_change, change);
        last_change = change;
        if (share > 0.05 && share < 0.95) {
            std::vector<double> further = running.values();
            for (std::size_t i = 0; i < change.size(); ++i)
                further[i] += share / (1.0 - share) * change[i];
            running.go_on_from(further);
            last_change.clear();
        }
    }
    return course;
}

} // namespace loam::climate
