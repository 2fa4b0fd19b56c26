#include <algorithm>

#include "core/assess/climate_parts.hpp"

namespace loam::assess {

namespace {

// Water the keeper states stands for the damp bed; a bed under a lamp never holds more than that.
void set_water(const Housed& housed, Notes& notes, std::size_t index, const catalog::Material& material,
               climate::BedLayer& layer)
{
    const plan::SubstrateLayer& given = housed.enclosure.substrate[index];
    const auto damp =
        given_or(notes, given.water_fraction, housed.pointer("/substrate/" + std::to_string(index) + "/water_fraction"),
                 "1", material.water_fraction_damp->range(), material.water_fraction_damp->source);
    layer.water_damp = *damp;
    const Range dry = material.water_fraction_dry->range();
    layer.water_dry = {std::min(dry.low, damp->low), std::min(dry.likely, damp->likely),
                       std::min(dry.high, damp->high)};
}

} // namespace

std::optional<NotComputable> fill_bed(const Context& context, const Housed& housed, Notes& notes, climate::Box& box)
{
    for (std::size_t i = 0; i < housed.enclosure.substrate.size(); ++i) {
        const plan::SubstrateLayer& given = housed.enclosure.substrate[i];
        const catalog::Material* material = context.catalog.find_material(given.material);
        if (material == nullptr) {
            return NotComputable{"material-not-known", given.material};
        }
        if (!material->solar_absorptance || !material->surface_wetness || !material->water_fraction_damp ||
            !material->water_fraction_dry) {
            return NotComputable{"material-incomplete", given.material};
        }
        climate::BedLayer layer;
        layer.material = given.material;
        layer.depth_left_m = given.depth_m;
        layer.depth_right_m = given.depth_at_right_m.value_or(given.depth_m);
        layer.conductivity_dry_w_mk = material->conductivity_w_mk.range();
        layer.conductivity_per_water_w_mk =
            material->conductivity_per_water_w_mk ? material->conductivity_per_water_w_mk->range() : exactly(0.0);
        layer.heat_capacity_dry_j_m3k = material->density_kg_m3.likely * material->specific_heat_j_kgk.likely;
        layer.emissivity = material->emissivity.range();
        layer.lamp_absorptance = material->solar_absorptance->range();
        layer.wetness = material->surface_wetness->range();
        set_water(housed, notes, i, *material, layer);
        box.bed.push_back(layer);
    }
    return std::nullopt;
}

} // namespace loam::assess
