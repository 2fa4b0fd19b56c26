// A bed that nobody waters.
#include "core/climate/drying.hpp"

#include <cmath>

#include "core/climate/dry_spell.hpp"
#include "tests/catch.hpp"
#include "tests/core/climate/boxes.hpp"

using namespace loam;
using namespace loam::climate;
using namespace loam::climate::test;

namespace {

DrySpellPlan winter_plan()
{
    DrySpellPlan plan;
    plan.day = home_day();
    plan.night = home_day(Range{18.0, 19.5, 21.0});
    plan.night.id = "winter-night";
    plan.night.day = false;
    return plan;
}

DrySpell spell_of(const Box& box, const DrySpellPlan& plan = winter_plan())
{
    Workspace workspace;
    const auto spell = dry_spell(box, plan, workspace);
    REQUIRE(spell);
    REQUIRE(spell->complete);
    return *spell;
}

} // namespace

// Source: FAO Irrigation and Drainage Paper 56, Table 19 and eq. 74 (from memory): a loam with 18 mm to lose, 9 of them
// readily, evaporates unabated until 9 are gone, at half its rate with 13.5 gone and not at all with 18.
TEST_CASE("a bed gives off less once its readily lost water is gone")
{
    const BedStore loam{18.0, 9.0};
    CHECK(drying_share(loam, 0.0) == 1.0);
    CHECK(drying_share(loam, 9.0) == 1.0);
    CHECK(drying_share(loam, 13.5) == Approx(0.5));
    CHECK(drying_share(loam, 18.0) == 0.0);
    CHECK(drying_share(loam, 25.0) == 0.0);
    CHECK(drying_share({0.0, 0.0}, 0.0) == 0.0);
}

// The same differential equation by short steps; and by hand: 3 days at 3 mm use up the first stage, after which what
// is left falls by 1/e in (18 - 9) / 3 days.
TEST_CASE("what is lost in a time is the integral of the falling rate")
{
    const BedStore loam{18.0, 9.0};
    CHECK(lost_after(loam, 0.0, 3.0, 2.0) == Approx(6.0));
    CHECK(lost_after(loam, 0.0, 3.0, 3.0 + 3.0) == Approx(18.0 - 9.0 / std::exp(1.0)));
    double lost_mm = 1.0;
    constexpr int steps = 200000;
    for (int i = 0; i < steps; ++i)
        lost_mm += 2.5 * drying_share(loam, lost_mm) * 10.0 / steps;
    CHECK(lost_after(loam, 1.0, 2.5, 10.0) == Approx(lost_mm).epsilon(1e-5));
    CHECK(lost_after(loam, 5.0, -1.0, 3.0) == Approx(2.0));
    CHECK(lost_after(loam, 5.0, -1.0, 30.0) == 0.0);
}

TEST_CASE("a bed that nobody waters loses its water and takes the humidity down to what the bowl and the room give")
{
    const Box box = furnished_box(0.10, true);
    const DrySpell spell = spell_of(box);
    // By hand: 100 mm of bed, 0.20 of its volume to lose, less the bowl's 0.04 m2.
    CHECK(spell.holds_l == Approx(1000.0 * 0.10 * 0.20 * (0.9144 * 0.4572 - 0.04)).epsilon(0.01));
    REQUIRE(spell.points.size() > 5);
    for (std::size_t i = 1; i < spell.points.size(); ++i) {
        CHECK(spell.points[i].lost_l > spell.points[i - 1].lost_l);
        CHECK(spell.points[i].lost_l <= spell.holds_l);
        CHECK(spell.points[i].day_humidity <= spell.points[i - 1].day_humidity + 1e-4);
        CHECK(spell.points[i].night_humidity <= spell.points[i - 1].night_humidity + 1e-4);
    }
    // In the end the air is that of a box whose bed gives off nothing.
    Box dry = furnished_box(0.10, false);
    Workspace workspace;
    const auto end =
        solve_likely(dry, winter_plan().night, workspace, {}, {.cell_m = 0.09, .layer_m = 0.04, .most_columns = 100});
    REQUIRE(end);
    CHECK(spell.points.back().night_humidity >= end->ground_humidity.likely - 0.01);
    DrySpellPlan long_one = winter_plan();
    long_one.most_days = 400.0;
    CHECK(spell_of(box, long_one).points.back().night_humidity ==
          Approx(end->ground_humidity.likely).margin(0.02)); // its lower bed stays damp and conducts
}

TEST_CASE("its first day is the steady case, and loses what that evaporates")
{
    Box box = furnished_box(0.10, true);
    Workspace workspace;
    const DrySpellPlan plan = winter_plan();
    const DrySpell spell = spell_of(box, plan);
    const Resolution wide{.cell_m = 0.09, .layer_m = 0.04, .most_columns = 100};
    const auto day = solve_likely(box, plan.day, workspace, {}, wide);
    const auto night = solve_likely(box, plan.night, workspace, {}, wide);
    REQUIRE((day && night));
    CHECK(spell.points.front().day_humidity == Approx(day->ground_humidity.likely).margin(1e-3));
    const auto of_bed = [](const CaseResult& one) {
        return one.evaporation_l_per_day.likely - one.bowl_evaporation_l_per_day.likely - one.condensation_l_per_day;
    };
    const double mean_l_d = 0.5 * (of_bed(*day) + of_bed(*night));
    const DrySpellPoint& second = spell.points[1];
    CHECK(second.lost_l / second.days == Approx(mean_l_d).epsilon(0.05));
}

TEST_CASE("misting slows the drying, and enough of it stops it")
{
    Box box = furnished_box(0.10, true);
    const DrySpell unmisted = spell_of(box);
    box.misting_l_per_day = exactly(0.1);
    const DrySpell misted = spell_of(box);
    CHECK(misted.points.back().lost_l < unmisted.points.back().lost_l);
    CHECK(misted.points.back().day_humidity >= unmisted.points.back().day_humidity);
    box.misting_l_per_day = exactly(3.0);
    CHECK(spell_of(box).points.back().lost_l == Approx(0.0).margin(1e-9));
}

TEST_CASE("without a bed there is nothing to dry, and a stop ends it")
{
    Box box = furnished_box(0.10, true);
    Workspace workspace;
    std::stop_source stop;
    stop.request_stop();
    CHECK_FALSE(dry_spell(box, winter_plan(), workspace, stop.get_token()));
    box.bed.clear();
    CHECK_FALSE(dry_spell(box, winter_plan(), workspace));
}
