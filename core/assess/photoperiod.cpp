#include "core/assess/photoperiod.hpp"

#include <algorithm>
#include <cmath>

#include "core/light/photoperiod.hpp"

namespace loam::assess {

namespace {

std::optional<double> planned_hours(const plan::Enclosure& enclosure)
{
    return enclosure.photoperiod ? light::hours_between(enclosure.photoperiod->on, enclosure.photoperiod->off)
                                 : std::nullopt;
}

void judge_hours(const Housed& housed, PhotoperiodStage& stage, const catalog::Species& species)
{
    const catalog::Band& band = species.photoperiod_h;
    const Target target{band.min, band.max, band.source};
    stage.result.target_h = target;
    const double hours = *stage.result.hours;
    const bool with_the_sky = housed.enclosure.photoperiod->through_year == plan::LightYear::with_the_sky;
    if (with_the_sky && band.min && band.max) { // the stated times give the middle alone; the hours are held within
        return;
    }
    const Judgement judgement = judge(exactly(hours), target);
    stage.result.judgement = worse(stage.result.judgement, judgement);
    if (judgement.verdict != Verdict::falls_short) {
        return;
    }
    std::vector<Input> inputs{{"likely", hours, "h"}};
    const double to_h = judgement.direction == Direction::below ? *band.min : *band.max;
    if (band.min) {
        inputs.push_back({"min", *band.min, "h"});
    }
    if (band.max) {
        inputs.push_back({"max", *band.max, "h"});
    }
    const bool below = judgement.direction == Direction::below;
    inputs.push_back({below ? "short_by" : "over_by", std::abs(to_h - hours), "h"});
    report(stage.notes, "photoperiod.hours", judgement, housed.at(),
           because("rule.photoperiod", inputs, {{"species", species.id}}, band.source))
        .remedy = remedy("remedy.change-times", {{"to", to_h, "h"}, {"by", to_h - hours, "h"}});
}

void judge_night(const Context& context, const Housed& housed, Notes& notes)
{
    for (const plan::Device& device : housed.enclosure.equipment) {
        if (lights(context.catalog, device.kind) && device.supply == plan::Supply::always_on) {
            report(notes, "photoperiod.light-at-night", {Verdict::falls_short, Direction::above}, housed.at(device.id),
                   because("rule.dark-at-night", {}, {{"lamp", device.id}},
                           {"Common practice, no source", Confidence::practice}))
                .remedy = remedy("remedy.timer-for-light", {}, {{"device", device.id}});
        }
    }
}

} // namespace

PhotoperiodStage assess_photoperiod(const Context& context, const Housed& housed)
{
    PhotoperiodStage stage;
    stage.result.hours = planned_hours(housed.enclosure);
    if (const auto latitude = context.plan.site.latitude_deg) {
        if (const auto year = light::year_of_light(*latitude)) {
            stage.result.day_length_midsummer_h = year->longest_h;
            stage.result.day_length_midwinter_h = year->shortest_h;
        }
    } else {
        assume(stage.notes, {"/site/latitude_deg", "deg", std::nullopt, {}});
    }
    const auto species = species_in(housed.enclosure, context.catalog);
    if (stage.result.hours) {
        stage.result.judgement = {species.empty() ? Verdict::not_known : Verdict::fits, Direction::none};
        for (const catalog::Species* one : species) {
            judge_hours(housed, stage, *one);
        }
    } else if (housed.enclosure.photoperiod) { // on and off alike: never or always
        report(stage.notes, "photoperiod.bad-times", {Verdict::not_known, Direction::none}, housed.at(),
               because("rule.photoperiod", {},
                       {{"on", housed.enclosure.photoperiod->on}, {"off", housed.enclosure.photoperiod->off}}))
            .remedy = state(housed.pointer("/photoperiod"));
    } else {
        report(stage.notes, "photoperiod.not-stated", {Verdict::not_known, Direction::none}, housed.at(),
               because("rule.photoperiod", {}, {}))
            .remedy = state(housed.pointer("/photoperiod"));
    }
    judge_night(context, housed, stage.notes);
    return stage;
}

std::optional<Range> timed_hours(const Context& context, const Housed& housed, Notes& notes)
{
    std::optional<Range> bracket;
    Source source;
    for (const catalog::Species* species : species_in(housed.enclosure, context.catalog)) {
        const catalog::Band& band = species->photoperiod_h;
        if (band.min && band.max) {
            bracket =
                bracket ? Range{std::min(bracket->low, *band.min), bracket->likely, std::max(bracket->high, *band.max)}
                        : Range{*band.min, (*band.min + *band.max) / 2.0, *band.max};
            source = band.source;
        }
    }
    return given_or(notes, planned_hours(housed.enclosure), housed.pointer("/photoperiod"), "h", bracket, source);
}

} // namespace loam::assess
