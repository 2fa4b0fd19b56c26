// Suggestions for the first example's animals, room and box. What they promise is checked with core/assess, which knows
// nothing of how they were found.
#include "core/suggest/suggest.hpp"

#include <algorithm>

#include "core/assess/what_if.hpp"
#include "core/plan/file.hpp"
#include "core/suggest/deeper_bed.hpp"
#include "core/suggest/quick_climate.hpp"
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

// The example's own bands leave next to no room in its dry room; these are wider by what a less particular animal
// bears.
const catalog::Catalog& less_particular()
{
    static const catalog::Catalog made = [] {
        catalog::Catalog catalog = shipped_catalog();
        for (catalog::Species& species : catalog.species) {
            if (species.id == "terrapene-ornata") {
                *species.temperatures.warm_c->min -= 1.0;
                *species.temperatures.cool_c->max += 1.0;
                *species.humidity.adult->min -= 0.05;
                *species.humidity.adult->max += 0.1;
            }
        }
        return catalog;
    }();
    return made;
}

const suggest::Result& for_first_setup()
{
    static const suggest::Result result = *suggest::suggest(example("first-setup"), less_particular(), day, {});
    return result;
}

// A January room without heating, in which no lamp over a mesh keeps a turtle warm at night as by day.
plan::Plan in_a_cold_room()
{
    plan::Plan plan = example("first-setup");
    plan.site.room.winter.day_c = 8.0;
    plan.site.room.winter.night_c = 4.0;
    return plan;
}

} // namespace

TEST_CASE("what is suggested meets every target by an assessment of its own")
{
    const suggest::Result& result = for_first_setup();
    REQUIRE_FALSE(result.suggestions.empty());
    for (const suggest::Suggestion& one : result.suggestions) {
        REQUIRE(one.meets);
        const assess::Assessment again = whole(one.plan, less_particular());
        CHECK(suggest::obstacles(again).empty());
        for (const assess::HeatCase& heat : again.enclosures.at(0).heat) {
            for (const assess::ZoneResult& zone :
                 heat.id == "heat-wave" ? std::vector<assess::ZoneResult>{} : heat.zones) {
                INFO(heat.id << " zone " << static_cast<int>(zone.zone));
                CHECK(zone.temperature_c.likely >= zone.target_c.min.value_or(-100.0));
                CHECK(zone.temperature_c.likely <= zone.target_c.max.value_or(100.0));
            }
        }
    }
}

TEST_CASE("each merit is named once, and its suggestion is best in it")
{
    const suggest::Result& result = for_first_setup();
    for (const suggest::Merit merit : suggest::merits) {
        const auto has_it = [merit](const suggest::Suggestion& one) {
            return std::find(one.merits.begin(), one.merits.end(), merit) != one.merits.end();
        };
        REQUIRE(std::count_if(result.suggestions.begin(), result.suggestions.end(), has_it) == 1);
        const auto best = std::find_if(result.suggestions.begin(), result.suggestions.end(), has_it);
        for (const suggest::Suggestion& other : result.suggestions) {
            if (merit == suggest::Merit::cheapest_to_buy) {
                CHECK(best->assessment.costs.startup.typical.minor_units() <=
                      other.assessment.costs.startup.typical.minor_units());
            } else if (merit == suggest::Merit::cheapest_over_years) {
                CHECK(best->assessment.costs.net_present_cost->minor_units() <=
                      other.assessment.costs.net_present_cost->minor_units());
            } else {
                CHECK(best->margin_k >= other.margin_k);
            }
        }
    }
}

TEST_CASE("a suggestion is a plan that opens, with the animals, the bed, the fittings and the UV lamp as they were")
{
    const plan::Plan before = example("first-setup");
    for (const suggest::Suggestion& one : for_first_setup().suggestions) {
        CHECK(plan::problems_of(one.plan).empty());
        const plan::Enclosure& now = one.plan.enclosures.at(0);
        const plan::Enclosure& then = before.enclosures.at(0);
        CHECK(now.animals == then.animals);
        CHECK(now.substrate == then.substrate);
        CHECK(now.fittings == then.fittings);
        CHECK(one.plan.site == before.site);
        const auto tubes = [](const plan::Enclosure& enclosure) {
            return std::count_if(enclosure.equipment.begin(), enclosure.equipment.end(),
                                 [](const plan::Device& device) { return device.kind == plan::DeviceKind::uv_tube; });
        };
        CHECK(tubes(now) == tubes(then));
    }
}

