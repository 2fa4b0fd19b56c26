#include "core/money.hpp"

#include <cmath>
#include <limits>

#include "tests/catch.hpp"

using loam::Currency;
using loam::Decimal;
using loam::Money;
using loam::MoneyRange;

namespace {

const Currency usd{"USD", 2};
const Currency jpy{"JPY", 0};
const Currency kwd{"KWD", 3};
constexpr std::int64_t largest = std::numeric_limits<std::int64_t>::max();

std::int64_t cents(double amount)
{
    return Money::rounded(amount, usd).value().minor_units();
}

} // namespace

TEST_CASE("Rounding takes the half away from zero, as people do it on paper")
{
    // Source: the rule itself, worked by hand.
    const std::pair<double, std::int64_t> table[] = {{0.0, 0},
                                                     {0.004, 0},
                                                     {0.005, 1},
                                                     {0.0049999, 0},
                                                     {0.015, 2},
                                                     {0.025, 3},
                                                     {1.005, 101},
                                                     {2.675, 268},
                                                     {1.115, 112},
                                                     {-0.005, -1},
                                                     {-1.005, -101},
                                                     {-0.004, 0},
                                                     {12.345, 1235},
                                                     {1e-300, 0},
                                                     {999.995, 100000},
                                                     {1234567.885, 123456789},
                                                     {1e12, 100000000000000}};
    for (const auto& [amount, expected] : table) {
        CAPTURE(amount);
        CHECK(cents(amount) == expected);
    }
}

TEST_CASE("Rounding follows the digits of the currency")
{
    CHECK(Money::rounded(1234.5, jpy)->text() == "1235");
    CHECK(Money::rounded(1234.4999, jpy)->text() == "1234");
    CHECK(Money::rounded(0.0005, kwd)->text() == "0.001");
    CHECK(Money::rounded(-1.0005, kwd)->text() == "-1.001");
    CHECK(Money::rounded(12.3, usd)->text() == "12.30");
}

TEST_CASE("What is not finite or does not fit is refused, not cut off")
{
    CHECK_FALSE(Money::rounded(std::nan(""), usd));
    CHECK_FALSE(Money::rounded(std::numeric_limits<double>::infinity(), usd));
    CHECK_FALSE(Money::rounded(1e17, usd));
    CHECK_FALSE(Money::rounded(-1e300, usd));
    CHECK(Money::rounded(9e16, usd));
    CHECK_FALSE(Money::from(Decimal{999999999999999999, 0}, kwd));
}

TEST_CASE("A decimal is read as it is written and written back the same")
{
    for (const char* text : {"0", "0.180", "12.30", "-0.05", "999999999999999999", "0.000000000001", "007", "-12"}) {
        const auto decimal = Decimal::parse(text);
        REQUIRE(decimal);
        if (std::string(text) != "007") {
            CHECK(decimal->text() == text);
        }
    }
    CHECK(Decimal::parse("0.180") == Decimal{180, 3});
    CHECK(Decimal{std::numeric_limits<std::int64_t>::min(), 2}.text() == "-92233720368547758.08");
}

TEST_CASE("Anything that is not a plain decimal is refused")
{
    for (const char* text : {"", "-", ".", "1.", ".5", "1e3", "+1", "1,5", " 1", "1 ", "1.2.3", "--1", "nan", "0x10",
                             "1234567890123456789", "0.0000000000001", "1-"}) {
        CAPTURE(text);
        CHECK_FALSE(Decimal::parse(text));
    }
}

TEST_CASE("A decimal's value is the nearest double")
{
    CHECK(Decimal{18, 2}.value() == 0.18);
    CHECK(Decimal{-1, 12}.value() == -1e-12);
    CHECK(Decimal{123456789012345678, 6}.value() == 123456789012.345678);
}

TEST_CASE("A price with more decimals than its currency is refused unless they are zeros")
{
    CHECK(Money::from(*Decimal::parse("4.5"), usd)->minor_units() == 450);
    CHECK(Money::from(*Decimal::parse("4.500"), usd)->minor_units() == 450);
    CHECK(Money::from(*Decimal::parse("100.00"), jpy)->minor_units() == 100);
    CHECK(Money::from(*Decimal::parse("1.234"), kwd)->minor_units() == 1234);
    CHECK_FALSE(Money::from(*Decimal::parse("4.505"), usd));
    CHECK_FALSE(Money::from(*Decimal::parse("0.5"), jpy));
}

TEST_CASE("Quantity times price is exact before the one rounding")
{
    // 1.5 x 0.35 = 0.525 exactly; in binary the product lies below the half cent.
    CHECK(1.5 * 0.35 < 0.525);
    CHECK(Money::of(1.5, *Decimal::parse("0.35"), usd)->text() == "0.53");
    CHECK(Money::of(1234.5, *Decimal::parse("0.1837"), usd)->text() == "226.78"); // 226.77765
    CHECK(Money::of(100.0, *Decimal::parse("31.25"), jpy)->text() == "3125");
    CHECK(Money::of(0.5, *Decimal::parse("0.001"), kwd)->text() == "0.001");
    CHECK_FALSE(Money::of(1e30, *Decimal::parse("1"), usd));
    CHECK_FALSE(Money::of(std::nan(""), *Decimal::parse("1"), usd));
}

TEST_CASE("Sums are exact and a share is rounded once")
{
    Money sum(0, usd);
    for (int i = 0; i < 1000; ++i) {
        sum += Money(10, usd); // a thousand times 0.10; in doubles this is 99.9999999999986
    }
    CHECK(sum.text() == "100.00");
    CHECK((Money(100, usd) - Money(250, usd)).text() == "-1.50");
    CHECK(Money(5, usd).scaled(0.5).minor_units() == 3);
    CHECK(Money(-5, usd).scaled(0.5).minor_units() == -3);
    CHECK(Money(100, usd).scaled(1.15).minor_units() == 115);
    CHECK(Money(1999, usd).scaled(0.0).minor_units() == 0);
    CHECK(Money(largest, usd).scaled(1e-30).minor_units() == 0);
    CHECK(Money(1999, usd).times(3).text() == "59.97");
}

TEST_CASE("A sum or product that does not fit says so, and so does everything made of it")
{
    const Money most(largest, usd);
    CHECK_FALSE(most.overflowed());
    CHECK((most + Money(1, usd)).overflowed());
    CHECK((Money(-largest, usd) - Money(2, usd)).overflowed());
    CHECK(most.times(2).overflowed());
    CHECK(most.times(-2).minor_units() < 0);
    CHECK(most.scaled(1.5).overflowed());
    CHECK(Money(1, usd).scaled(std::nan("")).overflowed());
    const Money spoilt = most + Money(1, usd);
    CHECK((spoilt - Money(1000, usd)).overflowed());
    CHECK(spoilt.times(0).overflowed());
    CHECK(spoilt.scaled(0.5).overflowed());
    CHECK((Money(1, usd) + spoilt).overflowed());
}

TEST_CASE("A range of money adds and multiplies end by end")
{
    MoneyRange sum = MoneyRange::zero(kwd);
    sum += MoneyRange{Money(1, kwd), Money(2, kwd), Money(4, kwd)}.times(3);
    sum += MoneyRange{Money(10, kwd), Money(10, kwd), Money(10, kwd)};
    CHECK(sum == MoneyRange{Money(13, kwd), Money(16, kwd), Money(22, kwd)});
}
