#include "core/plan/migrations.hpp"

#include "core/json/problem_codes.hpp"
#include "core/plan/problem_codes.hpp"
#include "tests/catch.hpp"
#include "tests/core/plan/plan_text.hpp"

using namespace loam;
using namespace loam::plan;
using namespace loam::plan::test;

using Lines = std::vector<std::string>;

TEST_CASE("A plan of version 0 becomes one of the present version without losing anything")
{
    const auto result = read(data("version-0.json"));
    REQUIRE(result.index() == 0);
    const auto& [plan, version] = std::get<Loaded>(result);
    CHECK(version == 0);
    CHECK(plan.jurisdiction == "none");
    CHECK(plan.site.room.winter.day_c == 20.5);
    CHECK(plan.site.room.summer.day_c == 20.5);
    CHECK_FALSE(plan.site.room.winter.night_c);
    CHECK(plan.extras == json::Extras{{"x_kept", json::Node::of("still here")}});
    REQUIRE(plan.enclosures.size() == 2);
    CHECK(plan.enclosures[0].substrate.at(0).depth_m == 0.07);
    CHECK(plan.enclosures[0].substrate.at(1).depth_m == 0.025);
    const Device& lamp = plan.enclosures[0].equipment.at(0);
    CHECK(lamp.kind == DeviceKind::flood_lamp);
    CHECK(lamp.power_w == 60.0);
    CHECK(lamp.height_above_base_m == 0.5);
    CHECK(lamp.control.kind == ControlKind::none);
    CHECK(lamp.extras.size() == 1);
    REQUIRE(plan.enclosures[1].equipment.size() == 2);
    CHECK(plan.enclosures[1].equipment[0].id == "d2");
    CHECK(plan.enclosures[1].equipment[1].id == "d3");
    CHECK(write(plan).find("\"version\": 1") != std::string::npos);
}

TEST_CASE("What is wrong in an old plan is told all at once, by the names of the present version")
{
    CHECK(complaints(data("version-0-with-problems.json")) ==
          Lines{"/enclosures/0/substrate/0/depth_m above-maximum", "/enclosures/0/substrate/1/depth_m missing",
                "/enclosures/0/substrate/1/depth_cm unknown-key", "/enclosures/0/equipment/0/power_w not-above",
                "/room_temp_c unknown-key"});
}

TEST_CASE("A newer version is refused with both numbers and nothing else")
{
    const auto problems = refused(with("\"version\": 1", "\"version\": 2, \"novelty\": true"));
    CHECK(problems == json::Problems{{"/version", std::string(problem::newer_version), {"2", "1"}}});
}

TEST_CASE("A version that is no whole number from zero on is refused")
{
    for (const char* const version : {"-1", "0.5", "1e300", "\"1\"", "null", "true"}) {
        INFO(version);
        const Lines lines = complaints(with("\"version\": 1", std::string("\"version\": ") + version));
        REQUIRE(lines.size() == 1);
        CHECK(lines[0].substr(0, 9) == "/version ");
    }
    CHECK(complaints(with("\"version\": 1,", "")) == Lines{"/version missing"});
    CHECK(complaints(with("\"version\": 1", "\"version\": 1.0")).empty());
}

TEST_CASE("A file of another format is refused for that alone")
{
    CHECK(refused(R"({"format": "loamstead-prices", "items": [], "title": 5})") ==
          json::Problems{
              {"/format", std::string(json::problem::wrong_constant), {"loamstead-plan", "loamstead-prices"}}});
    CHECK(complaints("{}") ==
          Lines{"/format missing", "/version missing", "/currency missing", "/jurisdiction missing"});
    CHECK(complaints("[]") == Lines{" wrong-type"});
}

TEST_CASE("An old plan of absurd types is refused, not migrated into something else")
{
    for (const char* const rest :
         {R"("room_temp_c": 20, "site": 5)", R"("room_temp_c": 20, "site": {"room": []})", R"("enclosures": {})",
          R"("enclosures": [5, {"lamps": 3, "substrate": "x"}])",
          R"("enclosures": [{"lamps": [1, null], "equipment": 4}])", R"("enclosures": [{"lamps": [{"watts": {}}, 2]}])",
          R"("room_temp_c": 20, "site": {"room": {"winter": 7}})"}) {
        INFO(rest);
        CHECK_FALSE(
            complaints(std::string(R"({"format": "loamstead-plan", "version": 0, "currency": "USD", )") + rest + "}")
                .empty());
    }
}