TEST_CASE("the same plan gets the same suggestions")
{
    const suggest::Result again = *suggest::suggest(example("first-setup"), less_particular(), day, {});
    REQUIRE(again.suggestions.size() == for_first_setup().suggestions.size());
    for (std::size_t i = 0; i < again.suggestions.size(); ++i) {
        CHECK(plan::write(again.suggestions[i].plan) == plan::write(for_first_setup().suggestions[i].plan));
    }
}

TEST_CASE("where nothing does it, the nearest are shown with what stands in the way, and none is called good")
{
    const suggest::Result result = *suggest::suggest(in_a_cold_room(), shipped_catalog(), day, {});
    REQUIRE_FALSE(result.suggestions.empty());
    for (const suggest::Suggestion& one : result.suggestions) {
        CHECK_FALSE(one.meets);
        CHECK_FALSE(suggest::obstacles(one.assessment).empty());
    }
}

TEST_CASE("a box whose climate can't be computed is left as it is, and is never called good")
{
    plan::Plan plan = example("first-setup");
    plan.enclosures.at(0).shell.walls = "straw";
    const suggest::Result result = *suggest::suggest(plan, less_particular(), day, {});
    CHECK(result.unknown == std::vector<std::string>{plan.enclosures[0].id});
    for (const suggest::Suggestion& one : result.suggestions) {
        CHECK_FALSE(one.meets);
    }
}

TEST_CASE("UV that is not known is no target met")
{
    plan::Plan plan = example("first-setup");
    for (plan::Device& device : plan.enclosures.at(0).equipment) {
        device.uvi_table.clear();
    }
    const suggest::Result result = *suggest::suggest(plan, less_particular(), day, {});
    REQUIRE_FALSE(result.suggestions.empty());
    CHECK_FALSE(result.suggestions.front().meets);
}

TEST_CASE("what may be spent at the start is kept to, and where it is too little the least is told")
{
    const suggest::Suggestion& cheapest = for_first_setup().suggestions.front();
    const Money least = cheapest.assessment.costs.startup.typical;
    const auto most = [&](std::int64_t minor) {
        return suggest::Asked{.keep_box = false, .most_to_begin = Money(minor, least.currency())};
    };
    const plan::Plan plan = example("first-setup");
    const auto enough = *suggest::suggest(plan, less_particular(), day, most(least.minor_units()));
    CHECK_FALSE(enough.least_to_begin);
    REQUIRE_FALSE(enough.suggestions.empty());
    for (const suggest::Suggestion& one : enough.suggestions) {
        CHECK(one.assessment.costs.startup.typical.minor_units() <= least.minor_units());
    }
    const auto short_of_it = *suggest::suggest(plan, less_particular(), day, most(least.minor_units() - 1));
    REQUIRE(short_of_it.least_to_begin);
    CHECK(*short_of_it.least_to_begin == least);
}

TEST_CASE("a box that is too small is changed for the smallest usual one that is not, unless it is to be kept")
{
    plan::Plan plan = example("first-setup");
    suggest::resize(plan.enclosures.at(0), 0.6, 0.45, 0.45);
    const auto size = suggest::smallest_box(plan, shipped_catalog(), day, 0);
    REQUIRE(size);
    for (const suggest::BoxSize& smaller : suggest::box_sizes()) {
        if (smaller.length_m * smaller.width_m >= size->length_m * size->width_m) {
            break;
        }
        plan::Plan tried = plan;
        suggest::resize(tried.enclosures[0], smaller.length_m, smaller.width_m, smaller.height_m);
        CHECK(instant(tried).enclosures[0].space.judgement.verdict == Verdict::falls_short);
    }
    const auto kept = *suggest::suggest(plan, shipped_catalog(), day, {.keep_box = true, .most_to_begin = {}});
    CHECK(kept.no_box == std::vector<std::string>{plan.enclosures[0].id});
    CHECK(kept.new_boxes.empty());
    for (const suggest::Suggestion& one : kept.suggestions) {
        CHECK(one.plan.enclosures[0].shell.length_m == 0.6);
    }
}

TEST_CASE("another size keeps what stands in the box inside it")
{
    plan::Plan plan = example("first-setup");
    plan::Enclosure& box = plan.enclosures.at(0);
    suggest::resize(box, 0.9, 0.45, 0.4);
    for (const plan::Fitting& fitting : box.fittings) {
        CHECK(fitting.x_m >= 0.0);
        CHECK(fitting.x_m + fitting.length_m <= 0.9 + 1e-9);
        CHECK(fitting.y_m + fitting.width_m <= 0.45 + 1e-9);
    }
    for (const plan::Device& device : box.equipment) {
        CHECK(device.x_m <= 0.9);
        CHECK(device.y_m <= 0.45);
    }
    CHECK(box.readings.empty());
}

