// Boxes that nobody would plan, to see that the balance holds or says that it does not.
#include <algorithm>
#include <cmath>
#include <random>

#include "tests/catch.hpp"

#include "tests/core/climate/boxes.hpp"

using namespace loam;
using namespace loam::climate;
using namespace loam::climate::test;

namespace {

class Dice {
public:
    explicit Dice(unsigned seed) : random_(seed) {}
    double between(double low, double high)
    {
        return low + (high - low) * static_cast<double>(random_()) / static_cast<double>(std::mt19937::max());
    }
    bool chance(double share) { return between(0.0, 1.0) < share; }

private:
    std::mt19937 random_;
};

Control thermostat(const Box& box, Dice& dice)
{
    return {.kind = ControlKind::thermostat,
            .setpoint_c = dice.between(18.0, 42.0),
            .probe = Point{dice.between(0.0, box.length_m), dice.between(0.0, box.width_m), dice.between(0.0, 0.3)}};
}

Lamp odd_lamp(const Box& box, Dice& dice)
{
    Lamp lamp = flood(dice.between(20.0, 250.0));
    lamp.at = {dice.between(0.0, box.length_m), dice.between(0.0, box.width_m), box.height_m + dice.between(0.0, 0.2)};
    const double beam = dice.between(20.0, 110.0);
    lamp.beam_deg = {0.8 * beam, beam, 1.2 * beam};
    lamp.thermal = dice.chance(0.3);
    if (dice.chance(0.4)) {
        lamp.above_top = false;
        lamp.at.z_m = box.height_m - dice.between(0.01, 0.1);
    }
    if (dice.chance(0.3))
        lamp.control = thermostat(box, dice);
    return lamp;
}

Mat odd_mat(const Box& box, Dice& dice)
{
    Mat made = mat(1.0);
    made.place = static_cast<MatPlace>(static_cast<int>(dice.between(0.0, 5.99)));
    made.area = {dice.between(0.0, 0.2), dice.between(0.0, 0.1), dice.between(0.1, 0.3), dice.between(0.05, 0.2)};
    made.power_w = exactly(dice.between(50.0, 400.0) * made.area.length_m * made.area.width_m);
    if (dice.chance(0.5))
        made.control = thermostat(box, dice);
    return made;
}

Box odd_box(Dice& dice)
{
    Box box = furnished_box(dice.between(0.02, 0.2), dice.chance(0.6));
    box.length_m = dice.between(0.4, 2.0);
    box.width_m = dice.between(0.3, 0.9);
    box.height_m = dice.between(0.35, 1.0);
    box.top = static_cast<TopKind>(static_cast<int>(dice.between(0.0, 2.99)));
    box.top_sheet = glass(0.004);
    box.covers[0].area = {dice.between(0.0, 0.3), 0.0, dice.between(0.05, 0.5), box.width_m};
    if (box.top == TopKind::open)
        box.covers.clear();
    if (dice.chance(0.5))
        box.vents = {{dice.between(0.0, 0.01), 0.25}, {dice.between(0.0, 0.01), box.height_m}};
    box.lamps = {odd_lamp(box, dice)};
    box.mats = {odd_mat(box, dice)};
    box.bed[0].wetness = exactly(dice.between(0.0, 1.0));
    box.misting_l_per_day = {0.0, dice.between(0.0, 0.3), 0.5};
    return box;
}

} // namespace

TEST_CASE("odd boxes converge but for a few, and all that do are balanced and in order")
{
    Dice dice(11);
    int unsolved = 0;
    constexpr int boxes = 80;
    for (int i = 0; i < boxes; ++i) {
        INFO("box " << i);
        const Box box = odd_box(dice);
        Case now = home_day({10.0, dice.between(15.0, 25.0), 30.0});
        now.room.relative_humidity = {0.2, dice.between(0.3, 0.8), 0.85};
        now.day = dice.chance(0.6);
        Workspace workspace;
        const auto result = solve_steady(box, now, workspace);
        REQUIRE(result);
        if (!result->converged) {
            ++unsolved;
            continue;
        }
        CHECK(std::abs(result->input_w - result->loss_w) <= 1e-6 * std::max(1.0, result->power_w));
        for (const Range& range : {result->warm.ground_c, result->cool.ground_c, result->basking.surface_c,
                                   result->hottest_digging_c, result->ground_humidity}) {
            CHECK(range.low <= range.likely);
            CHECK(range.likely <= range.high);
            CHECK(std::isfinite(range.high));
        }
        CHECK(result->warm.ground_c.likely >= result->cool.ground_c.likely - 1e-9);
        CHECK(result->hottest_digging_c.likely <= 400.0);
    }
    CHECK(unsolved <= 1);
}
