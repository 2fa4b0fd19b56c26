#include "tests/catch.hpp"

#include "core/water/water.hpp"

using namespace loam;
using namespace loam::water;

namespace {

Use one_tray()
{
    Use use;
    use.bowls = {{"tray", 0.30, 0.20, exactly(0.03), exactly(0.8)}};
    use.changes_per_day = exactly(1.0);
    return use;
}

} // namespace

TEST_CASE("A bowl holds about four fifths of its outer box")
{
    // Common practice, no source: length x width x depth x 0.8; 30 x 20 x 3 cm is 1.44 l, by hand.
    CHECK(bowl_l({"tray", 0.30, 0.20, exactly(0.03)}).likely == Approx(1.44));
    CHECK(bowl_l({"tray", 0.30, 0.20, exactly(0.03)}).low == Approx(1.26));
    CHECK(bowl_l({"tray", 0.30, 0.20, exactly(0.03)}).high == Approx(1.62));
    CHECK(bowl_l({"dry", 0.30, 0.20, exactly(0.0)}).high == 0.0);
}

TEST_CASE("Changes and evaporation make the day's water")
{
    Use use = one_tray();
    use.changes_per_day = exactly(2.0);
    use.bowl_evaporation_l_per_day = exactly(0.3);
    use.misting_l_per_day = exactly(0.2);
    const Daily daily = daily_water(use);
    CHECK(daily.changed_l.likely == Approx(2.88));
    CHECK(daily.total_l.likely == Approx(3.38));
    CHECK(daily.treated_l.likely == Approx(3.18));
    use.misting_treated = true;
    CHECK(daily_water(use).treated_l.likely == Approx(3.38));
}

TEST_CASE("A bowl changed twice a week needs two sevenths of itself a day")
{
    Use use = one_tray();
    use.changes_per_day = exactly(2.0 / 7.0);
    CHECK(daily_water(use).changed_l.likely * 7.0 == Approx(2.88));
}

TEST_CASE("Conditioner follows the treated litres, and none is named without a dose")
{
    // 1 ml to 4 l (from memory).
    Use use = one_tray();
    CHECK_FALSE(daily_water(use).conditioner_ml);
    use.conditioner_ml_per_l = exactly(0.25);
    CHECK(daily_water(use).conditioner_ml->likely == Approx(0.36));
}

TEST_CASE("A bottle of 250 ml at 1 ml to 4 l lasts a thousand litres")
{
    const auto days = days_lasting(250.0 * 4.0, {1.0, 2.0, 4.0});
    REQUIRE(days);
    CHECK(*days == Range{250.0, 500.0, 1000.0});
    CHECK_FALSE(days_lasting(1000.0, exactly(0.0)));
}

TEST_CASE("Without a bowl nothing is changed or topped up")
{
    Use use;
    use.changes_per_day = exactly(1.0);
    use.bowl_evaporation_l_per_day = exactly(0.4);
    use.misting_l_per_day = exactly(0.2);
    const Daily daily = daily_water(use);
    CHECK(daily.changed_l.likely == 0.0);
    CHECK(daily.top_up_l.likely == 0.0);
    CHECK(daily.total_l.likely == Approx(0.2));
}

TEST_CASE("Two bowls err together, a change of habit errs on its own")
{
    Use use = one_tray();
    use.bowls.front().fullness = {0.7, 0.8, 0.9};
    const Range one_l = daily_water(use).bowls_l;
    use.bowls.push_back(use.bowls.front());
    const Daily both = daily_water(use);
    CHECK(both.bowls_l.low == Approx(2.0 * one_l.low));
    CHECK(both.bowls_l.high == Approx(2.0 * one_l.high));
    use.changes_per_day = {0.5, 1.0, 1.5};
    const Daily unsure = daily_water(use);
    CHECK(unsure.changed_l.low > 0.5 * both.bowls_l.low);
    CHECK(unsure.changed_l.high < 1.5 * both.bowls_l.high);
    CHECK(unsure.changed_l.high > 1.5 * both.bowls_l.likely);
}
