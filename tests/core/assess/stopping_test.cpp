// Work that is told to stop ends inside the stage it is in: nothing more is delivered, nothing half done is kept, and
// what is left of the stage is not worked off. Costs are in processor time, which another program's load leaves alone.
#include <atomic>
#include <chrono>
#include <ctime>
#include <mutex>
#include <stop_token>
#include <string>
#include <thread>
#include <vector>

#include "core/assess/stages.hpp"
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

enum Stage : std::size_t { judging, courses, remedies, stages };

// Lamps and mats too weak for the animals, so that remedies are looked for, and readings to calibrate by.
plan::Plan wanting_plan()
{
    plan::Plan plan = turtle_table();
    for (plan::Device& device : plan.enclosures.front().equipment) {
        if (device.power_w) {
            *device.power_w *= 0.6;
        }
    }
    const auto add_reading = [&](double x_m, double value_c) {
        plan::Reading reading;
        reading.id = "r" + std::to_string(plan.enclosures.front().readings.size());
        reading.x_m = x_m;
        reading.y_m = 0.2;
        reading.lamps = plan::LampState::on;
        reading.room_c = 21.0;
        reading.value_c = value_c;
        plan.enclosures.front().readings.push_back(reading);
    };
    add_reading(0.2, 27.0);
    add_reading(0.7, 23.0);
    return plan;
}

// Processor time at which each stage of a whole run begins, and at which the last ends.
std::vector<std::clock_t> beginnings(const plan::Plan& plan)
{
    std::vector<std::clock_t> times;
    assess::Workspace workspace;
    REQUIRE(assess::assess(plan, shipped_catalog(), day, workspace, {},
                           [&](const assess::Assessment&) { times.push_back(std::clock()); }));
    REQUIRE(times.size() == stages + 1);
    return times;
}

struct Stopped {
    bool whole = false;      // it was done before it was told
    std::size_t told_in = 0; // stage
    std::size_t delivered_after = 0;
    double after = 0.0; // processor time between the request and the return
};

// One run that is told to stop once it has spent `wait` on a stage.
Stopped stop_in(std::size_t stage, std::clock_t wait, const plan::Plan& plan, assess::Workspace& workspace)
{
    std::stop_source source;
    std::mutex one_at_a_time;
    std::size_t delivered = 0;
    std::size_t before = 0;
    std::clock_t told = 0;
    std::atomic<std::clock_t> moment{0}; // 0: the stage has not begun
    std::atomic<bool> over{false};
    std::jthread stopper([&] {
        while (!over && (moment == 0 || std::clock() < moment)) {
            std::this_thread::sleep_for(std::chrono::microseconds(500));
        }
        const std::scoped_lock lock(one_at_a_time);
        before = delivered;
        told = std::clock();
        source.request_stop();
    });
    const auto result =
        assess::assess(plan, shipped_catalog(), day, workspace, source.get_token(), [&](const assess::Assessment&) {
            const std::scoped_lock lock(one_at_a_time);
            if (++delivered == stage + 1) {
                moment = std::clock() + wait;
            }
        });
    const std::clock_t ended = std::clock();
    over = true;
    stopper.join();
    return {result.has_value(), before - 1, delivered - before, static_cast<double>(ended - told)};
}

} // namespace

TEST_CASE("a stop inside a stage ends it there: nothing more is delivered, and little more is worked")
{
    const plan::Plan plan = wanting_plan();
    const std::vector<std::clock_t> begins = beginnings(plan);
    for (std::size_t stage = judging; stage < stages; ++stage) {
        const std::clock_t length = begins[stage + 1] - begins[stage];
        for (const int tenths : {2, 5}) {
            assess::Workspace workspace;
            const Stopped run = stop_in(stage, length * tenths / 10, plan, workspace);
            CAPTURE(stage, tenths, length);
            CHECK_FALSE(run.whole);
            CHECK(run.told_in == stage);
            CHECK(run.delivered_after == 0);
            CHECK(run.after < 0.7 * static_cast<double>(length) * (1.0 - 0.1 * tenths));
            const auto& kept = workspace.store().of(plan.enclosures.front().id);
            CHECK(kept.climate_key.has_value() == (stage > judging));
            CHECK(kept.course_key.has_value() == (stage > courses));
            CHECK_FALSE(kept.has_remedies);
        }
    }
}

TEST_CASE("what was stopped in any stage is worked out afterwards as if it had never been")
{
    const plan::Plan plan = wanting_plan();
    const assess::Assessment expected = whole(plan);
    assess::Workspace workspace;
    for (std::size_t stage = judging; stage < stages; ++stage) {
        stop_in(stage, 1, plan, workspace);
    }
    const auto after = assess::assess(plan, shipped_catalog(), day, workspace);
    REQUIRE(after);
    CHECK(after->findings.size() == expected.findings.size());
    CHECK(after->enclosures[0].heat[0].zones[0].temperature_c.likely ==
          Approx(expected.enclosures[0].heat[0].zones[0].temperature_c.likely).margin(0.02));
}
