#include "tests/catch.hpp"

#include "core/season/eligibility.hpp"
#include "core/season/rest.hpp"
#include "core/season/winter_share.hpp"

using namespace loam;
using namespace loam::season;
using namespace std::chrono_literals;

namespace {

Candidate healthy_adult()
{
    Candidate one;
    one.rests_in_nature = true;
    one.cold_known = true;
    one.health = Health::well;
    one.age_at_rest_years = 6.0;
    one.length_m = 0.13;
    one.mass_kg = 0.4;
    one.adult_from_m = 0.10;
    one.adult_from_kg = 0.3;
    return one;
}

Rest three_eight_one()
{
    return {.begins = std::chrono::sys_days(2026y / 11 / 1),
            .wind_down_weeks = 3,
            .cold_weeks = 8,
            .warm_up_weeks = 1,
            .usual_c = {22.0, 25.0},
            .cold_c = {4.0, 7.0}};
}

std::chrono::sys_days on(std::chrono::year_month_day date)
{
    return {date};
}

} // namespace

TEST_CASE("Winter weighs one half of a year, whatever the lag and the hemisphere")
{
    for (const Hemisphere hemisphere : {Hemisphere::north, Hemisphere::south}) {
        for (const double lag_d : {0.0, 27.5, 55.0}) {
            double sum = 0.0;
            for (int day = 1; day <= 365; ++day) {
                const double share = *winter_share(hemisphere, day, lag_d);
                CHECK(share >= 0.0);
                CHECK(share <= 1.0);
                sum += share;
            }
            CHECK(sum == Approx(182.5).margin(1e-9));
        }
    }
}

TEST_CASE("The coldest days follow the shortest by the lag, half a year apart in the two hemispheres")
{
    // 21 December is day 355, 27.5 days on (Trenberth 1983, from memory) is 17 January; 21 June is day 172.
    CHECK(*winter_share(Hemisphere::north, 17) > 0.9999);
    CHECK(*winter_share(Hemisphere::north, 200) < 1e-3);
    CHECK(*winter_share(Hemisphere::south, 200) > 0.9999);
    CHECK(*winter_share(Hemisphere::south, 17) < 1e-3);
    CHECK(*winter_share(Hemisphere::north, 355, 0.0) == Approx(1.0));
    CHECK_FALSE(winter_share(Hemisphere::north, 0));
    CHECK_FALSE(winter_share(Hemisphere::north, 367));
    CHECK(hemisphere_of(47.0) == Hemisphere::north);
    CHECK(hemisphere_of(-33.9) == Hemisphere::south);
    CHECK_FALSE(hemisphere_of(0.0));
    CHECK_FALSE(hemisphere_of(91.0));
}

TEST_CASE("A healthy adult of a species that rests may be cooled")
{
    CHECK(eligibility(healthy_adult()) == Eligibility{Answer::eligible, {}});
}

TEST_CASE("Tropical, ill, underweight and first-winter animals are refused, each with its reason")
{
    // A club page and keepers' sheets (secondary): never ill, underweight, in the first winter, or a tropical species.
    Candidate one = healthy_adult();
    one.rests_in_nature = false;
    CHECK(eligibility(one) == Eligibility{Answer::refused, {Bar::species_does_not_rest}});
    one = healthy_adult();
    one.health = Health::ill;
    CHECK(eligibility(one) == Eligibility{Answer::refused, {Bar::ill}});
    one = healthy_adult();
    one.health = Health::underweight;
    CHECK(eligibility(one) == Eligibility{Answer::refused, {Bar::underweight}});
    one = healthy_adult();
    one.mass_kg = 0.29; // an adult by length under the sheet's least mass, though it is said to be well
    CHECK(eligibility(one) == Eligibility{Answer::refused, {Bar::underweight}});
    one = healthy_adult();
    one.age_at_rest_years = 0.3;
    CHECK(eligibility(one) == Eligibility{Answer::refused, {Bar::first_winter}});
}

