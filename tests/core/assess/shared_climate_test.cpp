// Plans that share their climate share its solution, and none can tell: what a batch over a list rests on.
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

assess::Assessment until_climate(const plan::Plan& plan, const catalog::Catalog& catalog, assess::Workspace& workspace)
{
    return *assess::assess(plan, catalog, day, workspace, {}, {}, assess::Until::climate);
}

assess::Assessment alone(const plan::Plan& plan, const catalog::Catalog& catalog)
{
    assess::Workspace workspace;
    return until_climate(plan, catalog, workspace);
}

} // namespace

TEST_CASE("names, prices and belongings are no inputs of the climate; room, box and animals are")
{
    const plan::Plan plan = example("club-template");
    plan::Plan other = plan;
    other.title = "Another";
    other.currency = "EUR";
    other.site.electricity_price_per_kwh = Decimal{30, 2};
    other.owned.push_back({.id = "o9", .item = "scale", .quantity = 1.0, .age_months = {}, .extras = {}});
    other.enclosures.front().name = "Other name";
    CHECK(assess::climate_inputs(other) == assess::climate_inputs(plan));
    other.site.room.winter.day_c = 17.0;
    CHECK(assess::climate_inputs(other) != assess::climate_inputs(plan));
    other = plan;
    other.site.room.power_cut = plan::PowerCut{.hours = 5.0, .room_c = {}, .extras = {}};
    CHECK(assess::climate_inputs(other) != assess::climate_inputs(plan));
    other = plan;
    other.enclosures.front().shell.length_m += 0.1;
    CHECK(assess::climate_inputs(other) != assess::climate_inputs(plan));
    other = plan;
    other.enclosures.front().photoperiod = plan::Photoperiod{.on = "08:00", .through_year = {}, .extras = {}};
    CHECK(assess::climate_inputs(other) != assess::climate_inputs(plan));
}

TEST_CASE("a plan gets from a workspace that another has used what it would get alone, to the last bit")
{
    const plan::Plan plan = example("club-template");
    plan::Plan other = plan;
    other.title = "Another";
    other.jurisdiction = "none";
    other.owned.push_back({.id = "o9", .item = "scale", .quantity = 1.0, .age_months = {}, .extras = {}});
    catalog::Catalog translated = shipped_catalog();
    for (catalog::Rule& rule : translated.rules) {
        rule.title = "Regel: " + rule.title;
    }
    for (catalog::Species& species : translated.species) {
        species.common_name = "Art: " + species.common_name;
    }
    for (catalog::Item& item : translated.prices.items) {
        item.name = "Ware: " + item.name;
    }
    assess::Workspace workspace;
    until_climate(plan, shipped_catalog(), workspace);
    CHECK(until_climate(other, shipped_catalog(), workspace) == alone(other, shipped_catalog()));
    CHECK(until_climate(other, translated, workspace) == alone(other, translated));
    CHECK(until_climate(plan, translated, workspace) == alone(plan, translated));
    catalog::Catalog changed = shipped_catalog();
    changed.rules.pop_back();
    CHECK(until_climate(plan, changed, workspace) == alone(plan, changed));
}
