#include "core/assess/light.hpp"

#include <algorithm>
#include <cmath>

#include "core/assess/fittings.hpp"
#include "core/assess/light_findings.hpp"
#include "core/assess/uv_heights.hpp"
#include "core/light/ferguson.hpp"
#include "core/light/safe_distance.hpp"

namespace loam::assess {

namespace {

constexpr Judgement unknown{Verdict::not_known, Direction::none};

UvPlace place_at(const plan::Enclosure& enclosure, const UvScene& scene, const light::Point& back)
{
    return {back, stood_on(enclosure, scene, back.x_m, back.y_m).standing, light::uvi_at(scene.lamps, scene.top, back)};
}

void find_basking(const plan::Enclosure& enclosure, const UvScene& scene, UvResult& result)
{
    const auto strongest = strongest_of(light::prepared(scene.lamps, scene.top), scene.basking);
    result.basking = place_at(enclosure, scene, scene.basking[strongest ? strongest->place : 0]);
    if (!strongest) {
        result.basking.uvi.reset(); // somewhere on it may be more
    }
    result.uvi_at_basking = result.basking.uvi;
}

std::vector<UvLampResult> lamps_of(const UvScene& scene, const UvResult& result)
{
    std::vector<UvLampResult> lamps;
    const auto nearest = light::nearest_to_lamps(scene.lamps, scene.top, scene.places, scene.back_m);
    for (std::size_t i = 0; i < scene.lamps.size(); ++i) {
        const light::UvLamp& lamp = scene.lamps[i];
        const light::PreparedLamp ready(lamp, scene.top);
        const catalog::DeviceTraits& traits = *scene.devices[i].traits; // it gives UV, so the catalog knows it
        UvLampResult one{.id = lamp.id,
                         .uvi_at_basking = ready.uvi(result.basking.back),
                         .nearest = {nearest[i].back, nearest[i].standing, nearest[i].uvi},
                         .nearest_m = nearest[i].distance_m,
                         .safe_distance_m = light::safe_distance_m(ready, greatest_uvi()),
                         .reach = ready.readings().reach(),
                         .life_left_h = std::nullopt};
        if (traits.life_hours && scene.devices[i].device.age_hours) {
            const Range life = traits.life_hours->range();
            const double burnt_h = *scene.devices[i].device.age_hours;
            one.life_left_h = Range{std::max(0.0, life.low - burnt_h), std::max(0.0, life.likely - burnt_h),
                                    std::max(0.0, life.high - burnt_h)};
        }
        lamps.push_back(std::move(one));
    }
    return lamps;
}

// Of the map, or where a back comes nearest to a lamp, which no cell's centre need meet.
std::optional<UvPlace> strongest_place(const plan::Enclosure& enclosure, const UvScene& scene, const UvResult& result)
{
    std::optional<UvPlace> best;
    if (const auto cell = light::strongest_cell(result.map)) {
        const light::UvGrid& grid = result.map.grid;
        best = place_at(enclosure, scene, {grid.x_m(*cell), grid.y_m(*cell), result.map.back_m[*cell]});
    }
    for (const UvLampResult& lamp : result.lamps) {
        if (lamp.nearest.uvi && (!best || lamp.nearest.uvi->likely > best->uvi->likely)) {
            best = lamp.nearest;
        }
    }
    return best;
}

std::vector<light::Patch> roofs_of(const plan::Enclosure& enclosure)
{
    std::vector<light::Patch> roofs;
    for (const plan::Fitting& fitting : enclosure.fittings) {
        if (is_hide(fitting.kind)) {
            roofs.push_back({fitting.x_m, fitting.y_m, fitting.length_m, fitting.width_m});
        }
    }
    return roofs;
}

void look_around(const Housed& housed, const UvScene& scene, UvResult& result)
{
    find_basking(housed.enclosure, scene, result);
    result.map = uv_map_of(housed.enclosure, scene);
    result.dark = light::dark_share(result.map, roofs_of(housed.enclosure), dark_uvi);
    result.lamps = lamps_of(scene, result);
    result.strongest = strongest_place(housed.enclosure, scene, result);
    for (const KnownDevice& known : scene.devices) {
        if (known.traits->life_hours) {
            result.replace_after_hours = known.traits->life_hours->likely;
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

// The species that is worst off decides; of equals the first.
void take_species(const catalog::Species& species, UvResult& result)
{
    const auto zone = light::ferguson_zone(static_cast<int>(species.uv->ferguson_zone));
    const Target target = zone ? uv_target(*zone) : Target{};
    const Judgement judgement = zone && result.uvi_at_basking ? judge(*result.uvi_at_basking, target) : unknown;
    if (result.needed && gravity(judgement.verdict) <= gravity(result.judgement.verdict)) {
        return;
    }
    result.needed = true;
    result.ferguson_zone = zone ? zone->number : 0;
    result.target_uvi = target;
    result.species = species.id;
    result.sheet = species.uv->source;
    result.judgement = judgement;
}

void look_ahead(const Housed& housed, const UvScene& scene, UvResult& result)
{
    if (!result.needed) {
        return;
    }
    const light::Point& place = result.basking.back;
    result.heights = heights_for(scene, housed.enclosure.shell, main_lamp(scene, place), result.target_uvi);
    const double least = result.target_uvi.min.value_or(0.0);
    if (least > 0.0) {
        result.left = hours_above(scene, place, least, false);
        result.from_new = hours_above(scene, place, least, true);
    }
}

} // namespace

UvStage assess_uv(const Context& context, const Housed& housed)
{
    UvStage stage;
    const auto scene = uv_scene(context, housed, stage.notes);
    if (scene) {
        look_around(housed, *scene, stage.result);
    } else {
        stage.result.uvi_at_basking = exactly(0.0); // no lamp gives any
    }
    for (const catalog::Species* species : species_in(housed.enclosure, context.catalog)) {
        if (species->uv) {
            take_species(*species, stage.result);
        }
    }
    if (scene) {
        look_ahead(housed, *scene, stage.result);
        report_uv(context, housed, *scene, stage);
    } else {
        report_no_lamp(housed, stage);
    }
    return stage;
}

} // namespace loam::assess
