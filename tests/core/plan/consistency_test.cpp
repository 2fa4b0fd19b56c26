#include "core/plan/consistency.hpp"

#include "core/plan/problem_codes.hpp"
#include "tests/catch.hpp"
#include "tests/core/plan/plan_text.hpp"

using namespace loam;
using namespace loam::plan;
using namespace loam::plan::test;

using Lines = std::vector<std::string>;

TEST_CASE("An id that two elements share anywhere in the plan is refused")
{
    const auto problems = refused(with("\"id\": \"o1\"", "\"id\": \"c1\""));
    CHECK(problems == json::Problems{{"/owned/0/id", std::string(problem::duplicate_id), {"c1", "/site/circuits/0"}}});
    CHECK(complaints(with("\"id\": \"v1\"", "\"id\": \"e1\"")) ==
          Lines{"/enclosures/0/shell/top/covers/0/id duplicate-id"});
}

TEST_CASE("A reference to what is not there is refused")
{
    CHECK(refused(with("\"stand\": \"t1\"", "\"stand\": \"t2\"")) ==
          json::Problems{{"/enclosures/0/stand", std::string(problem::unknown_reference), {"stand", "t2"}}});
    CHECK(complaints(with("\"strip\": \"s1\"", "\"strip\": \"c1\"")) ==
          Lines{"/enclosures/0/equipment/0/strip unknown-reference"});
    CHECK(complaints(with("\"circuit\": \"c1\"", "\"circuit\": \"c9\"")) ==
          Lines{"/site/strips/0/circuit unknown-reference"});
    CHECK(complaints(with("\"circuit\": \"c1\"", "\"circuit\": \"c1\", \"fed_from\": \"s7\"")) ==
          Lines{"/site/strips/0/fed_from unknown-reference"});
}

TEST_CASE("Strips that feed each other in a ring are refused once")
{
    CHECK(complaints(with("\"circuit\": \"c1\"", "\"circuit\": \"c1\", \"fed_from\": \"s1\"")) ==
          Lines{"/site/strips/0/fed_from feeding-cycle"});
    const auto strips = [](std::string_view rest) {
        return with("\"strips\": [{\"id\": \"s1\", \"circuit\": \"c1\"",
                    "\"strips\": [" + std::string(rest) + "{\"id\": \"s1\", \"circuit\": \"c1\"");
    };
    CHECK(refused(strips(R"({"id": "s4", "circuit": "c1", "fed_from": "s2"},
                            {"id": "s2", "circuit": "c1", "fed_from": "s3"},
                            {"id": "s3", "circuit": "c1", "fed_from": "s2"}, )")) ==
          json::Problems{{"/site/strips/1/fed_from", std::string(problem::feeding_cycle), {"s2, s3"}}});
    CHECK(complaints(strips(R"({"id": "s2", "circuit": "c1", "fed_from": "s1"}, )")).empty());
}

TEST_CASE("A wall has one panel")
{
    const auto panels = [](std::string_view second) {
        return with("\"walls\": \"float-glass\"", R"("panels": [{"id": "p1", "wall": "front", "material": "acrylic"},
                    {"id": "p2", "wall": ")" + std::string(second) +
                                                      R"(", "material": "acrylic"}],
                    "walls": "float-glass")");
    };
    CHECK(complaints(panels("left")).empty());
    CHECK(refused(panels("front")) ==
          json::Problems{{"/enclosures/0/shell/panels/1/wall", std::string(problem::two_panels), {"front", "p1"}}});
}

TEST_CASE("A heat mat must say where it lies and how large it is")
{
    CHECK(complaints(with("\"place\": \"back-wall\", ", "")) ==
          Lines{"/enclosures/0/equipment/1/y_m needed-here", "/enclosures/0/equipment/1/place needed-here"});
    CHECK(refused(with("\"z_m\": 0.12, ", "")) ==
          json::Problems{{"/enclosures/0/equipment/1/z_m", std::string(problem::needed_here), {"z_m", "back-wall"}}});
    CHECK(complaints(with("\"length_m\": 0.28, \"width_m\": 0.28,", "")) ==
          Lines{"/enclosures/0/equipment/1/length_m needed-here", "/enclosures/0/equipment/1/width_m needed-here"});
}

TEST_CASE("A lamp must say both coordinates")
{
    CHECK(complaints(with("\"x_m\": 0.25, \"y_m\": 0.3, \"height", "\"height")) ==
          Lines{"/enclosures/0/equipment/0/x_m needed-here", "/enclosures/0/equipment/0/y_m needed-here"});
}

TEST_CASE("A thermostat without a setpoint is refused, a setpoint without a thermostat as well")
{
    CHECK(complaints(with("\"setpoint_c\": 28.0, ", "")) ==
          Lines{"/enclosures/0/equipment/1/control/setpoint_c needed-here"});
    CHECK(complaints(with("{\"kind\": \"none\"}", "{\"kind\": \"dimmer\", \"setpoint_c\": 30}")) ==
          Lines{"/enclosures/0/equipment/0/control/setpoint_c not-for-control"});
    CHECK(complaints(with("{\"kind\": \"none\"}", "{\"kind\": \"none\", \"level\": 0.5}")) ==
          Lines{"/enclosures/0/equipment/0/control/level not-for-control"});
    CHECK(complaints(with("{\"kind\": \"none\"}", "{\"kind\": \"dimmer\", \"level\": 0.5}")).empty());
    CHECK(complaints(with("{\"kind\": \"none\"}", "{\"kind\": \"dimmer\"}")).empty());
    CHECK(complaints(with("{\"kind\": \"none\"}", "{\"kind\": \"dimmer\", \"method\": \"pulse\"}")) ==
          Lines{"/enclosures/0/equipment/0/control/method not-for-control"});
    CHECK(complaints(with("{\"kind\": \"none\"}", "{\"kind\": \"none\", \"rating_w\": 100}")) ==
          Lines{"/enclosures/0/equipment/0/control/rating_w not-for-control"});
    CHECK(complaints(with("{\"kind\": \"none\"}", "{\"kind\": \"dimmer\", \"rating_w\": 100}")).empty());
}

