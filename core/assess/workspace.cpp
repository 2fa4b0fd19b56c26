#include <algorithm>

#include "core/assess/room_share.hpp"
#include "core/assess/stages.hpp"
#include "core/plan/measured.hpp"

namespace loam::assess {

Workspace::Workspace() : store_(std::make_unique<Store>()) {}
Workspace::~Workspace() = default;
Workspace::Workspace(Workspace&&) noexcept = default;
Workspace& Workspace::operator=(Workspace&&) noexcept = default;

namespace {

bool same_guidance(const catalog::Catalog& left, const catalog::Catalog& right)
{
    return left.species == right.species && left.rules == right.rules && left.materials == right.materials &&
           left.devices == right.devices && left.assumptions == right.assumptions;
}

// What a translation changes.
catalog::Catalog nameless(catalog::Catalog catalog)
{
    for (catalog::Species& species : catalog.species) {
        species.common_name.clear();
    }
    for (catalog::Material& material : catalog.materials) {
        material.name.clear();
    }
    for (catalog::Rule& rule : catalog.rules) {
        rule.title.clear();
    }
    return catalog;
}

} // namespace

void Workspace::Store::use(const catalog::Catalog& catalog)
{
    if (same_guidance(guidance, catalog)) {
        return;
    }
    if (same_guidance(nameless(guidance), nameless(catalog))) {
        for (Kept& one : kept) {
            one.instant_key.reset(); // a finding names its rule; the climate names nothing
        }
    } else {
        kept.clear();
    }
    guidance = catalog;
    guidance.prices = {};
}

Workspace::Store::Kept& Workspace::Store::of(const std::string& enclosure)
{
    const auto found =
        std::find_if(kept.begin(), kept.end(), [&](const Kept& one) { return one.enclosure == enclosure; });
    if (found != kept.end()) {
        return *found;
    }
    kept.emplace_back();
    kept.back().enclosure = enclosure;
    return kept.back();
}

void Workspace::Store::forget_others(const plan::Plan& plan)
{
    const auto is_gone = [&](const Kept& one) {
        return std::none_of(plan.enclosures.begin(), plan.enclosures.end(),
                            [&](const plan::Enclosure& enclosure) { return enclosure.id == one.enclosure; });
    };
    kept.erase(std::remove_if(kept.begin(), kept.end(), is_gone), kept.end());
}

ClimateKey climate_key(const Context& context, const Housed& housed)
{
    ClimateKey key{housed.enclosure, housed.index, context.plan.site.room, rise_by_boxes(context, true),
                   rise_by_boxes(context, false)};
    key.enclosure.name.clear();
    key.enclosure.replaces.reset();
    for (plan::Reading& reading : key.enclosure.readings) {
        reading.date.reset();
    }
    key.enclosure.photoperiod.reset();
    for (plan::Animal& animal : key.enclosure.animals) {
        animal.condition.reset();
        animal.cool_season.reset();
        animal.length_m = plan::length_now_m(animal);
        animal.mass_kg = plan::mass_now_kg(animal);
        animal.measurements.clear();
    }
    key.room.sun_reaches.reset();
    key.room.power_cut.reset();
    for (plan::Device& device : key.enclosure.equipment) {
        device.strip.reset();
        device.holder_rating_w.reset();
        device.control.method.reset();
        device.control.rating_w.reset();
        device.age_hours.reset(); // age and UV readings warm nothing
        device.reference_open_fraction.reset();
        device.uvi_table.clear();
        device.uvi_age_hours.reset();
    }
    return key;
}

CourseKey course_key(const Context& context, const Housed& housed)
{
    return {climate_key(context, housed), housed.enclosure.photoperiod, context.plan.site.room.power_cut};
}

plan::Plan climate_inputs(const plan::Plan& plan)
{
    plan::Plan inputs;
    inputs.site.room = plan.site.room;
    inputs.site.room.sun_reaches.reset();
    const catalog::Catalog none;
    const Context context{plan, none, {}};
    for (std::size_t i = 0; i < plan.enclosures.size(); ++i) {
        inputs.enclosures.push_back(climate_key(context, {plan.enclosures[i], i}).enclosure);
        inputs.enclosures.back().photoperiod = plan.enclosures[i].photoperiod;
    }
    return inputs;
}

InstantKey instant_key(const Context& context, const Housed& housed)
{
    InstantKey key{housed.enclosure, housed.index, context.plan.jurisdiction, context.plan.site.latitude_deg,
                   context.today};
    key.enclosure.name.clear();
    key.enclosure.readings.clear();
    return key;
}

} // namespace loam::assess
