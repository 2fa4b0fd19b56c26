// Days, the warming up and drills in words. The courses are made by hand, so that what is said of them is known.
#include "tests/app/invented_course.hpp"
#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/words/courses.hpp"
#include "app/words/sentences.hpp"

using namespace loam;
using namespace loam::words;

namespace {

const plan::Plan& no_plan()
{
    static const plan::Plan plan;
    return plan;
}

const catalog::Catalog& one_species()
{
    static const catalog::Catalog catalog = [] {
        catalog::Catalog made;
        catalog::Species& species = made.species.emplace_back();
        species.id = "invented-species";
        species.common_name = "invented lizard";
        return made;
    }();
    return catalog;
}

Speaker speaker(UnitSystem units = UnitSystem::metric)
{
    return Speaker(Formatter(units), no_plan(), one_species());
}

} // namespace

TEST_CASE("A day is told by its lowest in the dark, its highest, its humidity and what it draws")
{
    assess::CourseResult day = invented_course("winter");
    day.course.points[1].humidity = 0.7;
    day.course.points[3].humidity = 0.4;
    for (const std::size_t other : {0U, 2U, 4U}) {
        day.course.points[other].humidity = 0.5;
    }
    day.course.misted_h = {0.0, 6.0};
    const QStringList said = course_sentences(day, speaker());
    REQUIRE(said.size() == 5);
    CHECK(said[0] == "Lowest while the lamps are off: cool side 18–20 °C (likely 19), warm side 22–26 °C "
                     "(likely 24).");
    CHECK(said[1] == "Highest: basking spot 38–45 °C (likely 41), warm side 29–33 °C (likely 31), cool "
                     "side 25–27 °C (likely 26).");
    CHECK(said[2] ==
          "Humidity at ground level on the cool side, likely: lowest 40% after 18 h, highest 70% after 6 h.");
    CHECK(said[3] == "Misted at: 0 h, 6 h.");
    CHECK(said[4] == "All devices together draw 1.50 kWh on such a day.");
    CHECK(course_sentences(invented_course("winter"), speaker(UnitSystem::us))[0].contains(
        "66.2")); // 19 °C, by definition
}

TEST_CASE("A day that does not repeat itself, and a course that breaks off, say so")
{
    assess::CourseResult restless = invented_course("winter");
    restless.course.unrest_k = 0.6;
    CHECK(course_sentences(restless, speaker()).filter("does not come to repeat itself").size() == 1);
    assess::CourseResult broken = invented_course("power-cut");
    broken.course.complete = false;
    CHECK(course_sentences(broken, speaker()).last() == "It breaks off after 24 h: what follows is not known.");
    assess::CourseResult unsolved = invented_course("winter");
    unsolved.course.points.clear();
    CHECK(course_sentences(unsolved, speaker()) ==
          QStringList("Not known: the balance of heat found no solution over these hours."));
}

TEST_CASE("What is lit is lit through the step that ends so")
{
    CHECK(lit_hours(invented_course("winter").course) == std::vector<Hours>{{0.0, 12.0}});
    climate::Course two;
    two.points = {invented_point(0, true, 20), invented_point(2, true, 20), invented_point(4, false, 20),
                  invented_point(6, true, 20)};
    CHECK(lit_hours(two) == std::vector<Hours>{{0.0, 2.0}, {4.0, 6.0}});
    CHECK(lit_hours({}).empty());
}

TEST_CASE("A reading has settled once it stays within 1 K of its end, and not where that comes late")
{
    climate::Course course;
    for (const double hour : {0.0, 2.0, 4.0, 6.0, 8.0}) {
        course.points.push_back(invented_point(hour, true, hour < 4.0 ? 20.0 + hour : 24.0)); // 20, 22, 24, 24, 24
    }
    CHECK(*settled_h(course, &climate::CoursePoint::cool_c) == Approx(3.0)); // passes 23 half way from 2 h to 4 h
    for (climate::CoursePoint& each : course.points) {
        each.cool_c = 20.0 + 2.0 * each.hour; // still rises
    }
    CHECK_FALSE(settled_h(course, &climate::CoursePoint::cool_c).has_value());
    CHECK(*settled_h(course, &climate::CoursePoint::room_c) == 0.0);
}