TEST_CASE("A reason to refuse counts though other things are not known, and what is not known never passes")
{
    Candidate one = healthy_adult();
    one.mass_kg.reset();
    CHECK(eligibility(one) == Eligibility{Answer::not_known, {Bar::weight_not_stated}});
    one.health = Health::ill;
    CHECK(eligibility(one) == Eligibility{Answer::refused, {Bar::ill}});
    one = healthy_adult();
    one.health.reset();
    one.age_at_rest_years.reset();
    one.cold_known = false;
    CHECK(eligibility(one).answer == Answer::not_known);
    CHECK(eligibility(one).bars.size() == 3);
}

TEST_CASE("A small animal is not held against an adult's weight")
{
    Candidate one = healthy_adult();
    one.length_m = 0.07;
    one.mass_kg = 0.08;
    CHECK(eligibility(one).answer == Answer::eligible);
}

TEST_CASE("A rest of three, eight and one weeks has its days, by the calendar")
{
    const Rest rest = three_eight_one();
    CHECK(cold_from(rest) == on(2026y / 11 / 22));
    CHECK(cold_until(rest) == on(2027y / 1 / 17));
    CHECK(ends(rest) == on(2027y / 1 / 24));
    CHECK(weeks(rest).size() == 12);
}

TEST_CASE("Warmth stays for the first half of the fast, then falls to the cold and comes back after it")
{
    const Rest rest = three_eight_one();
    CHECK(running_share(rest, on(2026y / 10 / 31)) == 1.0);
    CHECK(running_share(rest, on(2026y / 11 / 8)) == 1.0);
    CHECK(running_share(rest, on(2026y / 11 / 15)) == Approx(7.0 / 10.5));
    CHECK(running_share(rest, on(2026y / 11 / 22)) == 0.0);
    CHECK(running_share(rest, on(2027y / 1 / 16)) == 0.0);
    CHECK(running_share(rest, on(2027y / 1 / 20)) == Approx(3.0 / 7.0));
    CHECK(running_share(rest, on(2027y / 1 / 24)) == 1.0);
    const auto all = weeks(rest);
    CHECK(all[0].by_its_end_c == Span{22.0, 25.0});
    CHECK(all[2].by_its_end_c == Span{4.0, 7.0});
    CHECK(all[7].by_its_end_c == Span{4.0, 7.0});
    CHECK(all[7].stage == Stage::cold);
    CHECK(all[10].by_its_end_c == Span{4.0, 7.0});
    CHECK(all[11].by_its_end_c == Span{22.0, 25.0});
    for (std::size_t i = 1; i < 11; ++i) {
        CHECK(all[i].by_its_end_c.high <= all[i - 1].by_its_end_c.high);
    }
}

TEST_CASE("Weighing is weekly, asks after one per cent a month and stops at the stated loss")
{
    // By hand: 400 g, stop at 8 %: 368 g; after 28 days of a month of 30.44, 0.92 % lost is 396.3 g.
    const auto all = weigh_ins(three_eight_one(), 0.400, {.stop = 0.08, .monthly = 0.01});
    REQUIRE(all.size() == 9);
    CHECK(all.front().on == on(2026y / 11 / 22));
    CHECK(all.back().on == on(2027y / 1 / 17));
    CHECK(all[0].ask_below_kg == Approx(0.400));
    CHECK(all[4].ask_below_kg == Approx(0.3963).margin(5e-5));
    for (const WeighIn& one : all) {
        CHECK(one.stop_below_kg == Approx(0.368));
        CHECK(one.ask_below_kg >= one.stop_below_kg);
    }
    Rest long_rest = three_eight_one();
    long_rest.cold_weeks = 40;
    CHECK(weigh_ins(long_rest, 0.4, {.stop = 0.08, .monthly = 0.01}).back().ask_below_kg == Approx(0.368));
    CHECK(weigh_ins(three_eight_one(), 0.0, {}).empty());
    CHECK(weigh_ins(three_eight_one(), 0.4, {.stop = 1.5, .monthly = 0.01}).empty());
}

TEST_CASE("A rest without weeks is none")
{
    Rest rest = three_eight_one();
    rest.cold_weeks = 0;
    CHECK(weeks(rest).empty());
    CHECK(running_share(rest, rest.begins) == 1.0);
    CHECK(weigh_ins(rest, 0.4, {}).empty());
}
