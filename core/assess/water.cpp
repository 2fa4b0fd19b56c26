#include "core/assess/water.hpp"

#include <algorithm>

#include "core/assess/fittings.hpp"
#include "core/independent.hpp"
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

} // namespace

WaterStage assess_water(const Context& context, const Housed& housed)
{
    WaterStage stage;
    water::Use use;
    const auto fullness = spread_of(context.catalog, "bowl.fill_ratio");
    double surface_m2 = 0.0;
    for (std::size_t i = 0; i < housed.enclosure.fittings.size(); ++i) {
        const plan::Fitting& fitting = housed.enclosure.fittings[i];
        const auto depth = fitting.kind == plan::FittingKind::water_bowl
                               ? bowl_water_depth(context, housed, i, stage.notes)
                               : std::nullopt;
        if (depth && fullness) {
            use.bowls.push_back({fitting.id, fitting.length_m, fitting.width_m, *depth, *fullness});
            surface_m2 += fitting.length_m * fitting.width_m;
        }
    }
    use.changes_per_day = changes_per_day(context, housed, stage.notes).value_or(exactly(0.0));
    // By the bowls' own area: the climate's evaporation is mostly the bed's, which nobody tops up with treated water.
    if (const auto evaporation = spread_of(context.catalog, "bowl.evaporation_l_m2d")) {
        use.bowl_evaporation_l_per_day = scaled(*evaporation, surface_m2);
    }
    use.misting_l_per_day =
        given_or_assumed(stage.notes, context.catalog, housed.enclosure.moisture.misting_l_per_day,
                         housed.pointer("/moisture/misting_l_per_day"), "moisture.misting_l_per_day")
            .value_or(exactly(0.0));
    use.conditioner_ml_per_l = spread_of(context.catalog, "conditioner.ml_per_l");
    for (const catalog::Species* species : species_in(housed.enclosure, context.catalog)) {
        use.misting_treated = use.misting_treated || species->group == catalog::Group::frog;
    }
    const water::Daily daily = water::daily_water(use);
    stage.result.daily_l = daily.total_l;
    stage.result.bowl_l = daily.bowls_l;
    stage.result.conditioner_ml_per_day = daily.conditioner_ml;
    stage.treated_l = daily.treated_l;
    return stage;
}

} // namespace loam::assess
