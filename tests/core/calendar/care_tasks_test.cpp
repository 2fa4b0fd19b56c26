// Tasks of the shipped examples with the shipped guidance: each follows from a figure of the plan, of a sheet or of the
// assessment that is named beside the check.
#include "core/calendar/care_tasks.hpp"

#include <algorithm>
#include <set>

#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

#include "core/assess/codes.hpp"
#include "core/calendar/task_codes.hpp"

using namespace loam;
using namespace loam::calendar;
using namespace loam::test;
using namespace std::chrono_literals;
using std::chrono::days;
using std::chrono::sys_days;

namespace {

constexpr sys_days start = test::day; // the assessments of setup.hpp are of this day

std::vector<Task> tasks_of(const plan::Plan& plan, sys_days from = start)
{
    return care_tasks(plan, instant(plan), shipped_catalog(), from);
}

const Task* find(const std::vector<Task>& tasks, std::string_view id)
{
    const auto found = std::find_if(tasks.begin(), tasks.end(), [&](const Task& one) { return one.id == id; });
    return found == tasks.end() ? nullptr : &*found;
}

Task only(const std::vector<Task>& tasks, std::string_view id)
{
    INFO(id);
    const Task* found = find(tasks, id);
    REQUIRE(found != nullptr);
    return *found;
}

Range amount(const Task& task, std::string_view name)
{
    for (const Amount& one : task.amounts) {
        if (one.name == name) {
            return one.range;
        }
    }
    FAIL("no amount " << name);
    return {};
}

plan::Plan resting_turtle()
{
    plan::Plan plan = example("first-setup");
    plan::Animal& animal = plan.enclosures[0].animals[0];
    animal.condition = plan::Condition::well;
    animal.mass_kg = 0.36;
    animal.cool_season = plan::CoolSeason{.begins = "2025-12-10", .cold_weeks = 8, .vet_checked = {}, .extras = {}};
    return plan;
}

} // namespace

TEST_CASE("Every task of the examples has a listed code, an id of its own and a place in the plan")
{
    for (const char* name : {"first-setup", "upgrade", "club-template"}) {
        const plan::Plan plan = example(name);
        std::set<std::string> ids;
        for (const Task& one : tasks_of(plan)) {
            INFO(name << ": " << one.id);
            CHECK(ids.insert(one.id).second);
            CHECK(assess::is_listed(task_codes, one.code));
            CHECK(one.first >= start);
            CHECK((one.basis != Basis::guidance || !one.source.citation.empty()));
            CHECK_FALSE((one.basis == Basis::not_known && one.recurrence.frequency != Frequency::once));
        }
        CHECK(ids.size() > 15);
    }
}

TEST_CASE("Water is changed as often as the plan states, else as the sheet asks")
{
    plan::Plan plan = example("first-setup");
    plan.enclosures[0].moisture.water_changes_per_day = 2.0;
    const Task stated = only(tasks_of(plan), "change-water/e1");
    CHECK(stated.recurrence == Recurrence{.frequency = Frequency::daily, .times_a_day = 2});
    CHECK(stated.basis == Basis::stated);
    CHECK(amount(stated, "water") == instant(plan).enclosures[0].water.bowl_l);

    // The corn snake's sheet: 0.28 a day, two to three times a week, common practice; between them the bowl is topped
    // up.
    const auto snake = tasks_of(example("club-template"));
    const Task by_sheet = only(snake, "change-water/e1");
    CHECK(by_sheet.recurrence.on.size() == 2);
    CHECK(by_sheet.basis == Basis::guidance);
    CHECK_FALSE(by_sheet.source.citation.empty());
    CHECK(only(snake, "top-up-bowls/e1").recurrence.frequency == Frequency::daily);
}

TEST_CASE("Whole prey is fed as often as a month's number gives, other food as the keeper decides")
{
    // The sheet: 2 to 4 mice a month, so one in 30.44 / 3 = 10.1 days.
    const Task prey = only(tasks_of(example("club-template")), "feed-prey/a1");
    CHECK(prey.recurrence == Recurrence{.frequency = Frequency::daily, .every = 10});
    REQUIRE(prey.interval_d);
    CHECK(prey.interval_d->low == Approx(7.61).epsilon(0.001));
    CHECK(prey.interval_d->high == Approx(15.22).epsilon(0.001));

    const auto turtle = tasks_of(example("first-setup"));
    CHECK(only(turtle, "feed-how-often/a1").basis == Basis::not_known);
    CHECK(amount(only(turtle, "stock-food/a1"), "monthly") == Range{1.0, 1.25, 1.5}); // kg, the sheet
}

TEST_CASE("Replacements stand on the day on which the assessment has them due")
{
    const plan::Plan plan = example("first-setup");
    const assess::Assessment assessment = instant(plan);
    REQUIRE_FALSE(assessment.costs.replacements.empty());
    const auto now = care_tasks(plan, assessment, shipped_catalog(), start);
    const auto later = care_tasks(plan, assessment, shipped_catalog(), start + days(40));
    const auto earlier = care_tasks(plan, assessment, shipped_catalog(), start - days(40));
    const assess::Replacement& first = assessment.costs.replacements.front();
    const std::string id = "replace/" + first.where + "/" + first.item + "/1";
    CHECK(only(now, id).first == sys_days(first.due));
    CHECK(only(later, id).first == sys_days(first.due) + days(40)); // it wears from the first day of care
    CHECK(only(earlier, id).first == sys_days(first.due));          // ages are those of the assessment's day
    CHECK(std::count_if(now.begin(), now.end(), [](const Task& one) { return one.kind == Kind::replacement; }) ==
          static_cast<std::ptrdiff_t>(assessment.costs.replacements.size()));
}

