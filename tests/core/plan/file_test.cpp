#include "core/plan/file.hpp"

#include <fstream>
#include <set>
#include <sstream>

#include "core/json/parse.hpp"
#include "core/plan/problem_codes.hpp"
#include "tests/catch.hpp"
#include "tests/core/plan/plan_text.hpp"

using namespace loam;
using namespace loam::plan;
using namespace loam::plan::test;

namespace {

// Members with a foreign key anywhere below, by pointer, in the order of the pointers.
void collect_foreign(const json::Node& node, const std::string& where, std::set<std::string>& found)
{
    for (std::size_t i = 0; i < node.items.size(); ++i) {
        const bool object = node.kind == json::Kind::object;
        const std::string step = object ? node.keys[i] : std::to_string(i);
        if (object && step.substr(0, 2) == "x_" && step != "x_m") {
            found.insert(where + "/" + step + " " + json::write(node.items[i]));
        } else {
            collect_foreign(node.items[i], where + "/" + step, found);
        }
    }
}

std::set<std::string> foreign_members(std::string_view text)
{
    const auto node = json::parse(text);
    REQUIRE(node.index() == 0);
    std::set<std::string> found;
    collect_foreign(std::get<json::Node>(node), "", found);
    return found;
}

} // namespace

TEST_CASE("The documented example loads, value by value")
{
    const Plan plan = loaded(good_text());
    CHECK(plan.site.latitude_deg == 47.0);
    REQUIRE(plan.site.electricity_price_per_kwh);
    CHECK(plan.site.electricity_price_per_kwh->text() == "0.180");
    CHECK(plan.site.room.winter.relative_humidity == 0.35);
    CHECK(plan.site.room.power_cut->hours == 12.0);
    CHECK(plan.site.room.sun_reaches == SunReaches::no);
    REQUIRE(plan.enclosures.size() == 1);
    const Enclosure& enclosure = plan.enclosures[0];
    CHECK(enclosure.shell.top.kind == TopKind::mesh);
    CHECK(enclosure.shell.top.covers.at(0).x_m == 0.6);
    CHECK(enclosure.animals.at(0).sex == Sex::unknown);
    CHECK(enclosure.equipment.at(0).kind == DeviceKind::flood_lamp);
    CHECK(enclosure.equipment.at(1).place == Place::back_wall);
    CHECK(enclosure.equipment.at(1).y_m == 0.0);
    CHECK(enclosure.equipment.at(1).control.probe->z_m == 0.1);
    CHECK(enclosure.readings.at(0).lamps == LampState::on);
    CHECK(plan.budget.price_level == PriceLevel::typical);
}

TEST_CASE("Saving is byte-stable, and what is saved is what was loaded")
{
    for (const char* const name : {"contract.json", "every-member.json", "version-0.json"}) {
        INFO(name);
        const Plan plan = loaded(data(name));
        const std::string text = write(plan);
        CHECK(loaded(text) == plan);
        CHECK(write(loaded(text)) == text);
        CHECK(text.back() == '\n');
    }
}

TEST_CASE("A decimal keeps its digits, trailing zeros included")
{
    CHECK(write(loaded(good_text())).find("\"electricity_price_per_kwh\": 0.180,") != std::string::npos);
    CHECK(write(loaded(data("every-member.json"))).find("0.3050") != std::string::npos);
}

TEST_CASE("Foreign members survive undamaged at every level")
{
    const std::string text = data("every-member.json");
    const auto before = foreign_members(text);
    // The file has one for every structure of the schema that may hold them.
    std::size_t structures = 0;
    const std::string published = schema();
    for (auto place = published.find("^x_"); place != std::string::npos; place = published.find("^x_", place + 1)) {
        ++structures;
    }
    CHECK(before.size() == structures);
    CHECK(foreign_members(write(loaded(text))) == before);
}

TEST_CASE("A fresh plan can be saved and opened")
{
    const Plan fresh;
    CHECK(problems_of(fresh).empty());
    CHECK(loaded(write(fresh)) == fresh);
    Plan with_box;
    with_box.enclosures.emplace_back().id = "e1";
    CHECK(problems_of(with_box).empty());
}

TEST_CASE("An edit that could not be opened again shows before it is saved")
{
    Plan plan = loaded(good_text());
    plan.enclosures[0].shell.length_m = 0.5;
    const auto problems = problems_of(plan);
    REQUIRE(problems.size() == 2);
    CHECK(problems[0].where == "/enclosures/0/shell/top/covers/0");
    CHECK(problems[1].where == "/enclosures/0/fittings/0");
}

TEST_CASE("Absent members stay absent")
{
    const Plan plan =
        loaded(R"({"format": "loamstead-plan", "version": 1, "currency": "JPY", "jurisdiction": "none"})");
    CHECK_FALSE(plan.site.latitude_deg);
    CHECK_FALSE(plan.site.room.winter.day_c);
    CHECK_FALSE(plan.budget.horizon_years);
    CHECK(plan.enclosures.empty());
    CHECK(write(plan).find("site") == std::string::npos);
}

TEST_CASE("The published schema is the program's")
{
    std::ifstream file(LOAM_SOURCE_DIR "/resources/schema/plan.schema.json", std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    CHECK(text.str() == schema());
}

TEST_CASE("A fresh id is one that no element has")
{
    Plan plan = loaded(good_text());
    CHECK(fresh_id(plan, "d") == "d3");
    CHECK(fresh_id(plan, "c") == "c2");
    CHECK(fresh_id(plan, "z") == "z1");
    plan.enclosures[0].shell.vents.emplace_back().id = "d3";
    CHECK(fresh_id(plan, "d") == "d4");
}

TEST_CASE("Codes of meaning are unique")
{
    CHECK(std::set<std::string_view>(problem::all.begin(), problem::all.end()).size() == problem::all.size());
}
