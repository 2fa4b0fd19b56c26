#include "core/climate/switching.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/climate/course_run.hpp"
#include "core/climate/probe.hpp"

namespace loam::climate {

namespace {

struct Regulated {
    double setpoint_c = 0.0;
    Point probe;
};

// Sets the device's power free of its thermostat: all of it, or none.
template <class Device> bool release(std::vector<Device>& devices, const std::string& id, bool on, Regulated& was)
{
    for (Device& device : devices)
        if (device.id == id && device.control.kind == ControlKind::thermostat && device.control.probe) {
            was = {device.control.setpoint_c, *device.control.probe};
            device.control = {};
            device.control.off = !on;
            return true;
        }
    return false;
}

struct Instant {
    double hour = 0.0;
    double probe_c = 0.0;
    double warm_c = 0.0;
    double basking_c = 0.0;
    double hottest_c = 0.0;
    double digging_c = 0.0;
};

struct Switch {
    std::size_t instant = 0; // among the instants
    bool on = false;
};

class Cycling {
public:
    Cycling(const Box& on, const Box& off, const Case& now, const Resolution& resolution, Workspace& workspace,
            const std::stop_token& stop)
        : on_(on, resolution, workspace, stop), off_(off, resolution, workspace, stop), now_(now)
    {
    }

    // Both begin from the state with averaged power.
    bool begin(const CourseRun& averaged) { return on_.take_over(averaged, now_) && off_.take_over(averaged, now_); }

    bool run(const Regulated& at, double hysteresis_k)
    {
        constexpr double longest_h = 36.0;
        constexpr std::size_t enough_switches = 9;
        const double upper_c = at.setpoint_c + 0.5 * hysteresis_k;
        const double lower_c = at.setpoint_c - 0.5 * hysteresis_k;
        bool is_on = true;
        double hour = 0.0;
        double step_h = first_h;
        record(on_, hour, probe_c(on_, at.probe));
        while (hour < longest_h && switches_.size() < enough_switches) {
            CourseRun& running = is_on ? on_ : off_;
            const std::vector<double> before = running.values();
            const double target_c = is_on ? upper_c : lower_c;
            const double before_c = instants_.back().probe_c;
            if (!running.pass(step_h))
                return false;
            const double after_c = felt(running, at.probe, before_c, step_h);
            const bool reached = is_on ? after_c >= target_c : after_c <= target_c;
            if (reached && step_h > shortest_h) { // again, to where it switches
                const double share = std::clamp((target_c - before_c) / (after_c - before_c), 0.02, 1.0);
                running.go_on_from(before);
                step_h = std::max(shortest_h, share * step_h); // the lag makes it a little early
                if (!running.pass(step_h))
                    return false;
            }
            hour += step_h;
            record(running, hour, felt(running, at.probe, before_c, step_h));
            if (reached) {
                is_on = !is_on;
                switches_.push_back({instants_.size() - 1, is_on});
                (is_on ? on_ : off_).take_over(running, now_);
                step_h = first_h;
            } else {
                step_h = std::min(longest_step_h, 1.4 * step_h);
            }
        }
        return true;
    }

    Switching result() const
    {
        // From the last switching on but one to the last.
        std::vector<std::size_t> ons;
        for (std::size_t s = 0; s < switches_.size(); ++s)
            if (switches_[s].on)
                ons.push_back(s);
        Switching sum;
        if (ons.size() < 2)
            return sum;
        const Switch& from = switches_[ons[ons.size() - 2]];
        const Switch& off = switches_[ons[ons.size() - 2] + 1];
        const Switch& to = switches_[ons.back()];
        const auto hour = [&](const Switch& at) { return instants_[at.instant].hour; };
        sum.switches = true;
        sum.period_h = hour(to) - hour(from);
        sum.on_share = (hour(off) - hour(from)) / sum.period_h;
        sum.per_day = 24.0 / sum.period_h;
        const Instant& first = instants_[from.instant];
        sum.probe_c = {first.probe_c, first.probe_c};
        sum.warm_c = {first.warm_c, first.warm_c};
        sum.basking_c = {first.basking_c, first.basking_c};
        sum.hottest_c = first.hottest_c;
        sum.digging_c = first.digging_c;
        const auto widen = [](Swing& swing, double value) {
            swing = {std::min(swing.low, value), std::max(swing.high, value)};
        };
        for (std::size_t i = from.instant; i <= to.instant; ++i) {
            widen(sum.probe_c, instants_[i].probe_c);
            widen(sum.warm_c, instants_[i].warm_c);
            widen(sum.basking_c, instants_[i].basking_c);
            sum.hottest_c = std::max(sum.hottest_c, instants_[i].hottest_c);
            sum.digging_c = std::max(sum.digging_c, instants_[i].digging_c);
        }
        return sum;
    }

private:
    static constexpr double first_h = 10.0 / 3600.0;
    static constexpr double shortest_h = 2.0 / 3600.0;
    static constexpr double longest_step_h = 0.25;

    static double probe_c(const CourseRun& running, const Point& probe)
    {
        return value_of(probe_reading(running.model(), running.geometry(), probe), running.values());
    }

    // The probe follows what surrounds it with a lag of some minutes. Own estimate for a sleeved sensor in still air.
    static double felt(const CourseRun& running, const Point& probe, double before_c, double hours)
    {
        constexpr double lag_h = 3.0 / 60.0;
        const double around_c = probe_c(running, probe);
        return around_c + (before_c - around_c) * std::exp(-hours / lag_h);
    }

    void record(const CourseRun& running, double hour, double felt_c)
    {
        const CoursePoint point = running.read(hour);
        instants_.push_back({hour, felt_c, point.warm_c, point.basking_c, point.hottest_c, point.digging_c});
    }

    CourseRun on_;
    CourseRun off_;
    Case now_;
    std::vector<Instant> instants_;
    std::vector<Switch> switches_;
};

} // namespace

std::optional<Switching> follow_switching(const Box& box, const Case& now, const std::string& device,
                                          double hysteresis_k, Workspace& workspace, std::stop_token stop,
                                          const Resolution& resolution)
{
    if (!(hysteresis_k > 0.0))
        return std::nullopt;
    Box even = box;
    even.mistings_per_day = 0;
    Box on = even;
    Box off = even;
    Regulated was;
    if (!release(on.lamps, device, true, was) && !release(on.mats, device, true, was))
        return std::nullopt;
    if (!release(off.lamps, device, false, was))
        release(off.mats, device, false, was);
    CourseRun averaged(even, resolution, workspace, stop);
    if (!averaged.begin(now))
        return std::nullopt;
    Cycling cycling(on, off, now, resolution, workspace, stop);
    if (!cycling.begin(averaged) || !cycling.run(was, hysteresis_k))
        return std::nullopt;
    return cycling.result();
}

} // namespace loam::climate
