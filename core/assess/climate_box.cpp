#include "core/assess/climate_box.hpp"

#include "core/assess/climate_parts.hpp"

namespace loam::assess {

std::variant<ClimateBox, NotComputable> climate_box(const Context& context, const Housed& housed, Notes& notes)
{
    ClimateBox result;
    if (auto missing = fill_shell(context, housed, notes, result.box)) {
        return *missing;
    }
    if (auto missing = fill_bed(context, housed, notes, result.box)) {
        return *missing;
    }
    if (auto missing = fill_equipment(context, housed, notes, result)) {
        return *missing;
    }
    if (auto missing = fill_contents(context, housed, notes, result.box)) {
        return *missing;
    }
    for (const plan::Fitting& fitting : housed.enclosure.fittings) {
        if (fitting.kind == plan::FittingKind::rock || fitting.kind == plan::FittingKind::log) {
            result.solid_perches.push_back(fitting.id);
        }
    }
    if (auto missing = fill_coefficients(context.catalog, result.box)) {
        return *missing;
    }
    return result;
}

std::optional<NotComputable> fill_coefficients(const catalog::Catalog& catalog, climate::Box& box)
{
    const auto film = spread_of(catalog, "model.film_factor");
    const auto exchange = spread_of(catalog, "model.exchange_factor");
    const auto leak = spread_of(catalog, "model.leak_air_changes_per_h");
    const auto evaporation = spread_of(catalog, "model.evaporation_factor");
    const auto mixing = spread_of(catalog, "model.mixing_w_m2k");
    const auto mesh_return = spread_of(catalog, "model.mesh_return");
    const auto error = spread_of(catalog, "model.error_k");
    if (!film || !exchange || !leak || !evaporation || !mixing || !mesh_return || !error) {
        return NotComputable{"assumption-missing", "model"};
    }
    box.film_factor = *film;
    box.exchange_factor = *exchange;
    box.leak_air_changes_per_h = *leak;
    box.evaporation_factor = *evaporation;
    box.mixing_w_m2k = *mixing;
    box.mesh_return = *mesh_return;
    box.model_error_k = error->likely;
    return std::nullopt;
}

} // namespace loam::assess