TEST_CASE("what is hot keeps its distance from walls that can scorch, over a narrow box by hanging higher")
{
    plan::Plan plan = example("first-setup"); // of plywood
    suggest::resize(plan.enclosures.at(0), 0.9, 0.45, 0.45);
    suggest::Outfit outfit;
    outfit.lamp = suggest::Lamp{60.0, false};
    outfit.day = suggest::Heater{plan::DeviceKind::ceramic_heater, 60.0, 25.0};
    const auto dressed = suggest::dressed(plan, shipped_catalog(), 0, outfit);
    REQUIRE(dressed);
    for (const Finding& finding : with_code(instant(*dressed), "danger.shell-near-lamp")) {
        INFO(finding.where);
        CHECK(finding.where == "d2"); // the tube that was there before keeps its place
    }
}

TEST_CASE("a mat lies on the warm side's wall, above the bed and inside the box, on all the time")
{
    plan::Plan plan = example("first-setup");
    for (const double power_w : {4.0, 20.0, 60.0}) {
        for (const double height_m : {0.35, 0.45, 0.9}) {
            suggest::resize(plan.enclosures.at(0), 0.9, 0.45, height_m);
            suggest::Outfit outfit;
            outfit.day = suggest::Heater{plan::DeviceKind::heat_mat, power_w, 27.0};
            const auto dressed = suggest::dressed(plan, shipped_catalog(), 0, outfit);
            REQUIRE(dressed);
            CHECK(plan::problems_of(*dressed).empty());
            const plan::Device& mat = dressed->enclosures[0].equipment.back();
            REQUIRE(mat.kind == plan::DeviceKind::heat_mat);
            CHECK(mat.place == plan::Place::left_wall);
            CHECK(mat.supply == plan::Supply::always_on);
            CHECK(*mat.z_m >= suggest::bed_depth_m(dressed->enclosures[0]));
            CHECK(*mat.z_m + *mat.width_m <= height_m);
            CHECK(mat.y_m >= 0.0);
            CHECK(mat.y_m + *mat.length_m <= 0.45);
            CHECK(with_code(instant(*dressed), "danger.mat-under-bed").empty());
            CHECK(with_code(instant(*dressed), "control.mat-on-timer").empty());
        }
    }
}

TEST_CASE("a shallow bed is filled up to what its animals dig, and a deep one stays")
{
    plan::Plan plan = example("first-setup");
    CHECK_FALSE(suggest::deepen_bed(plan, shipped_catalog(), 0));
    for (plan::SubstrateLayer& layer : plan.enclosures.at(0).substrate) {
        layer.depth_m *= 0.5;
    }
    REQUIRE_FALSE(with_code(instant(plan), "substrate.too-shallow").empty());
    REQUIRE(suggest::deepen_bed(plan, shipped_catalog(), 0));
    CHECK(with_code(instant(plan), "substrate.too-shallow").empty());
    CHECK(plan::problems_of(plan).empty());
    plan::Plan low = plan;
    low.enclosures[0].substrate.front().depth_m = 0.01;
    low.enclosures[0].shell.height_m = 0.12;
    CHECK_FALSE(suggest::deepen_bed(low, shipped_catalog(), 0)); // the bed would fill it
}

TEST_CASE("the quick climate is within half a kelvin of the assessment's, the peak of the basking spot apart")
{
    const plan::Plan plan = example("first-setup");
    suggest::Starts starts;
    const auto quick = suggest::quick_climate(plan, shipped_catalog(), 0, {"winter-day", "summer-night"}, starts, {});
    REQUIRE(quick);
    const assess::Assessment fine = whole(plan);
    for (const climate::CaseResult& result : quick->results) {
        const assess::HeatCase& heat = heat_case(fine.enclosures.at(0), result.id);
        for (const assess::ZoneResult& zone : heat.zones) {
            if (zone.zone != assess::Zone::basking) {
                CHECK(assess::zone_reading(result, zone.zone, zone.measure).likely ==
                      Approx(zone.temperature_c.likely).margin(0.5));
            }
        }
    }
}

TEST_CASE("a stopped search gives nothing")
{
    std::stop_source source;
    source.request_stop();
    CHECK_FALSE(suggest::suggest(example("first-setup"), shipped_catalog(), day, {}, source.get_token()));
}
