#include "core/assess/light_findings.hpp"

#include <algorithm>

#include "core/assess/light_remedies.hpp"
#include "core/assess/uv_heights.hpp"
#include "core/light/ferguson.hpp"

namespace loam::assess {

namespace {

constexpr Judgement unknown{Verdict::not_known, Direction::none};

// A zone is no surer than the sheet that puts the species in it.
Source source_of(const UvResult& result)
{
    return {result.target_uvi.source.citation + ". Zone of the species: " + result.sheet.citation,
            std::max(result.target_uvi.source.confidence, result.sheet.confidence)};
}

Source measured_only()
{
    return {"Common practice, no source: a lamp's watts say nothing of its UV", Confidence::practice};
}

std::string standing_name(const std::string& standing)
{
    return standing.empty() ? "bed" : standing;
}

// Why a lamp's part is not known at a place, as label `reason`.
std::string reason_of(const light::UvLamp& lamp, const light::Top& top, const light::Point& place)
{
    const light::PreparedLamp ready(lamp, top);
    const auto reach = ready.readings().reach();
    if (!reach) {
        return "no-table";
    }
    const double distance_m = slant_m(lamp, place);
    if (distance_m < reach->nearest_m) {
        return "too-near";
    }
    if (!lamp.decay_per_1000_h && lamp.burnt_h.high > 0.0) {
        return "age-unknown";
    }
    return distance_m > reach->farthest_m ? "too-far" : "off-beam";
}

Remedy measure(const Housed& housed, const UvScene& scene, std::size_t lamp, double distance_m)
{
    if (scene.lamps[lamp].table.empty()) {
        return state(pointer_to(housed, scene.devices[lamp], "uvi_table"));
    }
    return remedy("remedy.measure-uv", {{"distance", distance_m, "m"}}, {{"device", scene.lamps[lamp].id}});
}

void report_unknown(const Housed& housed, const UvScene& scene, const UvResult& result, Notes& notes)
{
    for (std::size_t i = 0; i < scene.lamps.size(); ++i) {
        const light::UvLamp& lamp = scene.lamps[i];
        // The basking place is not known where any part of it isn't.
        const auto place = std::find_if(scene.basking.begin(), scene.basking.end(), [&](const light::Point& back) {
            return !light::uvi_from(lamp, scene.top, back);
        });
        if (result.uvi_at_basking || place == scene.basking.end()) {
            continue;
        }
        const double distance_m = slant_m(lamp, *place);
        report(notes, "uv.not-known", unknown, housed.at(lamp.id),
               because("rule.uv-measured-only", {{"distance", distance_m, "m"}},
                       {{"lamp", lamp.id}, {"reason", reason_of(lamp, scene.top, *place)}}, measured_only()))
            .remedy = measure(housed, scene, i, distance_m);
    }
}

void report_level(const Context& context, const Housed& housed, const UvScene& scene, UvStage& stage)
{
    const UvResult& result = stage.result;
    if (!result.needed || !result.uvi_at_basking || result.judgement.verdict == Verdict::fits) {
        return;
    }
    const std::size_t main = main_lamp(scene, result.basking.back);
    const light::UvLamp& lamp = scene.lamps[main];
    std::vector<Input> inputs = inputs_of(*result.uvi_at_basking, result.target_uvi, result.judgement, "1");
    inputs.push_back({"distance", slant_m(lamp, result.basking.back), "m"});
    report(stage.notes, "uv.level", result.judgement, housed.at(lamp.id),
           because("rule.uv-zone", inputs, {{"lamp", lamp.id}, {"species", result.species}}, source_of(result)))
        .remedy = uv_level_remedy(context, housed, scene, {main, result, result.judgement});
}

// What it can climb to may be stronger than where it basks.
void report_elsewhere(const Housed& housed, const UvScene& scene, UvStage& stage)
{
    const UvResult& result = stage.result;
    if (!result.needed || !result.strongest || !result.target_uvi.max ||
        result.judgement.direction == Direction::above) {
        return;
    }
    const Target at_most{std::nullopt, result.target_uvi.max, result.target_uvi.source};
    const Judgement judgement = judge(*result.strongest->uvi, at_most);
    if (judgement.verdict == Verdict::fits) {
        return;
    }
    const light::UvLamp& lamp = scene.lamps[main_lamp(scene, result.strongest->back)];
    Finding& finding = report(stage.notes, "uv.strong-elsewhere", judgement, housed.at(lamp.id),
                              because("rule.uv-zone", inputs_of(*result.strongest->uvi, at_most, judgement, "1"),
                                      {{"lamp", lamp.id},
                                       {"species", result.species},
                                       {"standing_on", standing_name(result.strongest->standing)}},
                                      source_of(result)));
    if (!result.strongest->standing.empty()) {
        finding.remedy = remedy("remedy.move-perch", {}, {{"fitting", result.strongest->standing}});
    }
}

// The limit for every animal, at the nearest that it can come to each lamp; and what is not known there.
void report_nearest(const Housed& housed, const UvScene& scene, UvStage& stage)
{
    const UvResult& result = stage.result;
    for (std::size_t i = 0; i < result.lamps.size(); ++i) {
        const UvLampResult& lamp = result.lamps[i];
        const std::string standing = standing_name(lamp.nearest.standing);
        if (lamp.nearest.uvi && lamp.nearest.uvi->high > greatest_uvi()) {
            std::vector<Input> inputs = inputs_over(*lamp.nearest.uvi, greatest_uvi(), "1");
            inputs.push_back({"distance", lamp.nearest_m, "m"});
            report(stage.notes, "danger.uv-too-strong", {Verdict::danger, Direction::above}, housed.at(lamp.id),
                   because("rule.uv-zone", inputs, {{"lamp", lamp.id}, {"species", result.species}},
                           light::ferguson_zone(4)->maximum_uvi.source))
                .remedy = raised_above(housed, scene, i, greatest_uvi());
        }
        const bool too_near = lamp.reach && lamp.nearest_m < lamp.reach->nearest_m;
        if (!lamp.nearest.uvi && too_near && result.uvi_at_basking) {
            report(stage.notes, "uv.nearest-not-known", unknown, housed.at(lamp.id),
                   because("rule.uv-measured-only", {{"distance", lamp.nearest_m, "m"}},
                           {{"lamp", lamp.id}, {"standing_on", standing}}, measured_only()))
                .remedy = measure(housed, scene, i, lamp.nearest_m);
        }
    }
}

// Every animal needs a place of its own size without UV.
void report_shade(const Housed& housed, const UvScene& scene, UvStage& stage)
{
    const plan::Shell& shell = housed.enclosure.shell;
    const double floor_m2 = shell.length_m * shell.width_m;
    const double needed = scene.body_m * scene.body_m / floor_m2;
    const light::FloorShare& dark = *stage.result.dark;
    if (dark.surely >= needed && dark.surely > 0.0) {
        return;
    }
    const bool short_of_it = dark.at_most < needed || dark.at_most <= 0.0;
    const Judgement judgement{short_of_it ? Verdict::falls_short : Verdict::tight, Direction::above};
    report(
        stage.notes, "uv.no-shade", judgement, housed.at(),
        because("rule.uv-zone", {{"likely", short_of_it ? dark.at_most : dark.surely, "1"}},
                {{"lamp", scene.lamps.front().id}},
                {"Baines et al. 2016, J Zoo Aquar Res 4(1):42-63: always a retreat without UV", Confidence::secondary}))
        .remedy = remedy("remedy.add-hides", {{"count", 1.0, "1"}});
}

void report_lamps(const Housed& housed, const UvScene& scene, Notes& notes)
{
    for (const KnownDevice& known : scene.devices) {
        if (known.above_top && scene.top.kind == light::TopKind::pane) {
            report(notes, "uv.blocked", {Verdict::falls_short, Direction::below}, housed.at(known.device.id),
                   because("rule.uv-through-pane", {}, {{"lamp", known.device.id}, {"cover", "top"}},
                           {"Ropp 1993, by a lighting database: soda-lime glass passes only above about 330 nm",
                            Confidence::secondary}))
                .remedy = remedy("remedy.lamp-under-pane", {}, {{"device", known.device.id}});
        }
        if (known.device.kind == plan::DeviceKind::uv_compact) {
            report(notes, "uv.compact-caution", {Verdict::fits, Direction::none}, housed.at(known.device.id),
                   because("rule.uv-measured-only", {}, {{"lamp", known.device.id}},
                           {"UV Guide UK special report 2007: eye inflammation under compact lamps",
                            Confidence::confirmed}));
        }
    }
}

void report_readings(const Housed& housed, const UvScene& scene, Notes& notes)
{
    for (const KnownDevice& known : scene.devices) {
        const plan::Device& device = known.device;
        if (device.uvi_age_hours && device.age_hours && *device.uvi_age_hours > *device.age_hours) {
            report(notes, "uv.read-after-age", unknown, housed.at(device.id),
                   because("rule.stated-by-keeper",
                           {{"burnt_when_read", *device.uvi_age_hours, "h"}, {"burnt", *device.age_hours, "h"}},
                           {{"lamp", device.id}}))
                .remedy = state(pointer_to(housed, known, "age_hours"));
        }
    }
}

void report_not_needed(const Housed& housed, const UvScene& scene, UvStage& stage)
{
    std::vector<Input> inputs;
    if (stage.result.uvi_at_basking) {
        inputs.push_back({"likely", stage.result.uvi_at_basking->likely, "1"});
    }
    report(stage.notes, "uv.not-needed", {Verdict::fits, Direction::none}, housed.at(scene.lamps.front().id),
           because("rule.uv-zone", inputs, {{"lamp", scene.lamps.front().id}}));
}

} // namespace

double greatest_uvi()
{
    return *light::ferguson_zone(4)->maximum_uvi.max;
}

void report_uv(const Context& context, const Housed& housed, const UvScene& scene, UvStage& stage)
{
    report_lamps(housed, scene, stage.notes);
    report_readings(housed, scene, stage.notes);
    report_nearest(housed, scene, stage);
    report_shade(housed, scene, stage);
    if (!stage.result.needed) {
        report_not_needed(housed, scene, stage);
        return;
    }
    report_unknown(housed, scene, stage.result, stage.notes);
    report_level(context, housed, scene, stage);
    report_elsewhere(housed, scene, stage);
}

void report_no_lamp(const Housed& housed, UvStage& stage)
{
    const UvResult& result = stage.result;
    if (result.needed && result.judgement.verdict == Verdict::falls_short) {
        report(stage.notes, "uv.no-lamp", result.judgement, housed.at(),
               because("rule.uv-zone", {}, {{"species", result.species}}, source_of(result)))
            .remedy = remedy("remedy.add-uv-lamp", {{"zone", static_cast<double>(result.ferguson_zone), "1"}});
    }
}

} // namespace loam::assess
