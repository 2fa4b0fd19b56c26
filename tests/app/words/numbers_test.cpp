// Factors: NIST Special Publication 811 (2008), exact by definition (from memory): 1 in = 25.4 mm, 1 lb = 0.45359237
// kg, 1 US gal = 231 in3; degF = 1.8 degC + 32. Number marks by locale: Unicode CLDR, as Qt carries it.
#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/words/numbers.hpp"

#include <limits>

using namespace loam;
using words::Formatter;
using words::Quantity;
using words::UnitSystem;

namespace {

const Formatter metric;
const Formatter us(UnitSystem::us);
const Formatter german(UnitSystem::metric, QLocale(QLocale::German, QLocale::Germany));

Money dollars(std::int64_t cents)
{
    return Money(cents, *Currency::find("USD"));
}

} // namespace

TEST_CASE("A figure is shown in the reader's units")
{
    CHECK(metric.value(0.9144, Quantity::length) == "91.4 cm");
    CHECK(us.value(0.9144, Quantity::length) == "36 in");
    CHECK(metric.value(0.005, Quantity::length) == "5 mm");
    CHECK(metric.value(0.5, Quantity::area) == "0.50 m²");
    CHECK(us.value(0.41806368, Quantity::area) == "4.5 sq ft");
    CHECK(metric.value(29.4, Quantity::temperature) == "29.4 °C");
    CHECK(us.value(29.444444, Quantity::temperature) == "85 °F");
    CHECK(us.value(2.5, Quantity::temperature_difference) == "4.5 °F"); // no 32 in a difference
    CHECK(us.value(68.1374, Quantity::volume) == "72 qt");
    CHECK(metric.value(0.004, Quantity::volume) == "4 mL");
    CHECK(metric.value(0.4, Quantity::mass) == "400 g");
    CHECK(us.value(45.359237, Quantity::mass) == "100 lb");
    CHECK(metric.value(75, Quantity::power) == "75 W");
    CHECK(metric.value(0.85, Quantity::fraction) == "85%");
    CHECK(metric.value(1.0, Quantity::years) == "1 year");
    CHECK(metric.value(5.0, Quantity::years) == "5 years");
}

// 1/32 in = 0.03125 in by arithmetic; panels named by fractions down to 32nds: common practice, no source.
// NIST SP 811 (from memory): 20 degC are 68 degF; 90 cm over 2.54 are 35.43 in; by hand.
TEST_CASE("For a reader who is not known a figure stands in both units, the second in square brackets")
{
    const Formatter both(UnitSystem::both);
    CHECK(both.value(0.9, Quantity::length) == "90 cm [35.4 in]");
    CHECK(both.value(20.0, Quantity::temperature) == "20 °C [68 °F]");
    CHECK(both.span({20.0, 22.0, 25.0}, Quantity::temperature) == "20–25 °C [68–77 °F]");
    CHECK(both.range(Range{20.0, 22.5, 25.0}, Quantity::temperature) ==
          "20–25 °C (likely 22.5) [68–77 °F (likely 72.5)]");
    CHECK(both.target({20.0, std::nullopt, {}}, Quantity::temperature) == "at least 20 °C [68 °F]");
    CHECK(both.figure(0.9, "m") == "90 cm [35.4 in]");
    CHECK(both.value(75.0, Quantity::power) == "75 W"); // one unit serves
    CHECK(both.value(3.0, Quantity::hours) == "3 h");
    CHECK(both.parse("90", Quantity::length) == 0.9); // what is typed counts as metric
}

TEST_CASE("A thin length in US units is a common fraction of an inch where one says it, else decimals")
{
    CHECK(us.value(0.009525, Quantity::thickness) == "3/8 in");
    CHECK(us.value(0.0096, Quantity::thickness) == "3/8 in"); // 0.378 in
    CHECK(us.value(0.012, Quantity::thickness) == "15/32 in");
    CHECK(us.value(0.019, Quantity::length) == "3/4 in");
    CHECK(us.value(0.0254, Quantity::thickness) == "1 in");
    CHECK(us.value(0.0381, Quantity::thickness) == "1 1/2 in");
    CHECK(us.value(0.005, Quantity::thickness) == "0.20 in"); // 3/16 in would be 4.8 mm
    CHECK(us.value(0.006, Quantity::thickness) == "0.24 in");
    CHECK(us.value(0.001, Quantity::thickness) == "0.039 in");
    CHECK(us.value(0.0, Quantity::thickness) == "0 in");
    CHECK(us.span({0.015, 0.017, 0.019}, Quantity::thickness) == "19/32–3/4 in");
    CHECK(us.span({0.005, 0.012, 0.019}, Quantity::thickness) == "0.20–0.75 in");
    CHECK(metric.value(0.009525, Quantity::thickness) == "9.5 mm");
}

