#include <algorithm>

#include "core/catalog/describe.hpp"
#include "core/catalog/names.hpp"
#include "core/catalog/problem_codes.hpp"
#include "core/json/number_text.hpp"

namespace loam::catalog {

static bool serves_as(const Material& material, MaterialUse use)
{
    return std::find(material.uses.begin(), material.uses.end(), use) != material.uses.end();
}

// A use needs figures that the others don't: without them what hangs on it would be unknown for every keeper.
static void refuse_unless_complete(json::Archive& archive, const Material& material)
{
    const auto require = [&](MaterialUse use, bool given, std::string_view key) {
        if (serves_as(material, use) && !given) {
            const std::string_view name = material_use_names[static_cast<std::size_t>(use)];
            archive.refuse(key, problem::missing_for_use, {std::string(key), std::string(name)});
        }
    };
    using enum MaterialUse;
    require(panel, material.default_thickness_m.has_value(), "default_thickness_m");
    require(panel, material.solar_absorptance.has_value(), "solar_absorptance");
    require(panel, material.lamp_transmittance.has_value(), "lamp_transmittance");
    require(cover, material.default_thickness_m.has_value(), "default_thickness_m");
    require(cover, material.solar_absorptance.has_value(), "solar_absorptance");
    require(cover, material.lamp_transmittance.has_value(), "lamp_transmittance");
    require(cover, material.air_permeability_share.has_value(), "air_permeability_share");
    require(underlay, material.default_thickness_m.has_value(), "default_thickness_m");
    require(substrate, material.conductivity_per_water_w_mk.has_value(), "conductivity_per_water_w_mk");
    require(substrate, material.solar_absorptance.has_value(), "solar_absorptance");
    require(substrate, material.settling.has_value(), "settling");
    require(substrate, material.water_fraction_damp.has_value(), "water_fraction_damp");
    require(substrate, material.water_fraction_dry.has_value(), "water_fraction_dry");
    require(substrate, material.surface_wetness.has_value(), "surface_wetness");
}

static void describe_substrate(json::Archive& archive, Material& material)
{
    within<limits::conductivity_w_mk>(
        archive, {"conductivity_per_water_w_mk", "Added to the dry conductivity per volume share of water, W/(m K)"},
        material.conductivity_per_water_w_mk);
    within<limits::share>(archive, {"settling", "Share of the filled depth that is lost"}, material.settling);
    within<limits::share>(archive, {"water_fraction_damp", "Volume share of water where it is kept damp"},
                          material.water_fraction_damp);
    within<limits::share>(archive, {"water_fraction_dry", "The same where it dries out under a lamp"},
                          material.water_fraction_dry);
    within<limits::share>(archive, {"surface_wetness", "Evaporating share of a damp surface"},
                          material.surface_wetness);
    within<limits::months>(archive, {"replace_months", "Months until it is changed"}, material.replace_months);
}

void describe(json::Archive& archive, Material& material)
{
    archive.text({"id", "kebab-case"}, material.id, an_id);
    archive.text({"name", "English name"}, material.name, a_name);
    archive.choices({"uses", "What it serves as"}, material.uses, material_use_names, 1);
    within<limits::conductivity_w_mk>(archive, {"conductivity_w_mk", "Thermal conductivity, dry, W/(m K)"},
                                      material.conductivity_w_mk);
    within<limits::density_kg_m3>(archive, {"density_kg_m3", "Density, dry, in the bed, kg/m3"},
                                  material.density_kg_m3);
    within<limits::specific_heat_j_kgk>(archive, {"specific_heat_j_kgk", "Specific heat, dry, J/(kg K)"},
                                        material.specific_heat_j_kgk);
    within<limits::share>(archive, {"emissivity", "Long-wave emissivity"}, material.emissivity);
    within<limits::share>(archive, {"solar_absorptance", "Share of lamp light absorbed"}, material.solar_absorptance);
    within<limits::share>(archive, {"lamp_transmittance", "Share of lamp light let through as sold"},
                          material.lamp_transmittance);
    archive.number({"default_thickness_m", "Usual thickness, m"}, material.default_thickness_m, limits::thickness_m);
    within<limits::share>(archive, {"air_permeability_share", "Of a cover: share of the flow that it still passes"},
                          material.air_permeability_share);
    flag_or_false(archive, {"combustible", "Can catch fire; absent: false"}, material.combustible);
    describe_substrate(archive, material);
    refuse_unless_complete(archive, material);
    archive.extras(material.extras);
}

static void describe_life(json::Archive& archive, DeviceTraits& traits)
{
    within<limits::hours>(archive, {"life_hours", "Useful life in burning hours"}, traits.life_hours);
    within<limits::months>(archive, {"life_months", "Useful life in months"}, traits.life_months);
    within<limits::share>(archive, {"uv_decay_per_1000_h", "Share of the UV lost in 1000 h"},
                          traits.uv_decay_per_1000_h);
}

// A name of the list in memory, an enumeration in the file.
static void describe_kind(json::Archive& archive, std::string& kind)
{
    const auto found = std::find(device_kinds.begin(), device_kinds.end(), kind);
    auto index = found == device_kinds.end() ? std::size_t{0} : static_cast<std::size_t>(found - device_kinds.begin());
    archive.choice({"kind", "Kind of device, as in a plan"}, index, device_kinds);
    kind = device_kinds[index];
}

static void refuse_more_than_all(json::Archive& archive, const DeviceTraits& traits)
{
    const double radiant = traits.radiant_share ? traits.radiant_share->likely : 0.0;
    const double convective = traits.convective_share ? traits.convective_share->likely : 0.0;
    if (radiant + convective > 1.0 + 1e-9) {
        archive.refuse("", problem::shares_exceed_one, {json::number_text(radiant + convective)});
    }
}

void describe(json::Archive& archive, DeviceTraits& traits)
{
    describe_kind(archive, traits.kind);
    within<limits::share>(archive, {"radiant_share", "Share of the watts in the beam"}, traits.radiant_share);
    within<limits::share>(archive, {"convective_share", "Share of the watts that warms the air around it"},
                          traits.convective_share);
    refuse_more_than_all(archive, traits);
    within<limits::angle_deg>(archive, {"beam_deg", "Full width at half maximum where the plan is silent, degrees"},
                              traits.beam_deg);
    within<limits::power_w>(archive, {"power_w", "Watts where the plan is silent"}, traits.power_w);
    within<limits::flux_w_m2>(archive, {"flux_w_m2", "Watts per area of a mat, W/m2"}, traits.flux_w_m2);
    describe_life(archive, traits);
    within<limits::clearance_m>(archive, {"clearance_m", "Distance from what can burn where the maker is silent, m"},
                                traits.clearance_m);
    archive.choice({"load", "What it is to a dimmer"}, traits.load, load_kind_names);
    flag_or_false(archive, {"dimmable", "May be dimmed; absent: false"}, traits.dimmable);
    flag_or_false(archive, {"emits_light", "Gives visible light; absent: false"}, traits.emits_light);
    flag_or_false(archive, {"emits_uv", "Gives UV-B; absent: false"}, traits.emits_uv);
    flag_or_false(archive, {"burns_at_touch", "Its surface burns skin; absent: false"}, traits.burns_at_touch);
    archive.texts({"notes", "Codes of cautions"}, traits.notes, an_id, {0, 20});
    archive.extras(traits.extras);
}

void describe(json::Archive& archive, Assumption& assumption)
{
    archive.text({"id", "The input or coefficient, for example room.winter.day_c"}, assumption.id, {1, 80});
    archive.text({"unit", "degC, 1, W, …"}, assumption.unit, {1, 20});
    within<limits::anything>(archive, {"spread", "The bracket that is used"}, assumption.spread);
    archive.text({"reason", "Why this bracket"}, assumption.reason, {1, 600});
    archive.extras(assumption.extras);
}

} // namespace loam::catalog
