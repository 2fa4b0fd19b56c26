#include "core/assess/light.hpp"

#include <algorithm>
#include <cmath>

#include "core/assess/fittings.hpp"
#include "core/assess/light_remedies.hpp"
#include "core/assess/reach.hpp"
#include "core/light/ferguson.hpp"

namespace loam::assess {

namespace {

constexpr Judgement unknown{Verdict::not_known, Direction::none};

struct UvScene {
    std::vector<KnownDevice> devices; // those that give UV
    std::vector<light::UvLamp> lamps;
    light::Top top;
    std::vector<light::Standing> places;
    light::Point basking; // the animal's back under the basking lamp
    double back_m = 0.0;
};

// Under the hottest lamp; where nothing heats from above, under the UV lamp itself. On whatever stands there.
light::Point basking_point(const std::vector<KnownDevice>& all, const UvScene& scene)
{
    const KnownDevice* under = &scene.devices.front();
    double most_w = 0.0;
    for (const KnownDevice& known : all) {
        const double power_w = known.power_w ? known.power_w->likely : 0.0;
        if (is_overhead_heat(known.device.kind) && known.timed && power_w > most_w) {
            under = &known;
            most_w = power_w;
        }
    }
    light::Point point{under->device.x_m, under->device.y_m, 0.0};
    for (const light::Standing& place : scene.places) {
        const bool covers = point.x_m >= place.area.x_m && point.x_m <= place.area.x_m + place.area.length_m &&
                            point.y_m >= place.area.y_m && point.y_m <= place.area.y_m + place.area.width_m;
        point.z_m = covers ? std::max(point.z_m, place.height_m) : point.z_m;
    }
    point.z_m += scene.back_m;
    return point;
}

std::optional<UvScene> scene_of(const Context& context, const Housed& housed, Notes& notes)
{
    UvScene scene;
    const auto all = equipment_of(context, housed, notes);
    for (const KnownDevice& known : all) {
        if (known.traits != nullptr && known.traits->emits_uv) {
            scene.devices.push_back(known);
            scene.lamps.push_back(as_lamp(context, housed, notes, known));
        }
    }
    if (scene.lamps.empty()) {
        return std::nullopt;
    }
    scene.top = as_top(context, housed, notes);
    scene.places = standing_places(context, housed, notes);
    const auto bodies = largest_bodies(context, housed, notes);
    scene.back_m = bodies ? bodies->highest_back_m : 0.0;
    scene.basking = basking_point(all, scene);
    return scene;
}

// Why a lamp's part is not known, as label `reason`.
std::string reason_of(const light::UvLamp& lamp, double distance_m)
{
    if (lamp.table.empty()) {
        return "no-table";
    }
    const auto [nearest, farthest] =
        std::minmax_element(lamp.table.begin(), lamp.table.end(),
                            [](const auto& left, const auto& right) { return left.distance_m < right.distance_m; });
    if (distance_m < nearest->distance_m) {
        return "too-near";
    }
    if (distance_m > farthest->distance_m) {
        return "too-far";
    }
    return lamp.decay_per_1000_h ? "off-beam" : "age-unknown";
}

void report_unknown(const Housed& housed, const UvScene& scene, Notes& notes)
{
    for (std::size_t i = 0; i < scene.lamps.size(); ++i) {
        const light::UvLamp& lamp = scene.lamps[i];
        if (light::uvi_from(lamp, scene.top, scene.basking)) {
            continue;
        }
        const double distance_m = slant_m(lamp, scene.basking);
        Finding& finding =
            report(notes, "uv.not-known", unknown, housed.at(lamp.id),
                   because("rule.uv-measured-only", {{"distance", distance_m, "m"}},
                           {{"lamp", lamp.id}, {"reason", reason_of(lamp, distance_m)}},
                           {"Common practice, no source: a lamp's watts say nothing of its UV", Confidence::practice}));
        if (lamp.table.empty()) {
            finding.remedy = state(pointer_to(housed, scene.devices[i], "uvi_table"));
        } else {
            finding.remedy = remedy("remedy.measure-uv", {{"distance", distance_m, "m"}}, {{"device", lamp.id}});
        }
    }
}

// The most that the zone's animals were met in is for the basking place. A shade dweller of zone 1 needs none.
Target uv_target(const light::FergusonZone& zone)
{
    Target target = zone.maximum_uvi;
    if (zone.number == 1) {
        target.min = zone.average_uvi.min;
    }
    return target;
}

Judgement judge_species(const Housed& housed, const UvScene* scene, const catalog::Species& species, UvStage& stage)
{
    const auto zone = light::ferguson_zone(static_cast<int>(species.uv->ferguson_zone));
    if (!zone) {
        return unknown;
    }
    const Target target = uv_target(*zone);
    stage.result.ferguson_zone = zone->number;
    stage.result.target_uvi = target;
    if (!stage.result.uvi_at_basking) {
        return unknown;
    }
    const Range uvi = *stage.result.uvi_at_basking;
    const Judgement judgement = judge(uvi, target);
    if (scene == nullptr) {
        if (judgement.verdict == Verdict::falls_short) {
            report(stage.notes, "uv.no-lamp", judgement, housed.at(),
                   because("rule.uv-zone", {}, {{"species", species.id}}, species.uv->source))
                .remedy = remedy("remedy.add-uv-lamp", {{"zone", static_cast<double>(zone->number), "1"}});
        }
        return judgement;
    }
    if (judgement.verdict == Verdict::fits) {
        return judgement;
    }
    const light::UvLamp& lamp = scene->lamps.front();
    std::vector<Input> inputs = inputs_of(uvi, target, judgement, "1");
    inputs.push_back({"distance", slant_m(lamp, scene->basking), "m"});
    Finding& finding =
        report(stage.notes, "uv.level", judgement, housed.at(lamp.id),
               because("rule.uv-zone", inputs, {{"lamp", lamp.id}, {"species", species.id}}, target.source));
    finding.remedy = uv_level_remedy({scene->lamps, scene->top, scene->basking}, uvi, target, judgement);
    return judgement;
}

// The greatest index that the zones' authors met anywhere (zone 4) is the limit for every animal, at the nearest it
// can come to the lamp.
void judge_nearest(const Housed& housed, const UvScene& scene, const catalog::Species& species, Notes& notes)
{
    const auto strongest = light::ferguson_zone(4);
    if (!strongest || !strongest->maximum_uvi.max) {
        return;
    }
    const double limit = *strongest->maximum_uvi.max;
    for (const light::Nearest& nearest : light::nearest_to_lamps(scene.lamps, scene.top, scene.places, scene.back_m)) {
        if (nearest.uvi && nearest.uvi->high > limit) {
            std::vector<Input> inputs = inputs_over(*nearest.uvi, limit, "1");
            inputs.push_back({"distance", nearest.distance_m, "m"});
            Finding& finding =
                report(notes, "danger.uv-too-strong", {Verdict::danger, Direction::above}, housed.at(nearest.lamp),
                       because("rule.uv-zone", inputs, {{"lamp", nearest.lamp}, {"species", species.id}},
                               strongest->maximum_uvi.source));
            finding.remedy = raised_above(scene.lamps, nearest, limit);
        }
    }
}

void judge_shade(const Housed& housed, const UvScene& scene, Notes& notes)
{
    constexpr double dark_uvi = 0.1; // a tenth of the least index that a meter tells apart from none, by practice
    std::vector<light::Patch> roofs;
    for (const plan::Fitting& fitting : housed.enclosure.fittings) {
        if (is_hide(fitting.kind)) {
            roofs.push_back({fitting.x_m, fitting.y_m, fitting.length_m, fitting.width_m});
        }
    }
    const plan::Shell& shell = housed.enclosure.shell;
    const double back_m = scene.places.front().height_m + scene.back_m;
    const light::FloorShare dark =
        light::dark_share(scene.lamps, scene.top, {0.0, 0.0, shell.length_m, shell.width_m}, back_m, roofs, dark_uvi);
    if (dark.at_most <= 0.0) {
        report(notes, "uv.no-shade", {Verdict::falls_short, Direction::above}, housed.at(),
               because("rule.uv-zone", {{"likely", dark.at_most, "1"}}, {{"lamp", scene.lamps.front().id}}))
            .remedy = remedy("remedy.add-hides", {{"count", 1.0, "1"}});
    }
}

void judge_lamps(const Housed& housed, const UvScene& scene, UvStage& stage)
{
    for (const KnownDevice& known : scene.devices) {
        if (known.above_top && scene.top.kind == light::TopKind::pane) {
            report(stage.notes, "uv.blocked", {Verdict::falls_short, Direction::below}, housed.at(known.device.id),
                   because("rule.uv-through-pane", {}, {{"lamp", known.device.id}, {"cover", "top"}},
                           {"Ropp 1993, by a lighting database: soda-lime glass passes only above about 330 nm",
                            Confidence::secondary}))
                .remedy = remedy("remedy.lamp-under-pane", {}, {{"device", known.device.id}});
        }
        if (known.device.kind == plan::DeviceKind::uv_compact) {
            report(stage.notes, "uv.compact-caution", {Verdict::fits, Direction::none}, housed.at(known.device.id),
                   because("rule.uv-measured-only", {}, {{"lamp", known.device.id}},
                           {"UV Guide UK special report 2007: eye inflammation under compact lamps",
                            Confidence::confirmed}));
        }
        if (known.traits->life_hours) {
            stage.result.replace_after_hours = known.traits->life_hours->likely;
        }
    }
}

} // namespace

UvStage assess_uv(const Context& context, const Housed& housed)
{
    UvStage stage;
    const auto scene = scene_of(context, housed, stage.notes);
    if (scene) {
        stage.result.uvi_at_basking = light::uvi_at(scene->lamps, scene->top, scene->basking);
        judge_lamps(housed, *scene, stage);
        judge_shade(housed, *scene, stage.notes);
    } else {
        stage.result.uvi_at_basking = exactly(0.0); // no lamp gives any
    }
    bool first = true;
    for (const catalog::Species* species : species_in(housed.enclosure, context.catalog)) {
        if (!species->uv) {
            continue;
        }
        if (first && scene && !stage.result.uvi_at_basking) {
            report_unknown(housed, *scene, stage.notes);
        }
        const Judgement judgement = judge_species(housed, scene ? &*scene : nullptr, *species, stage);
        stage.result.judgement = first ? judgement : worse(stage.result.judgement, judgement);
        stage.result.needed = true;
        first = false;
        if (scene) {
            judge_nearest(housed, *scene, *species, stage.notes);
        }
    }
    if (scene && !stage.result.needed) {
        std::vector<Input> inputs;
        if (stage.result.uvi_at_basking) {
            inputs.push_back({"likely", stage.result.uvi_at_basking->likely, "1"});
        }
        report(stage.notes, "uv.not-needed", {Verdict::fits, Direction::none}, housed.at(scene->lamps.front().id),
               because("rule.uv-zone", inputs, {{"lamp", scene->lamps.front().id}}));
    }
    return stage;
}

} // namespace loam::assess
