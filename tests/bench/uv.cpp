// What UV adds to an edit: the map and all that is judged by it, for one enclosure. Run: bench_uv, on an idle machine.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <vector>

#include "core/assess/light.hpp"
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

// Processor time of one call in ms, the median of many: of all but the search for a remedy it is the same each time.
double median_ms(const plan::Plan& plan)
{
    constexpr int runs = 101;
    const assess::Context context{plan, shipped_catalog(), day};
    const assess::Housed housed{plan.enclosures.front(), 0};
    std::vector<double> times_ms;
    for (int run = 0; run < runs; ++run) {
        const std::clock_t begin = std::clock();
        const assess::UvStage stage = assess::assess_uv(context, housed);
        times_ms.push_back(1000.0 * static_cast<double>(std::clock() - begin) / static_cast<double>(CLOCKS_PER_SEC));
        REQUIRE_FALSE(stage.result.map.uvi.empty());
    }
    std::nth_element(times_ms.begin(), times_ms.begin() + runs / 2, times_ms.end());
    return times_ms[runs / 2];
}

plan::Plan with_lamps(std::size_t count)
{
    plan::Plan plan = example("first-setup");
    plan::Enclosure& box = plan.enclosures.front();
    const plan::Device tube = box.equipment[1];
    for (std::size_t i = 1; i < count; ++i) {
        box.equipment.push_back(tube);
        box.equipment.back().id = "u" + std::to_string(i);
        box.equipment.back().y_m += 0.1 * static_cast<double>(i);
    }
    return plan;
}

} // namespace

TEST_CASE("UV of an edit", "[bench]")
{
    shipped_catalog();
    std::printf("median processor time, ms\n");
    for (const std::size_t lamps : {1, 2, 3}) {
        plan::Plan fits = with_lamps(lamps);
        plan::Plan strong = fits;
        for (plan::Device& device : strong.enclosures.front().equipment) {
            for (plan::UvPoint& point : device.uvi_table) {
                point.uvi *= 4.0;
            }
        }
        plan::Plan large = fits;
        large.enclosures.front().shell.length_m = 2.4;
        large.enclosures.front().shell.width_m = 1.2;
        std::printf("%zu tubes  as planned %6.2f   too strong, with a remedy %6.2f   floor of 2.4 x 1.2 m %6.2f\n",
                    lamps, median_ms(fits), median_ms(strong), median_ms(large));
    }
}
