// Runs stretches one after the other; only course*.cpp include this.
#pragma once

#include <memory>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/climate/course.hpp"
#include "core/climate/quantities.hpp"
#include "core/climate/transient.hpp"

namespace loam::climate {

class CourseRun {
public:
    CourseRun(const Box& box, const Resolution& resolution, Workspace& workspace, std::stop_token stop);

    // The steady state of a case, from which the run goes on, and where its places are. False where there is none.
    bool begin(const Case& now);
    // Goes on from a box that is as warm as the room all through.
    void cool_down();
    // Goes on from other values under the same devices.
    void go_on_from(const std::vector<double>& values) { at_->transient->stepper().set_values(values); }
    const std::vector<double>& values() const { return at_->transient->stepper().values(); }
    const Model& model() const { return at_->transient->stepper().model(); }

    // Goes on from another run's state and places: the same box under other devices.
    bool take_over(const CourseRun& other, const Case& now);
    // Time passes, nothing else changes. False as `go`.
    bool pass(double hours);
    CoursePoint read(double hour) const;
    const Geometry& geometry() const { return at_->scene.geometry; }

    // Devices switch, no time passes.
    bool turn_to(const Case& now);

    // False where a step has no solution or `stop` was requested. Points are added from the stretch's beginning on.
    bool go(const Stretch& stretch, Course& course);

private:
    // The box as a case leaves it.
    struct Situation {
        Box box;
        Scene scene;
        std::optional<Transient> transient;
    };
    std::unique_ptr<Situation> situation(const Case& now);
    double drawn_w() const;

    Box box_;
    Cells cells_;
    Workspace::Level& level_;
    std::stop_token stop_;
    Case now_;
    std::unique_ptr<Situation> at_;
    Places places_;
};

} // namespace loam::climate
