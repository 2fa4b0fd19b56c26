// What a user may type. Factors as in numbers_test.cpp.
#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/words/numbers.hpp"

using namespace loam;
using words::Formatter;
using words::Quantity;
using words::UnitSystem;

namespace {

const Formatter metric;
const Formatter us(UnitSystem::us);
const Formatter german(UnitSystem::metric, QLocale(QLocale::German, QLocale::Germany));

double parsed(const Formatter& format, const char* text, Quantity quantity)
{
    const auto value = format.parse(QString::fromUtf8(text), quantity);
    INFO(text);
    REQUIRE(value.has_value());
    return *value;
}

bool refused(const Formatter& format, const char* text, Quantity quantity)
{
    return !format.parse(QString::fromUtf8(text), quantity).has_value();
}

} // namespace

TEST_CASE("A bare number counts in the unit that is shown")
{
    CHECK(parsed(metric, "90", Quantity::length) == Approx(0.9));
    CHECK(parsed(us, "36", Quantity::length) == Approx(0.9144));
    CHECK(parsed(us, "85", Quantity::temperature) == Approx(29.44444));
    CHECK(parsed(metric, "40", Quantity::fraction) == Approx(0.4));
    CHECK(parsed(us, "72", Quantity::volume) == Approx(68.137413));
    CHECK(parsed(us, "2", Quantity::dose) == Approx(59.147059));
}

TEST_CASE("A unit that is written counts, whatever the reader's system")
{
    CHECK(parsed(us, "90 cm", Quantity::length) == Approx(0.9));
    CHECK(parsed(metric, "36in", Quantity::length) == Approx(0.9144));
    CHECK(parsed(metric, "3 ft 6 in", Quantity::length) == Approx(1.0668));
    CHECK(parsed(metric, "3' 6\"", Quantity::length) == Approx(1.0668));
    CHECK(parsed(metric, "3 1/2 in", Quantity::length) == Approx(0.0889));
    CHECK(parsed(us, "3/16", Quantity::thickness) == Approx(0.0047625));
    CHECK(parsed(metric, "85 °F", Quantity::temperature) == Approx(29.44444));
    CHECK(parsed(us, "20 C", Quantity::temperature) == Approx(20.0));
    CHECK(parsed(metric, "9 f", Quantity::temperature_difference) == Approx(5.0));
    CHECK(parsed(us, "0.5 m2", Quantity::area) == Approx(0.5));
    CHECK(parsed(metric, "4.5 sq ft", Quantity::area) == Approx(0.41806368));
    CHECK(parsed(metric, "5 gal", Quantity::volume) == Approx(18.92705892));
    CHECK(parsed(metric, "400 g", Quantity::mass) == Approx(0.4));
    CHECK(parsed(us, "1 kg", Quantity::mass) == Approx(1.0));
}

TEST_CASE("Decimal marks are read by the locale, and otherwise only where they have one meaning")
{
    CHECK(parsed(metric, "35.4", Quantity::length) == Approx(0.354));
    CHECK(parsed(metric, "35,4", Quantity::length) == Approx(0.354));
    CHECK(parsed(german, "35,4", Quantity::length) == Approx(0.354));
    CHECK(parsed(german, "35.4", Quantity::length) == Approx(0.354));
    CHECK(parsed(metric, "1,234", Quantity::power) == Approx(1234.0));
    CHECK(parsed(german, "1.234", Quantity::power) == Approx(1234.0));
    CHECK(parsed(metric, "−5", Quantity::temperature) == Approx(-5.0));
}

TEST_CASE("What is not an amount is refused")
{
    CHECK(refused(metric, "", Quantity::length));
    CHECK(refused(metric, "wide", Quantity::length));
    CHECK(refused(metric, "90 kg", Quantity::length));
    CHECK(refused(metric, "90 cm cm", Quantity::length));
    CHECK(refused(metric, "1.2.3", Quantity::length));
    CHECK(refused(metric, "3/0 in", Quantity::length));
    CHECK(refused(metric, "nan", Quantity::length));
    CHECK(refused(metric, "inf", Quantity::length));
    CHECK(refused(metric, "1e999", Quantity::length));
    CHECK(refused(metric, "20 m2", Quantity::length));
}

