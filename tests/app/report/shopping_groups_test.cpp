// The order by place and kind.
#include <chrono>

#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/files/guidance.hpp"
#include "app/files/plan_file.hpp"
#include "app/report/shopping_groups.hpp"
#include "core/assess/assess.hpp"

using namespace loam;
using namespace std::chrono_literals;

namespace {

struct Assessed {
    catalog::Catalog catalog = files::load_guidance(QString()).catalog;
    plan::Plan plan = files::read_plan(QStringLiteral(LOAM_SOURCE_DIR "/examples/upgrade.loamstead.json")).plan;
    assess::Assessment assessment;
    Assessed()
    {
        assess::Workspace workspace;
        assessment = *assess::assess(plan, catalog, 2026y / std::chrono::November / 25d, workspace);
    }
    words::Speaker speaker() const
    {
        return words::Speaker(words::Formatter(words::UnitSystem::metric, QLocale::c()), plan, catalog);
    }
};

const Assessed& upgrade()
{
    static const Assessed assessed;
    return assessed;
}

} // namespace

TEST_CASE("Every line of the order stands in one place, and the places' totals are the lines'")
{
    const assess::Assessment& assessment = upgrade().assessment;
    const auto places = report::shopping_places(assessment, upgrade().speaker());
    REQUIRE(places.size() == 3); // two boxes and what both share
    CHECK(places[0].title == "Turtle, glass box");
    CHECK(places[1].title == "Gecko, wooden box");
    CHECK(places[2].title == "All enclosures");
    std::size_t lines = 0;
    std::int64_t grouped = 0;
    for (const report::ShoppingPlace& place : places) {
        grouped += place.total ? place.total->typical.minor_units() : 0;
        for (const report::ShoppingGroup& group : place.groups) {
            lines += group.lines.size();
            for (const assess::ShoppingLine* line : group.lines) {
                CHECK(line->category == group.category);
            }
        }
    }
    CHECK(lines == assessment.shopping.size());
    std::int64_t all = 0;
    for (const assess::ShoppingLine& line : assessment.shopping) {
        all += line.line_total ? line.line_total->typical.minor_units() : 0;
    }
    CHECK(grouped == all);
}

TEST_CASE("What belongs to no enclosure is the whole site's, and comes last")
{
    assess::Assessment assessment = upgrade().assessment;
    assessment.shopping.front().enclosures.clear();
    const auto places = report::shopping_places(assessment, upgrade().speaker());
    CHECK(places.back().title == "Whole site");
    CHECK(places.back().groups.front().lines.front() == &assessment.shopping.front());
}

TEST_CASE("The table to paste has a reason for every line, a total, and says that prices are invented")
{
    const report::PastedTable table = report::shopping_table(upgrade().assessment, upgrade().speaker());
    REQUIRE(table.rows.size() == upgrade().assessment.shopping.size() + 1);
    for (std::size_t i = 0; i + 1 < table.rows.size(); ++i) {
        REQUIRE(table.rows[i].size() == table.heads.size());
        CHECK_FALSE(table.rows[i].back().text.isEmpty());
    }
    CHECK(table.rows.back().front().text.startsWith("Total"));
    CHECK(table.notes.join(' ').contains("invented"));
}
