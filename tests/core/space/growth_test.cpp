#include "tests/catch.hpp"

#include <cmath>

#include "core/space/growth.hpp"

using namespace loam::space;

namespace {

// Stickel & Bunck 1989, J Herpetol 23:216-223 (abstract confirmed): Terrapene carolina in Maryland, carapace length a
// year: males of 8 to 13 years 6.7 %, females 5.3 %; of 14 to 19 years males 2.3 %, females 3.4 %.
std::vector<GrowthRate> box_turtle_rates()
{
    return {{8.0, 14.0, 0.053, 0.067}, {14.0, 20.0, 0.023, 0.034}};
}

GrowingGroup box_turtle(double body_m, std::optional<double> age_years)
{
    return {1, body_m, age_years, box_turtle_rates(), 0.115, 0.150};
}

const AreaFormula eight_by_four = SizeMultiple{8.0, 4.0, {}, {}, 2, {}};

} // namespace

TEST_CASE("Length grows by the published share for each year of an age")
{
    const auto later = length_after(box_turtle(0.090, 8.0), 3.0);
    REQUIRE(later);
    CHECK(later->slow_m == Approx(0.090 * 1.053 * 1.053 * 1.053));
    CHECK(*later->fast_m == Approx(0.090 * 1.067 * 1.067 * 1.067));
    CHECK(later->fast_from_rates);
}

TEST_CASE("A path crosses from one span of ages into the next")
{
    const auto later = length_after(box_turtle(0.090, 12.0), 4.0);
    REQUIRE(later);
    CHECK(later->slow_m == Approx(0.090 * std::pow(1.053, 2) * std::pow(1.023, 2)));
    CHECK(*later->fast_m == Approx(0.090 * std::pow(1.067, 2) * std::pow(1.034, 2)));
}

TEST_CASE("Past the last span its fast rate stays the bound and the slow path rests")
{
    const auto later = length_after(box_turtle(0.080, 18.0), 5.0);
    REQUIRE(later);
    CHECK(*later->fast_m == Approx(0.080 * std::pow(1.034, 5)));
    CHECK(later->fast_from_rates);
    CHECK(later->slow_m == Approx(0.080 * std::pow(1.023, 2)));
}

TEST_CASE("Between two spans of ages nothing is known but the adult length")
{
    GrowingGroup group = box_turtle(0.080, 9.0);
    group.rates = {{8.0, 10.0, 0.05, 0.07}, {14.0, 20.0, 0.02, 0.03}};
    CHECK(length_after(group, 1.0)->fast_from_rates);
    CHECK(*length_after(group, 1.0)->fast_m == Approx(0.080 * 1.07));
    CHECK_FALSE(length_after(group, 2.0)->fast_from_rates);
    CHECK(*length_after(group, 2.0)->fast_m == Approx(0.150));
    CHECK(length_after(group, 6.0)->slow_m == Approx(0.080 * 1.05 * 1.02));
}

TEST_CASE("The slow path stops at the lower adult length and the fast one at the upper")
{
    const auto later = length_after(box_turtle(0.110, 8.0), 30.0);
    REQUIRE(later);
    CHECK(later->slow_m == Approx(0.115));
    CHECK(*later->fast_m == Approx(0.150));
}

TEST_CASE("An animal longer than the adult band keeps its length")
{
    const auto later = length_after(box_turtle(0.162, std::nullopt), 10.0);
    REQUIRE(later);
    CHECK(later->slow_m == Approx(0.162));
    CHECK(*later->fast_m == Approx(0.162));
    CHECK(later->fast_from_rates); // nothing is left to grow
}

TEST_CASE("Without an age or a rate the bounds are today's length and the adult length")
{
    for (const GrowingGroup& group :
         {box_turtle(0.10, std::nullopt), box_turtle(0.10, 3.0), GrowingGroup{1, 0.10, 5.0, {}, 0.115, 0.150}}) {
        const auto later = length_after(group, 1.0);
        REQUIRE(later);
        CHECK(later->slow_m == Approx(0.10));
        CHECK(*later->fast_m == Approx(0.150));
        CHECK_FALSE(later->fast_from_rates);
        CHECK(*length_after(group, 0.0)->fast_m == Approx(0.10)); // today is measured
    }
}