TEST_CASE("The time to a limit is told by its earliest and its likely hour, or that it does not come")
{
    const auto said = [](std::optional<double> earliest_h, std::optional<double> likely_h, Direction direction) {
        return limit_sentence({.species = "invented-species",
                               .direction = direction,
                               .limit_c = 10.0,
                               .earliest_h = earliest_h,
                               .likely_h = likely_h,
                               .source = {}},
                              24.0, speaker());
    };
    CHECK(said(5.0, 8.0, Direction::below) ==
          "Invented lizard: even the warmest place may be under 10 °C, where it comes to harm, after 5 h at the "
          "earliest; likely after 8 h.");
    CHECK(said(5.0, {}, Direction::above) ==
          "Invented lizard: even the coolest place may be over 10 °C, where it comes to harm, after 5 h at the "
          "earliest; likely not within these 24 h.");
    CHECK(said({}, {}, Direction::below).contains("stays above 10 °C"));
    CHECK(said(0.0, 0.0, Direction::above).contains("from the beginning; likely so from the beginning."));
}

TEST_CASE("Every course that is computed has a name and, where something failed, advice")
{
    for (const char* id : {"winter", "summer"}) {
        CHECK(course_kind(id) == CourseKind::day);
        CHECK(course_name(id) != QString::fromLatin1(id));
        CHECK(course_advice(id).isEmpty());
    }
    CHECK(course_kind("warm-up") == CourseKind::warm_up);
    for (const char* id : {"power-cut", "lamp-out", "mat-stuck-on", "heat-wave", "covers-off"}) {
        INFO(id);
        CHECK(course_kind(id) == CourseKind::drill);
        CHECK(course_name(id) != QString::fromLatin1(id));
        CHECK(course_advice(id).size() > 60);
    }
    // Where an animal's health is at stake the last word is a vet's.
    for (const char* id : {"power-cut", "lamp-out", "mat-stuck-on", "heat-wave"}) {
        CHECK(course_advice(id).contains(" vet"));
    }
}

TEST_CASE("A drill is told by its hottest and coldest places and when they are so")
{
    const QStringList said = course_sentences(invented_course("lamp-out"), speaker());
    REQUIRE(said.size() == 4); // it is misted evenly, so at no time in particular
    CHECK(said[0] == "Hottest surface, likely: 46 °C after 12 h. Hottest when digging: 32 °C after 12 h.");
    CHECK(said[1] == "Coldest floor, likely: 17 °C after 24 h.");
    CHECK(said[3] == "All devices together draw 1.50 kWh in these 24 h.");
    assess::CourseResult cooling = invented_course("power-cut");
    cooling.course.points.erase(cooling.course.points.begin(), cooling.course.points.begin() + 2);
    cooling.course.points.front().hour = 0.0;
    CHECK(course_sentences(cooling, speaker())[0].startsWith("Hottest surface, likely: 46 °C at the beginning."));
}

TEST_CASE("Limits that are not reached are told at once, one that is by itself")
{
    assess::CourseResult result = invented_course("heat-wave");
    const auto limit = [](Direction direction, double limit_c, std::optional<double> earliest_h) {
        return assess::TimeToLimit{.species = "invented-species",
                                   .direction = direction,
                                   .limit_c = limit_c,
                                   .earliest_h = earliest_h,
                                   .likely_h = {},
                                   .source = {}};
    };
    result.limits = {limit(Direction::above, 38.0, {}), limit(Direction::below, 4.0, {})};
    QStringList said = course_sentences(result, speaker()).filter("Invented lizard");
    CHECK(said == QStringList("Invented lizard: some place stays between 4 °C and 38 °C, outside which it comes to "
                              "harm, through these 24 h."));
    result.limits[0].earliest_h = 7.0;
    said = course_sentences(result, speaker()).filter("Invented lizard");
    REQUIRE(said.size() == 2);
    CHECK(said[0].contains("after 7 h at the earliest"));
}
