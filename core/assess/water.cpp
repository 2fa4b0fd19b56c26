#include "core/assess/water.hpp"

#include <algorithm>

#include "core/assess/bowls.hpp"
#include "core/assess/fittings.hpp"
#include "core/assess/photoperiod.hpp"
#include "core/assess/shopping.hpp"
#include "core/assess/water_losses.hpp"
#include "core/independent.hpp"
#include "core/water/supply.hpp"
#include "core/water/water.hpp"

namespace loam::assess {

namespace {

// The most frequent that any species here asks for; else the general bracket.
std::optional<Range> changes_per_day(const Context& context, const Housed& housed, Notes& notes)
{
    std::optional<Range> bracket;
    Source source;
    for (const catalog::Species* species : species_in(housed.enclosure, context.catalog)) {
        const catalog::Band& band = species->water_changes_per_day;
        if (band.min) {
            const double max = band.max.value_or(*band.min);
            const Range own{*band.min, (*band.min + max) / 2.0, max};
            if (!bracket || own.likely > bracket->likely) {
                bracket = own;
                source = band.source;
            }
        }
    }
    const std::string pointer = housed.pointer("/moisture/water_changes_per_day");
    const auto given = housed.enclosure.moisture.water_changes_per_day;
    return bracket ? given_or(notes, given, pointer, "1/d", bracket, source)
                   : given_or_assumed(notes, context.catalog, given, pointer, "moisture.water_changes_per_day");
}

bool houses_frogs(const Context& context, const Housed& housed)
{
    const auto species = species_in(housed.enclosure, context.catalog);
    return std::any_of(species.begin(), species.end(),
                       [](const catalog::Species* one) { return one->group == catalog::Group::frog; });
}

// Where the plan is silent, tap and carbon-filtered water count as treated, since a bottle too many harms nobody;
// what reverse osmosis makes has no chlorine left.
bool is_conditioned(const plan::Water& water)
{
    return water.conditioned.value_or(water.source != plan::WaterSource::reverse_osmosis);
}

water::Use use_of(const Context& context, const Housed& housed, Notes& notes)
{
    water::Use use;
    const auto fullness = spread_of(context.catalog, "bowl.fill_ratio");
    double surface_m2 = 0.0;
    for (std::size_t i = 0; i < housed.enclosure.fittings.size(); ++i) {
        const plan::Fitting& fitting = housed.enclosure.fittings[i];
        const auto depth =
            fitting.kind == plan::FittingKind::water_bowl ? bowl_water_depth(context, housed, i, notes) : std::nullopt;
        if (depth && fullness) {
            use.bowls.push_back({fitting.id, fitting.length_m, fitting.width_m, *depth, *fullness});
            surface_m2 += fitting.length_m * fitting.width_m;
        }
    }
    use.changes_per_day = changes_per_day(context, housed, notes).value_or(exactly(0.0));
    // By the bowls' own area, until the climate is solved.
    if (const auto evaporation = spread_of(context.catalog, "bowl.evaporation_l_m2d")) {
        use.bowl_evaporation_l_per_day = scaled(*evaporation, surface_m2);
    }
    use.misting_l_per_day =
        given_or_assumed(notes, context.catalog, housed.enclosure.moisture.misting_l_per_day,
                         housed.pointer("/moisture/misting_l_per_day"), "moisture.misting_l_per_day")
            .value_or(exactly(0.0));
    if (is_conditioned(context.plan.site.water)) {
        use.conditioner_ml_per_l = spread_of(context.catalog, "conditioner.ml_per_l");
    }
    use.misting_treated = houses_frogs(context, housed);
    return use;
}

void add_price(const Context& context, WaterResult& result)
{
    constexpr double m3_a_year = 365.0 / 1000.0; // of a litre a day
    const auto& price = context.plan.site.water.price_per_m3;
    if (!price || !result.drawn_l_per_day) {
        return;
    }
    const Currency currency = currency_of(context.plan);
    const auto low = Money::of(result.drawn_l_per_day->low * m3_a_year, *price, currency);
    const auto likely = Money::of(result.drawn_l_per_day->likely * m3_a_year, *price, currency);
    const auto high = Money::of(result.drawn_l_per_day->high * m3_a_year, *price, currency);
    if (low && likely && high) {
        result.price_per_year = MoneyRange{*low, *likely, *high};
    }
}

// What is drawn from the mains, and what filters it takes; `order_l` is a day's water as it is known without the
// climate.
void add_supply(const Context& context, const Housed& housed, const Range& order_l, WaterStage& stage)
{
    const plan::Water& water = context.plan.site.water;
    stage.result.source = water.source;
    std::optional<Range> drawn_for_order_l;
    if (!water.source) {
        assume(stage.notes, {"/site/water/source", "1", std::nullopt, {}});
    } else if (*water.source == plan::WaterSource::reverse_osmosis) {
        if (const auto reject = given_or_assumed(stage.notes, context.catalog, water.reject_l_per_l,
                                                 "/site/water/reject_l_per_l", "water.reject_l_per_l")) {
            stage.result.drawn_l_per_day = water::drawn_l(stage.result.daily_l, *reject);
            drawn_for_order_l = water::drawn_l(order_l, *reject);
        }
    } else {
        stage.result.drawn_l_per_day = stage.result.daily_l;
    }
    const bool has_filter = water.source && *water.source != plan::WaterSource::tap;
    if (has_filter && water.cartridge_l) {
        // Reverse osmosis: its filters see all that is drawn.
        stage.result.cartridges_per_year =
            water::cartridges_per_year(drawn_for_order_l.value_or(order_l), *water.cartridge_l);
    } else if (has_filter) {
        assume(stage.notes, {"/site/water/cartridge_l", "l", std::nullopt, {}});
        report(stage.notes, "water.filter-life-not-known", {Verdict::not_known, Direction::none}, housed.at(),
               because("rule.water-treatment", {{"likely", stage.result.daily_l.likely, "l"}}, {}))
            .remedy = state("/site/water/cartridge_l");
    }
    if (water.conditioned == false && water.source == plan::WaterSource::tap) {
        for (const catalog::Species* species : species_in(housed.enclosure, context.catalog)) {
            if (species->group == catalog::Group::frog) {
                report(stage.notes, "water.not-treated", {Verdict::falls_short, Direction::none}, housed.at(),
                       because("rule.water-treatment", {}, {{"species", species->id}},
                               {"Common practice, no source: chlorine out of an amphibian's water always",
                                Confidence::practice}))
                    .remedy = remedy("remedy.treat-water");
            }
        }
    }
    add_price(context, stage.result);
}

// The bed's balance of water: fed by misting and by what drips back, drawn on by the air.
void report_gain(Notes& notes, const Housed& housed, const Range& lost_l_per_day, double misted_l_per_day)
{
    constexpr double rest = 0.1; // what a dry bed holds of a misting for some hours is no gain
    const double gained_l = -lost_l_per_day.likely;
    if (gained_l > rest * misted_l_per_day) {
        report(notes, "moisture.bed-gains-water", {Verdict::falls_short, Direction::above}, housed.at(),
               because("rule.bed-water", {{"by", gained_l, "l/d"}}, {}))
            .remedy = remedy("remedy.mist-less-or-air-more");
    }
}

} // namespace

WaterStage assess_water(const Context& context, const Housed& housed, const std::vector<HeatCase>& heat)
{
    WaterStage stage;
    water::Use use = use_of(context, housed, stage.notes);
    const water::Daily before = water::daily_water(use);
    stage.treated_l = before.treated_l;
    stage.order_conditioner_ml = before.conditioner_ml;
    Notes known; // what the hours hang on is said where light is judged
    if (const auto losses = water_losses(heat, timed_hours(context, housed, known), use.misting_l_per_day)) {
        use.bowl_evaporation_l_per_day = losses->bowls_l_per_day;
        stage.result.by_climate = true;
        if (!housed.enclosure.substrate.empty()) {
            stage.result.bed_l_per_day = losses->bed_l_per_day;
            report_gain(stage.notes, housed, losses->bed_l_per_day, use.misting_l_per_day.likely);
        }
    }
    const water::Daily daily = water::daily_water(use);
    stage.result.daily_l = daily.total_l;
    stage.result.bowl_l = daily.bowls_l;
    stage.result.changes_per_day = use.changes_per_day;
    stage.result.changed_l_per_day = daily.changed_l;
    stage.result.top_up_l_per_day = daily.top_up_l;
    stage.result.misted_l_per_day = daily.misted_l;
    stage.result.treated_l_per_day = use.conditioner_ml_per_l ? daily.treated_l : Range{};
    stage.result.conditioner_ml_per_day = daily.conditioner_ml;
    if (use.conditioner_ml_per_l) {
        stage.result.conditioner_ml_per_fill = product_of_independent({daily.bowls_l, *use.conditioner_ml_per_l});
    }
    stage.result.bowls = judge_bowls(context, housed, use.bowls, stage.notes);
    add_supply(context, housed, before.total_l, stage);
    return stage;
}

} // namespace loam::assess
