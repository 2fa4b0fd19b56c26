#include "tests/catch.hpp"

#include <fstream>
#include <map>
#include <sstream>
#include <string>

#include "core/space/usable_floor.hpp"

using namespace loam::space;

namespace {

struct Case {
    std::vector<Footprint> footprints;
    double union_m2 = 0.0;
};

std::map<int, Case> reference_cases()
{
    std::ifstream file(std::string(LOAM_SOURCE_DIR) + "/tests/reference/floor_unions.csv");
    std::string line;
    std::getline(file, line); // column heads
    std::map<int, Case> cases;
    while (std::getline(file, line)) {
        std::istringstream fields(line);
        int number = 0;
        char comma = 0;
        Footprint one;
        double union_m2 = 0.0;
        fields >> number >> comma >> one.x_m >> comma >> one.y_m >> comma >> one.length_m >> comma >> one.width_m >>
            comma >> one.rotation_deg >> comma >> union_m2;
        REQUIRE(fields);
        cases[number].footprints.push_back(one);
        cases[number].union_m2 = union_m2;
    }
    return cases;
}

} // namespace

TEST_CASE("Unions of turned fittings have the area that an independent geometry library finds")
{
    // Shapely 1.8.5 (GEOS), tests/reference/floor_unions.py; its area is printed to 1e-12 m2.
    const std::map<int, Case> cases = reference_cases();
    REQUIRE(cases.size() == 40);
    for (const auto& [number, one] : cases) {
        CAPTURE(number);
        CHECK(covered_area_m2({1.2, 0.6}, one.footprints) == Approx(one.union_m2).margin(1e-10).epsilon(0.0));
    }
}
