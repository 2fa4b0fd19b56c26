#include <fstream>
#include <set>
#include <string>

#include "core/money.hpp"
#include "tests/catch.hpp"

using loam::Currency;

TEST_CASE("Every currency has the number of minor digits that an independent table gives")
{
    // Source: currency_digits.csv, see its first lines.
    std::ifstream table(LOAM_SOURCE_DIR "/tests/core/base/currency_digits.csv");
    REQUIRE(table);
    int rows = 0;
    for (std::string row; std::getline(table, row);) {
        if (row.starts_with('#')) {
            continue;
        }
        ++rows;
        const std::string code = row.substr(0, 3);
        const int digits = std::stoi(row.substr(4));
        const auto found = Currency::find(code);
        CAPTURE(row);
        REQUIRE(found.has_value() == (digits >= 0));
        if (found) {
            CHECK(found->code == code);
            CHECK(found->minor_digits == digits);
        }
    }
    CHECK(rows == 178);
}

TEST_CASE("The currencies without a minor unit, and those with three and four digits, are known as such")
{
    // Source: ISO 4217, from memory.
    for (const char* code : {"JPY", "KRW", "CLP", "VND", "ISK"}) {
        CHECK(Currency::find(code) == Currency{code, 0});
    }
    for (const char* code : {"BHD", "KWD", "OMR", "TND", "JOD", "IQD", "LYD"}) {
        CHECK(Currency::find(code) == Currency{code, 3});
    }
    CHECK(Currency::find("USD") == Currency{"USD", 2});
    CHECK(Currency::find("UYW") == Currency{"UYW", 4});
}

TEST_CASE("Withdrawn, metal, lower-case and made-up codes are refused")
{
    for (const char* code : {"DEM", "HRK", "ZWL", "XAU", "XXX", "usd", "US", "USDX", "", "ZZZ"}) {
        CHECK_FALSE(Currency::find(code));
    }
}
