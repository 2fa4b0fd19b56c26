// Humidity over the floor, and where walls and top are coldest.
#include "core/climate/condensation.hpp"

#include <algorithm>

#include "core/climate/psychrometrics.hpp"
#include "tests/core/climate/solved.hpp"

namespace loam::climate::test {

TEST_CASE("Over the floor the lower air's vapour is everywhere the same, and its humidity follows the warmth")
{
    const CaseResult result = solved(furnished_box());
    const auto& ground_c = result.floor.ground_c;
    const auto& humidity = result.floor.humidity;
    REQUIRE(humidity.size() == ground_c.size());
    const double ratio = *humidity_ratio_at(result.lower_air_c.likely, result.air_humidity.likely);
    for (std::size_t cell = 0; cell < humidity.size(); ++cell)
        CHECK(humidity[cell] == Approx(*relative_humidity(ground_c[cell], ratio)).epsilon(1e-6));
    const auto at = [&](auto found) { return static_cast<std::size_t>(found - ground_c.begin()); };
    CHECK(humidity[at(std::max_element(ground_c.begin(), ground_c.end()))] ==
          *std::min_element(humidity.begin(), humidity.end()));
    CHECK(humidity[at(std::min_element(ground_c.begin(), ground_c.end()))] ==
          *std::max_element(humidity.begin(), humidity.end()));
}

// Source: npm package psychrolib 1.1.1 (GetTDewPointFromRelHum): 15.763 degC for 24 degC and 60 %.
TEST_CASE("The lower air's dew point is that of its warmth and its humidity")
{
    CaseResult air;
    CHECK_FALSE(lower_dew_point_c(air)); // no solution
    air.converged = true;
    air.lower_air_c = exactly(24.0);
    air.air_humidity = exactly(0.6);
    CHECK(*lower_dew_point_c(air) == Approx(15.763).margin(0.002));
}

TEST_CASE("The coldest place lies on walls or top, and none of them is colder")
{
    const CaseResult result = solved(furnished_box());
    const auto cold = coldest_place(result);
    REQUIRE(cold);
    for (const PanelField& panel : result.panels)
        for (std::size_t cell = 0; cell < panel.closed.size(); ++cell)
            CHECK((panel.closed[cell] == 0 || panel.inside_c[cell] >= cold->inside_c));
    // A patch of the joint balance is the mean of its cells.
    CHECK(cold->inside_c <= result.coldest_pane_c + 0.01);
    CHECK_FALSE(coldest_place(CaseResult{}));
}

} // namespace loam::climate::test