TEST_CASE("Ids stay the same when the plan is edited")
{
    plan::Plan plan = example("first-setup");
    std::set<std::string> before;
    for (const Task& one : tasks_of(plan)) {
        before.insert(one.id);
    }
    plan.enclosures[0].name = "Renamed";
    plan.enclosures[0].moisture.water_changes_per_day = 2.0;
    plan.enclosures[0].animals[0].length_m = 0.12;
    for (const Task& one : tasks_of(plan)) {
        INFO(one.id);
        CHECK(before.count(one.id) == 1);
    }
}

TEST_CASE("A rest in the cold has its milestones, and feeding and weighing stop meanwhile")
{
    const plan::Plan plan = resting_turtle();
    const assess::Assessment assessment = instant(plan);
    REQUIRE(assessment.enclosures[0].cool_seasons[0].rest);
    const season::Rest rest = *assessment.enclosures[0].cool_seasons[0].rest;
    const auto tasks = care_tasks(plan, assessment, shipped_catalog(), start);
    CHECK(only(tasks, "rest-begins/a1").first == sys_days(2025y / 12 / 10));
    CHECK(only(tasks, "rest-over/a1").first == season::ends(rest));
    CHECK(only(tasks, "rest-vet/a1").first == start); // eight weeks before it is past: at once
    const auto& weigh_ins = assessment.enclosures[0].cool_seasons[0].weigh_ins;
    for (std::size_t i = 0; i < weigh_ins.size(); ++i) {
        const Task weigh = only(tasks, "rest-weigh/a1/" + std::to_string(i + 1));
        CHECK(weigh.first == weigh_ins[i].on);
        CHECK(amount(weigh, "stop_below").likely == weigh_ins[i].stop_below_kg);
    }
    for (const Task& one : tasks) {
        if (one.code != "stock-food" && one.code != "weigh") {
            continue;
        }
        for (const sys_days day : days_of(one, start, start + days(400))) {
            INFO(one.id);
            CHECK_FALSE((day >= rest.begins && day < season::ends(rest)));
        }
    }
    CHECK(find(tasks, "weigh/a1/after-rest") != nullptr);
}

TEST_CASE("A rest that is refused leaves no trace in the calendar")
{
    plan::Plan plan = resting_turtle();
    plan.enclosures[0].animals[0].condition = plan::Condition::ill;
    for (const Task& one : tasks_of(plan)) {
        INFO(one.id);
        CHECK(one.kind != Kind::season);
    }
}

TEST_CASE("Without guidance a task says that nobody knows how often, and is not left out")
{
    catalog::Catalog bare = shipped_catalog();
    bare.assumptions.clear();
    const plan::Plan plan = example("first-setup");
    const auto tasks = care_tasks(plan, instant(plan), bare, start);
    CHECK(only(tasks, "spot-clean/e1").basis == Basis::not_known);
    CHECK(only(tasks, "weigh/a1").basis == Basis::not_known);
}

TEST_CASE("Lamps that follow the sky are set on the first day and where their times change")
{
    plan::Plan plan = example("first-setup");
    plan.enclosures[0].photoperiod->through_year = plan::LightYear::with_the_sky;
    const auto year = instant(plan).enclosures[0].light_year;
    std::string on;
    std::string off;
    for (const Task& one : tasks_of(plan)) {
        if (one.code != "set-timer") {
            continue;
        }
        INFO(one.id);
        if (one.id == "set-timer/e1/first") { // 25 November: what has held since the 16th
            const auto day = std::find_if(year.begin(), year.end(),
                                          [](const assess::LightDay& d) { return d.month == 11 && d.day == 16; });
            CHECK(one.labels[0].text == day->by_the_sky->on);
            CHECK(one.recurrence.frequency == Frequency::once);
            continue;
        }
        CHECK(one.recurrence.frequency == Frequency::yearly);
        CHECK((one.labels[0].text != on || one.labels[1].text != off));
        on = one.labels[0].text;
        off = one.labels[1].text;
    }
    CHECK_FALSE(on.empty());
}

TEST_CASE("A filter's cartridge is changed no later than it is good for")
{
    plan::Plan plan = example("first-setup");
    plan.site.water.source = plan::WaterSource::filtered;
    CHECK(only(tasks_of(plan), "change-cartridge").basis == Basis::not_known); // no maker's figure
    for (const double good_for_l : {40.0, 300.0, 1500.0, 5000.0}) {
        plan.site.water.cartridge_l = good_for_l;
        const Task change = only(tasks_of(plan), "change-cartridge");
        REQUIRE(change.interval_d);
        const auto next = next_after(change.recurrence, change.first);
        REQUIRE(next);
        const auto between = static_cast<double>((*next - change.first).count());
        INFO(good_for_l << " l, " << between << " days");
        CHECK(between <= change.interval_d->likely + 1.5); // months are not all alike
        CHECK(change.first > start);
    }
}

TEST_CASE("The plan is worked out anew before its dates of replacement run out")
{
    const auto tasks = tasks_of(example("first-setup"));
    CHECK(only(tasks, "renew-plan").first == sys_days(2026y / 11 / 24)); // a year after test::day, the day before
}
