// What is said of two plans side by side, row by row.
#include <algorithm>
#include <chrono>

#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

#include "app/report/comparison_change.hpp"
#include "app/report/comparison_rows.hpp"

using namespace loam;
using words::Quantity;

namespace {

words::Formatter metric()
{
    return words::Formatter(words::UnitSystem::metric, QLocale::c());
}

const report::ChangeWords heat{QStringLiteral("warmer"), QStringLiteral("colder")};

MoneyRange usd(std::int64_t cents)
{
    const Money money(cents, *Currency::find("USD"));
    return {money, money, money};
}

assess::ZoneResult zone(const Range& temperature_c, const Judgement& judgement)
{
    assess::ZoneResult result;
    result.temperature_c = temperature_c;
    result.judgement = judgement;
    return result;
}

// A box of one warm side on a winter day, with a running cost.
assess::Assessment plan_with(const Range& warm_c, const Judgement& judgement, std::int64_t yearly_cents)
{
    assess::Assessment assessment;
    assess::EnclosureResult box;
    box.id = "e1";
    box.name = "Box";
    box.space.floor_m2 = 0.6;
    box.overall = judgement;
    assess::HeatCase& heat_case = box.heat.emplace_back();
    heat_case.id = "winter-day";
    heat_case.known = true;
    heat_case.zones.push_back(zone(warm_c, judgement));
    assessment.enclosures.push_back(box);
    assessment.costs.currency = *Currency::find("USD");
    assessment.costs.startup = usd(10000);
    assessment.costs.running_per_year = usd(yearly_cents);
    assessment.costs.electricity_per_year = usd(yearly_cents);
    assessment.complete = true;
    return assessment;
}

const report::ComparisonRow& row_called(const std::vector<report::ComparisonRow>& rows, const char* name)
{
    const auto found = std::find_if(rows.begin(), rows.end(), [name](const report::ComparisonRow& row) {
        return row.name == QLatin1String(name) && !row.heading;
    });
    REQUIRE(found != rows.end());
    return *found;
}

} // namespace

TEST_CASE("A change is told by sign and word, in the reader's own unit")
{
    const Range from{20.0, 22.0, 24.0};
    CHECK(report::change_of(from, {21.0, 23.4, 25.0}, Quantity::temperature, heat, metric()) == "+1.4 °C warmer");
    CHECK(report::change_of(from, {18.0, 19.5, 22.0}, Quantity::temperature, heat, metric()) == "−2.5 °C colder");
    const words::Formatter us(words::UnitSystem::us, QLocale::c());
    // 1.8 °F to the kelvin, by the definition of the Fahrenheit scale; a difference has no offset of 32.
    CHECK(report::change_of(from, {25.0, 27.0, 29.0}, Quantity::temperature, heat, us) == "+9 °F warmer");
    CHECK(report::change_of({0.4, 0.5, 0.6}, {0.5, 0.57, 0.7}, Quantity::fraction,
                            {QStringLiteral("damper"), QStringLiteral("drier")}, metric()) == "+7 points damper");
}

TEST_CASE("A change too small to be read is told by the ends of the range, or not at all")
{
    const Range from{20.0, 22.0, 24.0};
    CHECK(report::change_of(from, from, Quantity::temperature, heat, metric()).isEmpty());
    CHECK(report::change_of(from, {20.0001, 22.0001, 24.0001}, Quantity::temperature, heat, metric()).isEmpty());
    CHECK(report::change_of(from, {19.0, 22.0, 25.0}, Quantity::temperature, heat, metric()) == "wider range");
    CHECK(report::change_of(from, {21.0, 22.0, 23.0}, Quantity::temperature, heat, metric()) == "narrower range");
}

