#include "core/climate/course_run.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/body.hpp"
#include "core/climate/prepared.hpp"
#include "core/climate/probe.hpp"
#include "core/climate/psychrometrics.hpp"

namespace loam::climate {

CourseRun::CourseRun(const Box& box, const Resolution& resolution, Workspace& workspace, std::stop_token stop)
    : box_(box), cells_(course_cells(resolution)), level_(workspace.course), stop_(std::move(stop))
{
}

std::unique_ptr<CourseRun::Situation> CourseRun::situation(const Case& now)
{
    if (stop_.stop_requested())
        return nullptr;
    auto made = std::make_unique<Situation>();
    made->box = as_in_case(box_, now);
    auto scene = scene_for(made->box, cells_, level_);
    if (!scene)
        return nullptr;
    made->scene = *std::move(scene);
    made->transient = Transient::of(made->box, now, made->scene, level_);
    return made->transient ? std::move(made) : nullptr;
}

bool CourseRun::begin(const Case& now)
{
    at_ = situation(now);
    if (!at_ || !at_->transient->stepper().settle(start_of(level_, now.id), stop_))
        return false;
    now_ = now;
    keep_start(level_, now.id, values());
    places_ = find_places(model(), at_->box, at_->scene, values());
    return true;
}

bool CourseRun::take_over(const CourseRun& other, const Case& now)
{
    if (!at_)
        at_ = situation(now);
    if (!at_)
        return false;
    at_->transient->carry_on_from(*other.at_->transient);
    now_ = now;
    places_ = other.places_;
    return true;
}

bool CourseRun::pass(double hours)
{
    return at_->transient->advance(hours, at_->transient->room_c(), stop_);
}

void CourseRun::cool_down()
{
    go_on_from(room_start(model()));
}

bool CourseRun::turn_to(const Case& now)
{
    if (now.day == now_.day && now.fault == now_.fault)
        return true;
    auto next = situation(now);
    if (!next)
        return false;
    next->transient->carry_on_from(*at_->transient);
    at_ = std::move(next);
    now_ = now;
    return true;
}

// Steps begin short, since what switches moves fast, and grow.
bool CourseRun::go(const Stretch& stretch, Course& course)
{
    constexpr double first_h = 0.05;
    constexpr double growth = 1.5;
    constexpr double longest_h = 1.0;
    if (!turn_to(stretch.now))
        return false;
    const double begin_h = course.points.empty() ? 0.0 : course.points.back().hour;
    if (stretch.mist_kg_m2 > 0.0) {
        at_->transient->spray(stretch.mist_kg_m2);
        course.misted_h.push_back(begin_h);
    }
    const double from_c = at_->transient->room_c();
    double passed_h = 0.0;
    double step_h = first_h;
    if (course.points.empty())
        course.points.push_back(read(begin_h));
    while (passed_h < stretch.hours) {
        const double left_h = stretch.hours - passed_h;
        step_h = left_h < 1.3 * step_h ? left_h : step_h;
        passed_h = step_h == left_h ? stretch.hours : passed_h + step_h;
        if (!at_->transient->advance(step_h, std::lerp(from_c, stretch.room_to_c, passed_h / stretch.hours), stop_))
            return false;
        course.energy_kwh += drawn_w() * step_h / 1000.0;
        course.points.push_back(read(begin_h + passed_h));
        step_h = std::min(longest_h, growth * step_h);
    }
    return true;
}

double CourseRun::drawn_w() const
{
    double sum_w = 0.0;
    for (const Device& device : model().devices)
        sum_w += loam::climate::power_w(device, model().layout, values());
    return sum_w;
}

CoursePoint CourseRun::read(double hour) const
{
    const Geometry& g = at_->scene.geometry;
    const std::vector<double>& now = values();
    CoursePoint point{.hour = hour,
                      .lamps_on = now_.day && now_.fault != Fault::lamps_out && now_.fault != Fault::power_cut,
                      .room_c = at_->transient->room_c(),
                      .warm_c = value_of(ground_of(model(), places_.zones.warm), now),
                      .cool_c = value_of(ground_of(model(), places_.zones.cool), now),
                      .hottest_c = -INFINITY,
                      .coldest_c = INFINITY,
                      .digging_c = -INFINITY,
                      .power_w = drawn_w()};
    const auto on_perch = [&](std::size_t perch) {
        return value_of(body_reading(model(), at_->box, at_->scene, perch_body(at_->box, at_->scene, perch), now), now);
    };
    point.basking_c = places_.basking_perch ? on_perch(*places_.basking_perch)
                                            : value_of(surface_of(model(), places_.zones.basking), now);
    for (std::size_t c = 0; c < g.columns(); ++c) {
        point.hottest_c = std::max(point.hottest_c, now[model().surface(c)]);
        point.coldest_c = std::min(point.coldest_c, now[model().surface(c)]);
        for (std::size_t k = g.place_of(BrickKind::pane); k < g.nz(); ++k)
            point.digging_c = std::max(point.digging_c, now[c * g.nz() + k]);
    }
    if (places_.on_perch)
        point.hottest_c = std::max(point.hottest_c, on_perch(places_.hottest_perch));
    point.humidity = hygrometer_reading(point.cool_c, now[model().layout.lower_vapour()]);
    return point;
}

} // namespace loam::climate