TEST_CASE("A field that was not touched gives back exactly what was stored")
{
    for (const double stored : {0.9144, 1.0 / 3.0, 29.444444444444443, 0.123456789, 5.0}) {
        for (const Formatter& format : {metric, us, german}) {
            for (const Quantity quantity :
                 {Quantity::length, Quantity::thickness, Quantity::temperature, Quantity::mass, Quantity::area}) {
                CHECK(format.parse(format.bare(stored, quantity), quantity, stored) == stored);
                CHECK(format.parse(format.value(stored, quantity), quantity, stored) == stored);
            }
        }
    }
}

TEST_CASE("A thickness that is shown reads back within half a hundredth of an inch")
{
    for (int tenths_mm = 1; tenths_mm < 400; ++tenths_mm) {
        const double stored = tenths_mm / 10000.0;
        INFO(us.value(stored, Quantity::thickness));
        const auto back = us.parse(us.value(stored, Quantity::thickness), Quantity::thickness);
        REQUIRE(back.has_value());
        CHECK(*back == Approx(stored).margin(0.0001271));
    }
}

TEST_CASE("What is shown reads back to what was stored, within the digits shown")
{
    for (const double stored : {0.05, 0.3, 0.9144, 1.2192, 2.4}) {
        for (const Formatter& format : {metric, us, german}) {
            const auto back = format.parse(format.value(stored, Quantity::length), Quantity::length);
            REQUIRE(back.has_value());
            CHECK(*back == Approx(stored).margin(0.00128)); // half a tenth of an inch
        }
    }
}

TEST_CASE("A UV index may be typed as what it is defined by")
{
    // WHO, WMO, UNEP & ICNIRP 2002, Global Solar UV Index (from memory): 25 mW/m2 of reddening light are 1.
    CHECK(parsed(metric, "3", Quantity::uv_index) == Approx(3.0));
    CHECK(parsed(metric, "3 UVI", Quantity::uv_index) == Approx(3.0));
    CHECK(parsed(metric, "75 mW/m²", Quantity::uv_index) == Approx(3.0));
    CHECK(parsed(us, "120 mW/m2", Quantity::uv_index) == Approx(4.8));
}

TEST_CASE("What a broadband meter reads is no UV index, and it is said why")
{
    for (const char* text : {"50 µW/cm²", "50 uW/cm2", "50μw / cm²"}) {
        INFO(text);
        CHECK(refused(metric, text, Quantity::uv_index));
        const QString why = metric.why_not(QString::fromUtf8(text), Quantity::uv_index);
        CHECK(why.contains(QStringLiteral("from 0.5 to 20"))); // ISO 17166 at 315 nm and at 298 nm, by hand
    }
    CHECK(metric.why_not(QStringLiteral("fifty"), Quantity::uv_index).isEmpty());
    CHECK(metric.why_not(QStringLiteral("50 µW/cm²"), Quantity::length).isEmpty());
}

TEST_CASE("A price is read exactly, by the locale's marks or by a single mark that has one meaning")
{
    const Formatter english(UnitSystem::metric, QLocale(QLocale::English, QLocale::UnitedStates));
    const auto price = [](const Formatter& format, const char* text) {
        const auto read = format.parse_price(QString::fromUtf8(text));
        return read ? read->text() : std::string("refused");
    };
    CHECK(price(english, "4.50") == "4.50");
    CHECK(price(english, "4,50") == "4.50");
    CHECK(price(english, "1,250") == "1250");
    CHECK(price(english, " 1,250.00 ") == "1250.00");
    CHECK(price(english, "0.1") == "0.1"); // which no double is
    CHECK(price(german, "4,50") == "4.50");
    CHECK(price(german, "4.50") == "4.50");
    CHECK(price(german, "1.250,00") == "1250.00");
    for (const char* wrong : {"", "-4", "4.5.0", "1,25,0", "ten", "1e3", "4 EUR"}) {
        INFO(wrong);
        CHECK(price(english, wrong) == "refused");
    }
}

TEST_CASE("A price reads back as it is shown")
{
    for (const char* text : {"0", "4.50", "1250.00", "0.125"}) {
        const Decimal price = *Decimal::parse(text);
        CHECK(metric.parse_price(metric.price(price)) == price);
        CHECK(german.parse_price(german.price(price)) == price);
    }
}
