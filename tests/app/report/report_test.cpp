#include <QRegularExpression>
#include <chrono>
#include <limits>

#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/files/guidance.hpp"
#include "app/files/plan_file.hpp"
#include "app/report/assessment_json.hpp"
#include "app/report/json_values.hpp"
#include "app/report/lines.hpp"
#include "app/report/text_report.hpp"
#include "core/assess/assess.hpp"

using namespace loam;
using namespace std::chrono_literals;

namespace {

const catalog::Catalog& shipped()
{
    static const catalog::Catalog catalog = files::load_guidance(QString()).catalog;
    return catalog;
}

const plan::Plan& example()
{
    static const plan::Plan plan = files::example_plan();
    return plan;
}

const assess::Assessment& assessed()
{
    static const assess::Assessment assessment = [] {
        assess::Workspace workspace;
        return *assess::assess(example(), shipped(), 2026y / std::chrono::November / 25d, workspace);
    }();
    return assessment;
}

} // namespace

TEST_CASE("A figure in JSON has six significant digits, and is null where it is not one")
{
    CHECK(report::number(1.0 / 3.0).text == "0.333333");
    CHECK(report::number(123456.789).text == "123457");
    CHECK(report::number(-0.0).text == "0");
    CHECK(report::number(0.1).text == "0.1");
    CHECK(report::number(3.9e-12).text == "0"); // what a difference of equal sums leaves
    CHECK(report::number(std::numeric_limits<double>::quiet_NaN()).kind == json::Kind::null);
    CHECK(report::number(std::optional<double>()).kind == json::Kind::null);
}

TEST_CASE("Money in JSON is a literal with the currency's own digits")
{
    CHECK(report::money(Money(1230, *Currency::find("USD"))).text == "12.30");
    CHECK(report::money(Money(1230, *Currency::find("JPY"))).text == "1230");
    CHECK(report::money(Money(9007199254740993, *Currency::find("USD"))).text == "90071992547409.93");
    CHECK(report::money(std::optional<MoneyRange>()).kind == json::Kind::null);
}

TEST_CASE("A case whose balance did not close has no figures in JSON, and nothing it would be judged by")
{
    assess::Assessment assessment = assessed();
    REQUIRE_FALSE(assessment.enclosures.empty());
    assess::HeatCase& heat = assessment.enclosures.front().heat.front();
    REQUIRE_FALSE(heat.zones.empty());
    heat.known = false;
    const json::Node node = report::assessment_node(assessment, example(), shipped());
    const json::Node& shown = node.find("enclosures")->items.front().find("heat")->items.front();
    CHECK(shown.find("power_w")->kind == json::Kind::null);
    const json::Node& zone = shown.find("zones")->items.front();
    CHECK(zone.find("temperature_c")->kind == json::Kind::null);
    CHECK(zone.find("verdict")->text == "not known");
    CHECK(zone.find("direction")->kind == json::Kind::null);
}

TEST_CASE("Prices in another currency than the plan's are not known, never zero")
{
    assess::Assessment assessment = assessed();
    assessment.costs.prices_match_currency = false;
    const json::Node node = report::assessment_node(assessment, example(), shipped());
    CHECK(node.find("costs")->find("startup")->kind == json::Kind::null);
    CHECK(node.find("costs")->find("running_per_year")->kind == json::Kind::null);
}

TEST_CASE("The text report fits in 80 columns, in both systems")
{
    for (const words::UnitSystem system : {words::UnitSystem::metric, words::UnitSystem::us}) {
        const words::Speaker speaker(words::Formatter(system), example(), shipped());
        const QString text = report::text_report(assessed(), speaker);
        CHECK(text.count('\n') > 60);
        for (const QString& line : text.split('\n')) {
            INFO(line.toStdString());
            CHECK(line.size() <= report::terminal_columns);
            CHECK_FALSE(line.endsWith(' '));
        }
    }
}

TEST_CASE("The text report cuts no verdict short, and tells no code")
{
    const words::Speaker speaker(words::Formatter(), example(), shipped());
    const QString text = report::text_report(assessed(), speaker);
    for (const QString& line : text.split('\n')) {
        INFO(line.toStdString());
        if (line.contains("(too ") || line.contains("(may be too ")) {
            CHECK(line.contains(QRegularExpression("\\(((too)|(may be too)) [a-z ]+\\)")));
        }
    }
    CHECK_FALSE(text.contains(QRegularExpression("at (least|most) [^(\n]*…"))); // nor a target
    CHECK_FALSE(text.contains("has no words yet"));
    CHECK_FALSE(text.contains(QRegularExpression("[{}\\[\\]]")));
}

TEST_CASE("Figures are in the reader's units throughout")
{
    const words::Speaker us(words::Formatter(words::UnitSystem::us), example(), shipped());
    const QString text = report::text_report(assessed(), us);
    CHECK(text.contains("°F"));
    CHECK_FALSE(text.contains("°C"));
    CHECK(text.contains(QRegularExpression("Weight +[0-9.,–]+ lb")));
}

TEST_CASE("Long text is broken at blanks behind a margin")
{
    const QString text = report::wrapped(QStringLiteral("  - "), QString("word ").repeated(30));
    CHECK(text.startsWith("  - word"));
    for (const QString& line : text.trimmed().split('\n').mid(1)) {
        CHECK(line.startsWith("    word"));
        CHECK(line.size() <= 80);
    }
    CHECK(text.count("word") == 30);
}
