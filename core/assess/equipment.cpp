#include "core/assess/equipment.hpp"

#include "core/plan/names.hpp"

namespace loam::assess {

namespace {

std::optional<Range> power_of(const Context& context, Notes& notes, const KnownDevice& known, std::string pointer)
{
    if (known.device.power_w) {
        const auto tolerance = spread_of(context.catalog, "device.power_tolerance");
        const double stated_w = *known.device.power_w;
        return tolerance ? Range{stated_w * tolerance->low, stated_w * tolerance->likely, stated_w * tolerance->high}
                         : exactly(stated_w);
    }
    const bool has_usual = known.traits != nullptr && known.traits->power_w.has_value();
    return given_or(notes, std::nullopt, std::move(pointer), "W",
                    has_usual ? std::optional(known.traits->power_w->range()) : std::nullopt,
                    has_usual ? known.traits->power_w->source : Source{});
}

// Lights and misters are taken as timed and heat as always on where the plan is silent: what keepers do. The finding
// device.supply-not-stated says so.
bool is_timed(const Context& context, const plan::Device& device)
{
    if (device.supply) {
        return *device.supply == plan::Supply::timed;
    }
    return lights(context.catalog, device.kind) || device.kind == plan::DeviceKind::mister;
}

void place_overhead(const Context& context, const Housed& housed, Notes& notes, KnownDevice& known)
{
    const plan::Shell& shell = housed.enclosure.shell;
    if (known.device.height_above_base_m) {
        known.z_m = *known.device.height_above_base_m;
    } else {
        const catalog::Assumption* above = context.catalog.find_assumption("device.height_above_top_m");
        const double over_m = above ? above->spread.likely : 0.0;
        const std::optional<Range> bracket =
            above ? std::optional(Range{shell.height_m + above->spread.low, shell.height_m + above->spread.likely,
                                        shell.height_m + above->spread.high})
                  : std::nullopt;
        assume(notes, {pointer_to(housed, known, "height_above_base_m"), "m", bracket,
                       above ? above->spread.source : Source{}});
        known.z_m = shell.height_m + over_m;
    }
    known.above_top = known.z_m >= shell.height_m;
}

power::LoadKind load_kind(catalog::LoadKind kind)
{
    switch (kind) {
    case catalog::LoadKind::resistive:
        return power::LoadKind::resistive;
    case catalog::LoadKind::ballast:
        return power::LoadKind::ballast;
    case catalog::LoadKind::electronic:
        return power::LoadKind::electronic;
    case catalog::LoadKind::motor:
        return power::LoadKind::motor;
    }
    return power::LoadKind::electronic;
}

} // namespace

power::ControlledLoad controlled_load(const KnownDevice& known)
{
    const bool mercury_vapour = known.device.kind == plan::DeviceKind::mercury_vapour_lamp;
    if (known.traits == nullptr) {
        return {power::LoadKind::electronic, false, is_lamp(known.device.kind), mercury_vapour};
    }
    return {load_kind(known.traits->load), known.traits->dimmable, known.traits->emits_light, mercury_vapour};
}

std::string pointer_to(const Housed& housed, const KnownDevice& device, std::string_view key)
{
    return housed.pointer("/equipment/" + std::to_string(device.index) + "/" + std::string(key));
}

std::vector<KnownDevice> equipment_of(const Context& context, const Housed& housed, Notes& notes)
{
    std::vector<KnownDevice> all;
    for (std::size_t i = 0; i < housed.enclosure.equipment.size(); ++i) {
        const plan::Device& device = housed.enclosure.equipment[i];
        KnownDevice known{.device = device,
                          .traits = context.catalog.find_device(plan::name_of(device.kind)),
                          .index = i,
                          .power_w = std::nullopt,
                          .place = device.place.value_or(plan::Place::overhead)};
        known.power_w = power_of(context, notes, known, pointer_to(housed, known, "power_w"));
        known.timed = is_timed(context, device);
        const bool hangs = device.kind != plan::DeviceKind::heat_mat && device.kind != plan::DeviceKind::mister &&
                           device.kind != plan::DeviceKind::fan;
        if (hangs) {
            place_overhead(context, housed, notes, known);
        }
        all.push_back(known);
    }
    return all;
}

} // namespace loam::assess
