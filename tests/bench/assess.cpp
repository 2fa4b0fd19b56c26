// When each stage of an assessment is delivered, for the example plans. Run: bench_assess, on an idle machine; the
// processors' time, over all threads, means something on a busy one too.
#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <vector>

#include "core/assess/look.hpp"
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

// Milliseconds from the call to each delivery: at once, the climate judged, the courses, all with remedies; then the
// same in processor time.
constexpr std::size_t stages = 4;
using Deliveries = std::array<double, 2 * stages>;

double milliseconds(std::clock_t time)
{
    return 1000.0 * static_cast<double>(time) / static_cast<double>(CLOCKS_PER_SEC);
}

Deliveries time_of(const plan::Plan& plan, assess::Workspace& workspace)
{
    using Clock = std::chrono::steady_clock;
    Deliveries at_ms{};
    std::size_t stage = 0;
    const auto begin = Clock::now();
    const std::clock_t begin_cpu = std::clock();
    const auto whole = assess::assess(plan, shipped_catalog(), day, workspace, {}, [&](const assess::Assessment&) {
        at_ms.at(stage) = std::chrono::duration<double, std::milli>(Clock::now() - begin).count();
        at_ms.at(stages + stage) = milliseconds(std::clock() - begin_cpu);
        ++stage;
    });
    REQUIRE(whole);
    REQUIRE(stage == stages);
    return at_ms;
}

// The lamps of the first enclosure a watt stronger or weaker: a climate that has to be solved again.
void edit_lamps(plan::Plan& plan, double by_w)
{
    bool edited = false;
    for (plan::Device& device : plan.enclosures.front().equipment) {
        if (device.power_w && device.kind != plan::DeviceKind::heat_mat) {
            *device.power_w += by_w;
            edited = true;
        }
    }
    REQUIRE(edited);
}

void print(const char* name, const char* how, std::vector<Deliveries> runs)
{
    std::printf("%-15s %-16s", name, how);
    for (std::size_t stage = 0; stage < 2 * stages; ++stage) {
        const auto middle = runs.begin() + static_cast<std::ptrdiff_t>(runs.size() / 2);
        std::nth_element(runs.begin(), middle, runs.end(),
                         [&](const Deliveries& a, const Deliveries& b) { return a.at(stage) < b.at(stage); });
        std::printf(" %8.1f", middle->at(stage));
    }
    std::printf("\n");
}

} // namespace

TEST_CASE("stages of an assessment", "[bench]")
{
    constexpr int runs = 7;
    shipped_catalog();
    std::printf("median of %d runs, ms                 at once   judged  courses    whole  |  processor time\n", runs);
    for (const char* name : {"first-setup", "upgrade", "club-template"}) {
        plan::Plan plan = example(name);
        std::vector<Deliveries> cold;
        std::vector<Deliveries> edited;
        for (int run = 0; run < runs; ++run) {
            assess::Workspace workspace;
            cold.push_back(time_of(plan, workspace));
            edit_lamps(plan, run % 2 == 0 ? 1.0 : -1.0);
            edited.push_back(time_of(plan, workspace));
        }
        print(name, "from nothing", cold);
        print(name, "lamps' watts", edited);
    }
}

TEST_CASE("a look at one case while its lamp is dragged", "[bench]")
{
    constexpr int steps = 60;
    for (const char* name : {"first-setup", "upgrade", "club-template"}) {
        plan::Plan plan = example(name);
        assess::Workspace workspace;
        REQUIRE(assess::assess(plan, shipped_catalog(), day, workspace));
        std::vector<double> took_ms;
        std::vector<double> worked_ms; // processor time
        for (int step = 0; step < steps; ++step) {
            for (plan::Device& device : plan.enclosures.front().equipment) {
                if (device.kind != plan::DeviceKind::heat_mat) {
                    device.x_m += 0.002;
                }
            }
            const auto begin = std::chrono::steady_clock::now();
            const std::clock_t begin_cpu = std::clock();
            REQUIRE(assess::look(plan, shipped_catalog(), {plan.enclosures.front().id, "winter-day"}, workspace));
            worked_ms.push_back(milliseconds(std::clock() - begin_cpu));
            took_ms.push_back(
                std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count());
        }
        std::sort(took_ms.begin(), took_ms.end());
        std::sort(worked_ms.begin(), worked_ms.end());
        std::printf("%-15s a look: median %5.1f ms, longest %5.1f ms; processor time %5.1f and %5.1f ms\n", name,
                    took_ms[steps / 2], took_ms.back(), worked_ms[steps / 2], worked_ms.back());
    }
}
