#include "core/cost/present_value.hpp"

#include <cmath>
#include <limits>

#include "tests/catch.hpp"

using namespace loam;
using namespace loam::cost;

namespace {

const Currency eur{"EUR", 2};
const Currency jpy{"JPY", 0};

MoneyRange same(std::int64_t minor, const Currency& currency)
{
    return {Money(minor, currency), Money(minor, currency), Money(minor, currency)};
}

std::vector<Year> course(const std::vector<std::int64_t>& spent, const Currency& currency)
{
    std::vector<Year> years;
    for (const std::int64_t one : spent) {
        years.push_back({static_cast<std::int64_t>(years.size()), same(one, currency), {}});
    }
    return years;
}

} // namespace

TEST_CASE("Present values are those of published examples")
{
    // Source: tests of numpy-financial, npv.
    CHECK(present_value(0.05, {-15000, 1500, 2500, 3500, 4500, 6000}).value() == Approx(122.8948549509).epsilon(1e-11));
    // Source: documentation of numpy-financial, npv (from memory); value worked out again.
    CHECK(present_value(0.281, {-100, 39, 59, 55, 20}).value() == Approx(-0.00848).margin(5e-6));
    // Source: tests of numpy-financial, pv: 12000 a year for 20 years at 7 %.
    std::vector<double> payments(21, 12000.0);
    payments[0] = 0.0;
    CHECK(present_value(0.07, payments).value() == Approx(127128.17).margin(0.005));
}

TEST_CASE("Annuity factors are those of the standard tables")
{
    // Source: present value of an ordinary annuity, standard tables (from memory), four decimals.
    CHECK(annuity_factor(0.05, 10).value() == Approx(7.7217).margin(5e-5));
    CHECK(annuity_factor(0.08, 5).value() == Approx(3.9927).margin(5e-5));
    CHECK(annuity_factor(0.10, 3).value() == Approx(2.4869).margin(5e-5));
    CHECK(annuity_factor(0.10, 10).value() == Approx(6.1446).margin(5e-5));
    CHECK(annuity_factor(0.12, 10).value() == Approx(5.6502).margin(5e-5));
    // Source: public lecture note: 40000 a year for 10 years at 12 % is worth 226008.9, less a cost of 150000, 76008.9.
    CHECK(40000.0 * annuity_factor(0.12, 10).value() == Approx(226008.9).margin(0.05));
    std::vector<double> project(11, 40000.0);
    project[0] = -150000.0;
    CHECK(present_value(0.12, project).value() == Approx(76008.9).margin(0.05));
}

TEST_CASE("Level payments are those of published examples")
{
    // Source: tests of numpy-financial, pmt: 15000 over 60 months at 8 % a year, and at no interest.
    CHECK(level_payment(15000.0, 0.08 / 12.0, 60).value() == Approx(304.145914).margin(5e-7));
    CHECK(level_payment(15000.0, 0.0, 60).value() == Approx(250.0));
    // Source: public course item: capital recovery of 10000 with 1000 left after 5 years at 10 %.
    CHECK(1.0 / annuity_factor(0.10, 5).value() == Approx(0.263797481).margin(5e-10));
    CHECK(level_payment(10000.0 - 1000.0, 0.10, 5).value() + 1000.0 * 0.10 == Approx(2474.18).margin(0.005));
}

TEST_CASE("A tiny rate comes close to no rate at all")
{
    CHECK(annuity_factor(1e-12, 60).value() == Approx(60.0).epsilon(1e-10));
}

TEST_CASE("The equivalent annual cost of a published example comes out to the cent")
{
    // Source: public test: 100000 at the start, 4000 a year for 5 years, 5 %; EAC 27097.48.
    const auto years = course({10'000'000, 400'000, 400'000, 400'000, 400'000, 400'000}, eur);
    CHECK(equivalent_annual_cost(years, 0.05)->text() == "27097.48");
    // 100000 + 4000 * 4.329476671 = 117317.91, with the annuity factor from the same formula by hand.
    CHECK(net_present_cost(years, 0.05)->text() == "117317.91");
}

TEST_CASE("Without interest the present cost is the plain sum and the annual cost its share")
{
    const auto years = course({1000, 10, 20, 40}, jpy);
    CHECK(net_present_cost(years, 0.0)->text() == "1070");
    CHECK(equivalent_annual_cost(years, 0.0)->text() == "357"); // 356.67
}

TEST_CASE("The present cost of a course in dinars is rounded to thousandths")
{
    const Currency kwd{"KWD", 3};
    CHECK(net_present_cost(course({0, 1000}, kwd), 0.03)->text() == "0.971"); // 1 / 1.03 = 0.97087
}

TEST_CASE("A higher rate never makes a course of costs dearer today")
{
    const auto years = course({5000, 700, 300, 0, 900}, eur);
    std::int64_t last = std::numeric_limits<std::int64_t>::max();
    for (const double rate : {0.0, 0.01, 0.03, 0.1, 0.5, 1.0}) {
        const std::int64_t now = net_present_cost(years, rate)->minor_units();
        CHECK(now <= last);
        last = now;
    }
}

TEST_CASE("Rates and courses out of range are refused")
{
    CHECK_FALSE(present_value(-1.0, {1.0, 1.0}));
    CHECK_FALSE(present_value(std::nan(""), {1.0, 1.0}));
    CHECK_FALSE(annuity_factor(0.05, 0));
    CHECK_FALSE(annuity_factor(-2.0, 3));
    CHECK_FALSE(net_present_cost({}, 0.03));
    CHECK_FALSE(net_present_cost(course({1, 2}, eur), 1.5));
    CHECK_FALSE(net_present_cost(course({1, 2}, eur), -0.1));
    CHECK_FALSE(equivalent_annual_cost(course({1}, eur), 0.03));
}