TEST_CASE("Verdicts go from better to worse, and one that is not known is neither")
{
    const auto of = [](Verdict from, Verdict to) { return report::change_of(Judgement{from, {}}, Judgement{to, {}}); };
    CHECK(of(Verdict::fits, Verdict::tight) == "worse");
    CHECK(of(Verdict::danger, Verdict::falls_short) == "better");
    CHECK(of(Verdict::tight, Verdict::tight).isEmpty());
    CHECK(of(Verdict::not_known, Verdict::fits) == "other verdict");
    CHECK(of(Verdict::fits, Verdict::not_known) == "other verdict");
    // Too hot instead of too cold is no better and no worse.
    CHECK(report::change_of(Judgement{Verdict::falls_short, Direction::below},
                            Judgement{Verdict::falls_short, Direction::above}) == "other verdict");
}

TEST_CASE("Two plans that are the same differ in no row, and say so in each")
{
    const assess::Assessment plan = plan_with({20.0, 22.0, 24.0}, {Verdict::fits, Direction::none}, 5000);
    const assess::Comparison comparison = assess::compare(plan, plan);
    const report::TwoPlans plans{{&plan, &plan}, comparison};
    std::vector<report::ComparisonGroup> groups = report::enclosure_groups(plans, metric());
    groups.push_back(report::costs_group(plans, metric()));
    int rows = 0;
    for (const report::ComparisonGroup& group : groups) {
        for (const report::ComparisonRow& row : group.rows) {
            if (!row.heading) {
                CHECK_FALSE(row.differs);
                CHECK(row.change == "same");
                ++rows;
            }
        }
    }
    CHECK(rows > 10);
}

TEST_CASE("A zone that is colder and judged worse says both, and money how much dearer it is")
{
    const assess::Assessment first = plan_with({20.0, 22.0, 24.0}, {Verdict::fits, Direction::none}, 5000);
    const assess::Assessment second = plan_with({17.0, 19.0, 21.0}, {Verdict::falls_short, Direction::below}, 7550);
    const assess::Comparison comparison = assess::compare(first, second);
    const report::TwoPlans plans{{&first, &second}, comparison};
    const auto box = report::enclosure_groups(plans, metric()).front();
    const report::ComparisonRow& warm = row_called(box.rows, "warm side");
    CHECK(warm.change == "−3 °C colder, worse");
    CHECK(warm.sides[0].text + " " + warm.sides[0].verdict == "20–24 °C fits");
    CHECK(warm.sides[1].in_full == "falls short (too cold)");
    CHECK(row_called(box.rows, "All in all").change == "worse");
    CHECK(row_called(box.rows, "Floor").change == "same");
    const auto costs = report::costs_group(plans, metric());
    CHECK(row_called(costs.rows, "To run, per year").change == "+25.50 USD dearer");
    CHECK(row_called(costs.rows, "To start").change == "same");
}

TEST_CASE("An enclosure that only one plan has is new or gone in every row")
{
    const assess::Assessment full = plan_with({20.0, 22.0, 24.0}, {Verdict::fits, Direction::none}, 5000);
    assess::Assessment empty = full;
    empty.enclosures.clear();
    const assess::Comparison comparison = assess::compare(empty, full);
    const report::TwoPlans plans{{&empty, &full}, comparison};
    for (const report::ComparisonRow& row : report::enclosure_groups(plans, metric()).front().rows) {
        CHECK((row.heading || row.change == "new"));
    }
    const assess::Comparison back = assess::compare(full, empty);
    const report::TwoPlans reversed{{&full, &empty}, back};
    for (const report::ComparisonRow& row : report::enclosure_groups(reversed, metric()).front().rows) {
        CHECK((row.heading || row.change == "gone"));
    }
}

TEST_CASE("The pay-back is said of the plan by the name it is called")
{
    CHECK(report::payback_sentence({assess::Payback::after, 3.0}, QStringLiteral("this plan"), metric()) ==
          "What this plan costs more to start comes back in 3 years by what it costs less to run.");
    CHECK(report::payback_sentence({assess::Payback::never, {}}, QStringLiteral("this plan"), metric())
              .startsWith("This plan costs no less"));
}
