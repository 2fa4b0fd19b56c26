// The costs row by row. The form of a CSV file: RFC 4180 (from memory), sections 2.1 to 2.7.
#include <chrono>

#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/files/guidance.hpp"
#include "app/files/plan_file.hpp"
#include "app/report/cost_rows.hpp"
#include "core/assess/assess.hpp"

using namespace loam;
using namespace std::chrono_literals;
using report::CostPart;

namespace {

const catalog::Catalog& shipped()
{
    static const catalog::Catalog catalog = files::load_guidance(QString()).catalog;
    return catalog;
}

plan::Plan upgrade()
{
    return files::read_plan(QStringLiteral(LOAM_SOURCE_DIR "/examples/upgrade.loamstead.json")).plan;
}

// The instant stage: money needs no climate here beyond what it has at once.
assess::Costs costs_of(const plan::Plan& plan)
{
    assess::Workspace workspace;
    return assess::assess(plan, shipped(), 2026y / std::chrono::November / 25d, workspace)->costs;
}

words::Speaker speaker_of(const plan::Plan& plan)
{
    return words::Speaker(words::Formatter(words::UnitSystem::metric, QLocale::c()), plan, shipped());
}

std::int64_t typical(const std::vector<report::CostRow>& rows, CostPart part)
{
    std::int64_t sum = 0;
    for (const report::CostRow& row : rows) {
        sum += row.part == part && row.amount ? row.amount->typical.minor_units() : 0;
    }
    return sum;
}

} // namespace

TEST_CASE("The lines of a year add up to what it costs to run, and every row says how")
{
    const plan::Plan plan = upgrade();
    const assess::Costs costs = costs_of(plan);
    const auto rows = report::cost_rows(costs, speaker_of(plan));
    CHECK(typical(rows, CostPart::lines) == costs.running_per_year.typical.minor_units());
    std::size_t months = 0;
    for (const report::CostRow& row : rows) {
        INFO(row.name.toStdString());
        CHECK_FALSE(row.name.isEmpty());
        CHECK_FALSE(row.how.isEmpty());
        months += row.part == CostPart::months && !row.heading ? 1 : 0;
    }
    CHECK(months == 12);
}

TEST_CASE("Electricity without a price is not known in the rows, empty in the CSV, and missed in the notes")
{
    plan::Plan plan = upgrade();
    plan.site.electricity_price_per_kwh.reset();
    const assess::Costs costs = costs_of(plan);
    const words::Speaker speaker = speaker_of(plan);
    const QString csv = QString::fromStdString(report::costs_csv(costs, speaker));
    CHECK(csv.contains("\r\nline,Electricity,,USD,,,,"));
    CHECK(report::cost_notes(costs, speaker).join(' ').contains("electricity, whose price is not stated"));
}

TEST_CASE("Every row of the CSV has the cells of its head, and what people wrote is no formula in it")
{
    plan::Plan plan = upgrade();
    plan::OwnLine own;
    own.id = "l1";
    own.name = "=1+1";
    own.price = Decimal::parse("10.00");
    own.every_months = 2.0; // six times a year
    plan.own_lines.push_back(own);
    const QString csv = QString::fromStdString(report::costs_csv(costs_of(plan), speaker_of(plan)));
    CHECK(csv.contains("\r\nline,'=1+1,,USD,60.00,60.00,60.00,"));
    CHECK_FALSE(csv.contains(",=1+1"));
    const QStringList lines = csv.split("\r\n");
    CHECK(lines.front() == "part,name,when,currency,low,typical,high,how");
    CHECK(lines.last().isEmpty());
}

TEST_CASE("What is worked out at typical prices only has no low and no high end")
{
    const plan::Plan plan = upgrade();
    const assess::Costs costs = costs_of(plan);
    REQUIRE(costs.net_present_cost);
    const words::Speaker speaker = speaker_of(plan);
    const QString amount = QString::fromStdString(costs.net_present_cost->decimal().text());
    CHECK(QString::fromStdString(report::costs_csv(costs, speaker))
              .contains(QStringLiteral("\r\nhorizon,Net present cost,,USD,,%1,,").arg(amount)));
    assess::Assessment assessment;
    assessment.costs = costs;
    for (const auto& row : report::costs_table(assessment, speaker).rows) {
        if (row[0].text == "Net present cost") {
            CHECK((row[1].text.isEmpty() && row[3].text.isEmpty()));
            CHECK(QString(row[2].text).remove(',') == amount);
        }
    }
}
