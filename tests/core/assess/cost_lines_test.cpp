#include "core/assess/cost_lines.hpp"

#include "tests/catch.hpp"

using namespace loam;
using namespace loam::assess;

namespace {

CostLine line(const char* name, std::int64_t minor, std::optional<double> months)
{
    const Money amount(minor, Currency{});
    return {.kind = CostKind::replacement,
            .item = name,
            .name = name,
            .per_year = {amount, amount, amount},
            .every_months = months};
}

} // namespace

TEST_CASE("the same thing in two boxes is one line, and the total stays")
{
    const auto merged = merged_by_name({line("timer", 200, 60.0), line("lamp", 900, 5.0), line("timer", 250, 60.0)});
    REQUIRE(merged.size() == 2);
    CHECK(merged[0].name == "timer");
    CHECK(merged[0].per_year.typical.minor_units() == 450);
    CHECK(merged[0].every_months == 60.0);
    CHECK(merged[1].per_year.typical.minor_units() == 900);
}

TEST_CASE("lines that come round at different intervals state none together")
{
    const auto merged = merged_by_name({line("lamp", 900, 5.0), line("lamp", 400, 11.0)});
    REQUIRE(merged.size() == 1);
    CHECK_FALSE(merged[0].every_months.has_value());
}
