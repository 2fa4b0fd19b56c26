// Days, drills and the warming up, and the field of the floor, as programs and people read them.
#include <QStringList>

#include "tests/app/invented_course.hpp"
#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/report/assessment_json.hpp"
#include "app/report/field_csv.hpp"
#include "app/report/text_report.hpp"

using namespace loam;

namespace {

assess::Assessment invented()
{
    assess::Assessment assessment;
    assess::EnclosureResult& enclosure = assessment.enclosures.emplace_back();
    enclosure.id = "e1";
    enclosure.days = {invented_course("winter")};
    enclosure.drills = {invented_course("power-cut")};
    enclosure.drills[0].limits.push_back({.species = "s",
                                          .direction = Direction::below,
                                          .limit_c = 10.0,
                                          .earliest_h = 5.0,
                                          .likely_h = {},
                                          .source = {.citation = "invented", .confidence = Confidence::practice}});
    enclosure.warm_up = invented_course("warm-up");
    return assessment;
}

// 0.2 m by 0.4 m in two rows of two cells.
assess::HeatCase four_cells(const std::string& id)
{
    assess::HeatCase heat;
    heat.id = id;
    heat.known = true;
    climate::FloorField& floor = heat.detail.floor;
    floor.nx = 2;
    floor.ny = 2;
    floor.dx_m = 0.1;
    floor.dy_m = 0.2;
    floor.surface_c = {30.0, 25.5, 31.0, 26.5};
    floor.ground_c = {27.0, 24.0, 27.5, 24.25};
    floor.operative_c = {28.0, 24.5, 28.5, 24.75};
    floor.humidity = {0.502, 0.6, 0.4876, 0.591};
    floor.beam_w_m2 = {150.0, 0.0, 160.0, 1.0};
    return heat;
}

const json::Node& member(const json::Node& node, std::string_view name)
{
    const json::Node* found = node.find(name);
    REQUIRE(found != nullptr);
    return *found;
}

} // namespace

TEST_CASE("JSON tells each day, drill and the warming up point by point, with its spread and its limits")
{
    const json::Node all = report::assessment_node(invented(), {}, {});
    const json::Node& enclosure = member(all, "enclosures").items.at(0);
    const json::Node& day = member(enclosure, "days").items.at(0);
    CHECK(member(day, "season").text == "winter");
    CHECK(member(day, "kwh").text == "1.5");
    CHECK(member(day, "points").items.size() == 5);
    CHECK(member(member(day, "points").items.at(1), "hour").text == "6");
    CHECK(member(member(day, "points").items.at(1), "cool_c").text == "25");
    CHECK(member(member(day, "points").items.at(1), "basking_c").text == "40");
    CHECK(member(member(member(day, "spread_k"), "basking"), "high").text == "4");
    const json::Node& drill = member(enclosure, "drills").items.at(0);
    CHECK(member(drill, "case").text == "power-cut");
    const json::Node& limit = member(drill, "limits").items.at(0);
    CHECK(member(limit, "direction").text == "below");
    CHECK(member(limit, "earliest_h").text == "5");
    CHECK(member(limit, "likely_h").kind == json::Kind::null); // not within the course: never zero
    CHECK(member(limit, "confidence").text == "practice");
    CHECK(member(member(member(enclosure, "warm_up"), "settled_h"), "cool").kind == json::Kind::null);
}

TEST_CASE("What has not been followed is an empty list in JSON, and no lines in the text")
{
    assess::Assessment none = invented();
    none.enclosures[0].days.clear();
    none.enclosures[0].drills.clear();
    none.enclosures[0].warm_up.reset();
    const json::Node all = report::assessment_node(none, {}, {});
    const json::Node& enclosure = member(all, "enclosures").items.at(0);
    CHECK(member(enclosure, "days").items.empty());
    CHECK(member(enclosure, "warm_up").kind == json::Kind::null);
    const plan::Plan plan;
    const catalog::Catalog catalog;
    const words::Speaker speaker(words::Formatter(), plan, catalog);
    CHECK_FALSE(report::text_report(none, speaker).contains("Hour by hour"));
    const QString text = report::text_report(invented(), speaker);
    CHECK(text.contains("  winter day        Lowest while the lamps are off: cool side 18–20 °C"));
    CHECK(text.contains("  power cut         Hottest surface"));
    for (const QString& line : text.split('\n')) {
        CHECK(line.size() <= 80);
    }
}

TEST_CASE("The field has a row for each cell of each known case, placed at the cell's centre")
{
    assess::Assessment assessment = invented();
    assessment.enclosures[0].heat = {four_cells("winter-day"), four_cells("heat-wave"), four_cells("summer-day")};
    assessment.enclosures[0].heat[1].known = false; // what is not known has no rows
    // A panel of two pieces, the second a mesh.
    climate::PanelField panel{.plane = climate::Plane::right,
                              .columns = 2,
                              .rows = 1,
                              .along_m = 0.2,
                              .up_m = 0.1,
                              .from_z_m = 0.1,
                              .across_m = 0.9,
                              .inside_c = {23.5, 20.0},
                              .outside_c = {22.5, 20.0},
                              .closed = {1, 0}};
    assessment.enclosures[0].heat[2].detail.panels = {panel};
    CHECK(report::field_csv(assessment) ==
          "enclosure,case,part,x_m,y_m,z_m,surface_c,outside_c,ground_c,operative_c,beam_w_m2,relative_humidity\r\n"
          "e1,winter-day,floor,0.05,0.1,,30,,27,28,150,0.502\r\n"
          "e1,winter-day,floor,0.15,0.1,,25.5,,24,24.5,0,0.6\r\n"
          "e1,winter-day,floor,0.05,0.3,,31,,27.5,28.5,160,0.4876\r\n"
          "e1,winter-day,floor,0.15,0.3,,26.5,,24.25,24.75,1,0.591\r\n"
          "e1,summer-day,floor,0.05,0.1,,30,,27,28,150,0.502\r\n"
          "e1,summer-day,floor,0.15,0.1,,25.5,,24,24.5,0,0.6\r\n"
          "e1,summer-day,floor,0.05,0.3,,31,,27.5,28.5,160,0.4876\r\n"
          "e1,summer-day,floor,0.15,0.3,,26.5,,24.25,24.75,1,0.591\r\n"
          "e1,summer-day,right,0.9,0.1,0.15,23.5,22.5,,,,\r\n");
}
