// How soon superseded work ends: assessments told to stop at moments spread evenly over their whole length, and the
// time from the request to the return. Run: bench_stopping, on an idle machine.
#include <algorithm>
#include <array>
#include <atomic>
#include <chrono>
#include <cstdio>
#include <stop_token>
#include <thread>

#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

using Clock = std::chrono::steady_clock;

double milliseconds(Clock::duration time)
{
    return std::chrono::duration<double, std::milli>(time).count();
}

// By the stage that was at work.
constexpr std::array stages{"at once", "judged", "courses", "remedies"};
struct Stage {
    int stops = 0;
    double longest_ms = 0.0;
};
using Longest = std::array<Stage, stages.size()>;

// Stops one assessment from nothing after `after`. False where it was done before.
bool stop_after(const plan::Plan& plan, Clock::duration after, Longest& longest)
{
    std::stop_source source;
    std::atomic<std::size_t> stage{0};
    Clock::time_point asked;
    std::size_t asked_in = 0;
    std::jthread stopper([&] {
        std::this_thread::sleep_for(after);
        asked_in = stage;
        asked = Clock::now();
        source.request_stop();
    });
    assess::Workspace workspace;
    const auto whole = assess::assess(plan, shipped_catalog(), day, workspace, source.get_token(),
                                      [&](const assess::Assessment&) { ++stage; });
    const auto ended = Clock::now();
    stopper.join();
    if (whole)
        return false;
    Stage& at = longest.at(std::min(asked_in, stages.size() - 1));
    ++at.stops;
    at.longest_ms = std::max(at.longest_ms, milliseconds(ended - asked));
    return true;
}

// A tortoise table: the club's first box made as large as one.
plan::Plan table()
{
    plan::Plan plan = example("club-template");
    plan.enclosures.resize(1);
    plan.enclosures.front().shell.length_m = 2.4;
    plan.enclosures.front().shell.width_m = 1.2;
    return plan;
}

void measure(const char* name, const plan::Plan& plan)
{
    constexpr int stops = 60;
    assess::Workspace workspace;
    const auto begin = Clock::now();
    REQUIRE(assess::assess(plan, shipped_catalog(), day, workspace));
    const auto whole = Clock::now() - begin;
    Longest longest{};
    for (int i = 0; i < stops; ++i)
        stop_after(plan, whole * (2 * i + 1) / (2 * stops), longest);
    std::printf("%-15s %8.0f", name, milliseconds(whole));
    for (const Stage& stage : longest)
        std::printf("  %8.1f (%3d)", stage.longest_ms, stage.stops);
    std::printf("\n");
    std::fflush(stdout);
}

} // namespace

TEST_CASE("from a stop to the end of the work", "[bench]")
{
    shipped_catalog();
    std::printf("ms               whole run  longest until it ended, by the stage at work (stops)\n%-15s %8s", "", "");
    for (const char* stage : stages)
        std::printf("  %14s", stage);
    std::printf("\n");
    for (const char* name : {"first-setup", "upgrade", "club-template"})
        measure(name, example(name));
    measure("table", table());
}