TEST_CASE("A mistyped setpoint never becomes an unregulated mat: it is refused with the right name")
{
    const auto problems = refused(with("\"setpoint_c\"", "\"setpiont_c\""));
    REQUIRE_FALSE(problems.empty());
    CHECK(problems[0] ==
          json::Problem{"/enclosures/0/equipment/1/control/setpiont_c", "unknown-key", {"setpiont_c", "setpoint_c"}});
}

TEST_CASE("The distances of a UV table must rise")
{
    const auto table = [](std::string_view points) {
        return with("\"beam_deg\": 60", "\"beam_deg\": 60, \"uvi_table\": [" + std::string(points) + "]");
    };
    CHECK(complaints(table(R"({"distance_m": 0.2, "uvi": 5}, {"distance_m": 0.3, "uvi": 3})")).empty());
    CHECK(refused(table(R"({"distance_m": 0.3, "uvi": 5}, {"distance_m": 0.3, "uvi": 3})")) ==
          json::Problems{{"/enclosures/0/equipment/0/uvi_table/1/distance_m",
                          std::string(problem::distances_fall),
                          {"0.3", "0.3"}}});
}

TEST_CASE("What lies wholly outside the box is refused, what is partly outside is left to the assessment")
{
    CHECK(complaints(with("\"x_m\": 0.6, \"y_m\": 0.0", "\"x_m\": 1.2, \"y_m\": 0.0")) ==
          Lines{"/enclosures/0/shell/top/covers/0 outside-box"});
    CHECK(complaints(with("\"x_m\": 0.6, \"y_m\": 0.0", "\"x_m\": 1.1, \"y_m\": 0.5")).empty());
    CHECK(complaints(with("\"x_m\": 0.9, \"y_m\": 0.1", "\"x_m\": 0.9, \"y_m\": -0.2")) ==
          Lines{"/enclosures/0/fittings/0 outside-box"});
    CHECK(complaints(with("\"x_m\": 0.25, \"y_m\": 0.3, \"height", "\"x_m\": 1.25, \"y_m\": 0.3, \"height")) ==
          Lines{"/enclosures/0/equipment/0 outside-box"});
    CHECK(complaints(with("\"x_m\": 0.25, \"y_m\": 0.3, \"height", "\"x_m\": 1.2, \"y_m\": 0.6, \"height")).empty());
    CHECK(complaints(with("\"z_m\": 0.12", "\"z_m\": 0.5")) == Lines{"/enclosures/0/equipment/1 outside-box"});
}

// A square of side a, turned by 45 degrees about its centre, reaches a * (sqrt(2) - 1) / 2 beyond each former side
// (plane geometry): 0.0414 m for 0.2 m.
TEST_CASE("A turned fitting reaches further than an upright one")
{
    const auto at = [](std::string_view x) {
        return with("\"x_m\": 0.9, \"y_m\": 0.1, \"length_m\": 0.25, \"width_m\": 0.2",
                    "\"x_m\": " + std::string(x) +
                        ", \"y_m\": 0.1, \"length_m\": 0.2, \"width_m\": 0.2, \"rotation_deg\": 45");
    };
    CHECK(complaints(at("1.241")).empty());
    CHECK(complaints(at("1.242")) == Lines{"/enclosures/0/fittings/0 outside-box"});
}

TEST_CASE("A bed as deep as the box is high is refused")
{
    CHECK(refused(with("\"depth_m\": 0.08", "\"depth_m\": 0.5")) ==
          json::Problems{{"/enclosures/0/substrate", std::string(problem::bed_fills_box), {"0.5", "0.5"}}});
    CHECK(complaints(with("\"depth_m\": 0.08", "\"depth_m\": 0.1, \"depth_at_right_m\": 0.6")) ==
          Lines{"/enclosures/0/substrate bed-fills-box"});
    CHECK(complaints(with("\"depth_m\": 0.08", "\"depth_m\": 0.49")).empty());
}

TEST_CASE("Lights that go on and off at the same time and unknown currencies are refused")
{
    CHECK(complaints(with("\"off\": \"19:00\"", "\"off\": \"07:00\"")) ==
          Lines{"/enclosures/0/photoperiod/off no-day-or-night"});
    CHECK(complaints(with("\"off\": \"19:00\"", "\"off\": \"01:00\"")).empty());
    CHECK(complaints(with("\"USD\"", "\"QQQ\"")) == Lines{"/currency unknown-currency"});
}

TEST_CASE("Problems of form and of meaning are told together, but nothing that only follows from another")
{
    CHECK(complaints(with("\"length_m\": 1.2", "\"length_m\": \"1.2\"")) ==
          Lines{"/enclosures/0/shell/length_m wrong-type"});
    CHECK(complaints(with("\"id\": \"s1\"", "\"id\": \"s 1\"")) == Lines{"/site/strips/0/id pattern"});
    std::string text = with("\"stand\": \"t1\"", "\"stand\": \"t2\"");
    text.replace(text.find("\"latitude_deg\": 47.0"), 20, "\"latitude_deg\": 147 ");
    CHECK(complaints(text) == Lines{"/site/latitude_deg above-maximum", "/enclosures/0/stand unknown-reference"});
}