TEST_CASE("Where neither a rate nor an adult length bounds growth, nothing is invented")
{
    const auto later = length_after({1, 0.10, std::nullopt, {}, {}, {}}, 1.0);
    REQUIRE(later);
    CHECK_FALSE(later->fast_m);
    CHECK_FALSE(length_after({1, std::nullopt, 5.0, box_turtle_rates(), 0.115, 0.150}, 1.0));
}

TEST_CASE("Lengths never fall with time and the fast path is never below the slow one")
{
    for (const std::optional<double> age : {std::optional(2.0), std::optional(9.0), std::optional<double>()}) {
        LengthBounds before = *length_after(box_turtle(0.095, age), 0.0);
        for (double years = 0.25; years < 30.0; years += 0.25) {
            const LengthBounds here = *length_after(box_turtle(0.095, age), years);
            CHECK(here.slow_m >= before.slow_m);
            CHECK(*here.fast_m >= *before.fast_m);
            CHECK(*here.fast_m >= here.slow_m);
            before = here;
        }
    }
}

TEST_CASE("A box is outgrown when the length that it holds is reached")
{
    // 0.88 x 0.44 m holds 11 cm. From 9 cm: ln(11/9) / ln(1.067) = 3.094 and / ln(1.053) = 3.886 years, by hand.
    const Offer offer = {0.88, 0.44, 0.5, 0.88 * 0.44};
    const Outgrown when = outgrown(eight_by_four, BodyMeasure::carapace, {box_turtle(0.090, 8.0)}, offer, 20.0);
    CHECK(when.known);
    REQUIRE(when.earliest_years);
    REQUIRE(when.latest_years);
    CHECK(*when.earliest_years == Approx(3.094).margin(0.004));
    CHECK(*when.latest_years == Approx(3.886).margin(0.004));
}

TEST_CASE("A box that is too small today is outgrown now, whatever the rates")
{
    const Outgrown when = outgrown(eight_by_four, BodyMeasure::carapace, {box_turtle(0.12, std::nullopt)},
                                   {0.88, 0.44, 0.5, 0.3872}, 20.0);
    CHECK(when.known);
    CHECK(*when.earliest_years == 0.0);
    CHECK(*when.latest_years == 0.0);
}

TEST_CASE("A box that holds the longest adult is never outgrown, even where no rate is known")
{
    const Outgrown when =
        outgrown(eight_by_four, BodyMeasure::carapace, {box_turtle(0.09, std::nullopt)}, {1.2, 0.6, 0.5, 0.72}, 40.0);
    CHECK(when.known);
    CHECK_FALSE(when.earliest_years);
    CHECK_FALSE(when.latest_years);
}

TEST_CASE("Where only the unknown rate decides, the year is not known")
{
    const Offer offer = {0.88, 0.44, 0.5, 0.3872};
    CHECK_FALSE(outgrown(eight_by_four, BodyMeasure::carapace, {box_turtle(0.09, std::nullopt)}, offer, 20.0).known);
    CHECK_FALSE(outgrown(eight_by_four, BodyMeasure::carapace, {box_turtle(0.09, 3.0)}, offer, 20.0).known);
    GrowingGroup unmeasured = box_turtle(0.09, 8.0);
    unmeasured.body_m.reset();
    CHECK_FALSE(outgrown(eight_by_four, BodyMeasure::carapace, {unmeasured}, offer, 20.0).known);
}

TEST_CASE("The demand at the horizon is that of the fast path")
{
    const auto in_two_years = demand_after(eight_by_four, BodyMeasure::carapace, {box_turtle(0.09, 8.0)}, 2.0);
    REQUIRE(in_two_years);
    CHECK(*in_two_years->length_m == Approx(8.0 * 0.09 * 1.067 * 1.067));
    const auto grown = demand_grown(eight_by_four, BodyMeasure::carapace, {box_turtle(0.09, std::nullopt)});
    REQUIRE(grown);
    CHECK(*grown->length_m == Approx(1.2));
}