TEST_CASE("A figure is shown with the marks of the reader's locale")
{
    CHECK(german.value(29.4, Quantity::temperature) == "29,4 °C");
    CHECK(german.value(0.85, Quantity::fraction) == "85 %");
    CHECK(german.money(dollars(123456)) == "1.234,56 USD");
    CHECK(metric.money(dollars(123456)) == "1,234.56 USD");
}

TEST_CASE("What is not a number is said to be not known")
{
    CHECK(metric.value(std::numeric_limits<double>::quiet_NaN(), Quantity::temperature) == "not known");
    CHECK(metric.span({0.0, 1.0, std::numeric_limits<double>::infinity()}, Quantity::mass) == "not known");
    CHECK(metric.range(std::optional<Range>(), Quantity::mass) == "not known");
}

TEST_CASE("A range shows both ends and what is likely")
{
    CHECK(metric.range(Range{27.1, 29.3, 31.4}, Quantity::temperature) == "27.1–31.4 °C (likely 29.3)");
    CHECK(us.range(Range{27.1, 29.3, 31.4}, Quantity::temperature) == "80.8–88.5 °F (likely 84.7)");
    CHECK(metric.range(Range{20, 20, 20}, Quantity::temperature) == "20 °C");
    CHECK(metric.span({-2.0, 1.0, 3.0}, Quantity::temperature) == "-2 to 3 °C");
    CHECK(metric.span({0.001, 0.002, 0.02}, Quantity::volume) == "1–20 mL");
}

TEST_CASE("A target shows the ends that it has")
{
    Target target;
    CHECK(metric.target(target, Quantity::temperature) == "no target");
    target.min = 24.0;
    CHECK(metric.target(target, Quantity::temperature) == "at least 24 °C");
    target.max = 29.5;
    CHECK(metric.target(target, Quantity::temperature) == "24.0–29.5 °C");
    target.min.reset();
    CHECK(us.target(target, Quantity::temperature) == "at most 85.1 °F");
}

TEST_CASE("Money keeps its currency's digits and every cent")
{
    CHECK(metric.money(dollars(0)) == "0.00 USD");
    CHECK(metric.money(dollars(-5)) == "-0.05 USD");
    CHECK(metric.money(Money(1200, *Currency::find("JPY"))) == "1,200 JPY");
    // 2^53 + 1 cents: a double could not hold it.
    CHECK(metric.money(dollars(9007199254740993)) == "90,071,992,547,409.93 USD");
    CHECK(metric.money(MoneyRange{dollars(1000), dollars(1230), dollars(1400)}) == "10.00–14.00 USD, typically 12.30");
    CHECK(metric.money(MoneyRange{dollars(1000), dollars(1000), dollars(1000)}) == "10.00 USD");
}

TEST_CASE("A figure of core is shown by its short unit")
{
    CHECK(metric.figure(0.25, "m") == "25 cm");
    CHECK(us.figure(20.0, "degC") == "68 °F");
    CHECK(us.figure(10.0, "K") == "18 °F");
    CHECK(metric.figure(0.2, "l/d") == "0.2 L a day");
    CHECK(metric.figure(12.3, "EUR") == "12.30 EUR");
    CHECK(metric.figure(2.0, "1") == "2");
    CHECK(metric.figure(3.0, "W/(m2.K)") == "3 W/(m2.K)");
}

TEST_CASE("A date names its month, so that day and month can't be mixed up")
{
    using namespace std::chrono;
    CHECK(metric.date(2026y / November / 5d) == "5 Nov 2026");
    CHECK(metric.date(year_month_day(2026y / February / 30d)) == "not known");
    CHECK(metric.iso_date("2026-11-05") == "5 Nov 2026");
    CHECK(metric.iso_date("autumn") == "not known");
}

TEST_CASE("What is only roughly known has two digits")
{
    CHECK(metric.about(5625.2, Quantity::hours) == "5,600 h");
    CHECK(metric.about(96.4, Quantity::hours) == "96 h");
    CHECK(metric.about(7.26, Quantity::hours) == "7.3 h");
    CHECK(metric.about(9.97, Quantity::hours) == "10.0 h");
    CHECK(metric.about(0.0, Quantity::hours) == "0 h");
}
