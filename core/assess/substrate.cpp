#include "core/assess/substrate.hpp"

#include <algorithm>

#include "core/assess/fittings.hpp"
#include "core/substrate/bed.hpp"

namespace loam::assess {

namespace {

substrate::Floor floor_of(const plan::Enclosure& enclosure)
{
    return {enclosure.shell.length_m, enclosure.shell.width_m};
}

std::vector<substrate::Layer> depths_of(const plan::Enclosure& enclosure)
{
    std::vector<substrate::Layer> layers;
    for (const plan::SubstrateLayer& given : enclosure.substrate) {
        substrate::Layer layer;
        layer.id = given.id;
        layer.depth_left_m = given.depth_m;
        layer.depth_right_m = given.depth_at_right_m.value_or(given.depth_m);
        layers.push_back(layer);
    }
    return layers;
}

// Settling and water as the material's entry says, water as the keeper says where stated.
bool fill_in_material(const Context& context, const Housed& housed, std::size_t index, Notes& notes,
                      substrate::Layer& layer)
{
    const plan::SubstrateLayer& given = housed.enclosure.substrate[index];
    const catalog::Material* material = context.catalog.find_material(given.material);
    if (material == nullptr) {
        report(notes, "material.not-known", {Verdict::not_known, Direction::none}, housed.at(given.id),
               because("rule.material-list", {}, {{"material", given.material}, {"part", "substrate"}}))
            .remedy = state(housed.pointer("/substrate/" + std::to_string(index) + "/material"));
        return false;
    }
    const auto settling = material->settling ? std::optional(material->settling->range())
                                             : spread_of(context.catalog, "substrate.settling");
    const std::string pointer = housed.pointer("/substrate/" + std::to_string(index) + "/water_fraction");
    const auto water = material->water_fraction_damp
                           ? given_or(notes, given.water_fraction, pointer, "1", material->water_fraction_damp->range(),
                                      material->water_fraction_damp->source)
                           : given_or(notes, given.water_fraction, pointer, "1", std::nullopt, {});
    if (!settling || !water) {
        return false;
    }
    layer.settling = *settling;
    layer.dry_density_kg_m3 = material->density_kg_m3.range();
    layer.water_fraction = *water;
    return true;
}

std::vector<SubstrateResult> amounts(const Context& context, const Housed& housed, Notes& notes)
{
    std::vector<substrate::Layer> layers = depths_of(housed.enclosure);
    for (std::size_t i = 0; i < layers.size(); ++i) {
        if (!fill_in_material(context, housed, i, notes, layers[i])) {
            return {}; // sunk parts and layers share the floor: half a bed is not computed
        }
    }
    std::vector<SubstrateResult> results;
    const auto found = substrate::bed_amounts(floor_of(housed.enclosure), layers, {});
    for (std::size_t i = 0; i < found.size(); ++i) {
        results.push_back({.layer = found[i].id,
                           .material = housed.enclosure.substrate[i].material,
                           .settled_l = found[i].settled_l,
                           .expanded_l = found[i].fill_in_l,
                           .dry_kg = found[i].dry_kg,
                           .damp_kg = found[i].damp_kg});
    }
    return results;
}

void judge_depth(const Housed& housed, Notes& notes, const catalog::Species& species)
{
    const substrate::Floor floor = floor_of(housed.enclosure);
    const auto layers = depths_of(housed.enclosure);
    // A sloping bed serves with its deep end: that is what slopes are for.
    const double depth_m =
        std::max(substrate::surface_m(floor, layers, 0.0), substrate::surface_m(floor, layers, floor.length_m));
    const catalog::Band& band = species.substrate_depth_m;
    if (band.min && depth_m < *band.min - 1e-9) {
        report(notes, "substrate.too-shallow", {Verdict::falls_short, Direction::below}, housed.at(),
               because("rule.species-sheet",
                       {{"depth", depth_m, "m"}, {"min", *band.min, "m"}, {"short_by", *band.min - depth_m, "m"}},
                       {{"species", species.id}}, band.source))
            .remedy = remedy("remedy.deeper-bed", {{"by", *band.min - depth_m, "m"}, {"to", *band.min, "m"}});
    }
}

void judge_materials(const Housed& housed, Notes& notes, const catalog::Species& species)
{
    if (species.substrates.empty()) {
        return;
    }
    for (const plan::SubstrateLayer& layer : housed.enclosure.substrate) {
        const bool suits =
            std::find(species.substrates.begin(), species.substrates.end(), layer.material) != species.substrates.end();
        if (!suits) {
            report(
                notes, "substrate.unsuited", {Verdict::falls_short, Direction::none}, housed.at(layer.id),
                because("rule.species-sheet", {},
                        {{"material", layer.material}, {"species", species.id}, {"best", species.substrates.front()}},
                        species.substrate_depth_m.source))
                .remedy = remedy("remedy.other-substrate", {}, {{"material", species.substrates.front()}});
        }
    }
}

} // namespace

double bed_surface_m(const plan::Enclosure& enclosure, double x_m)
{
    return substrate::surface_m(floor_of(enclosure), depths_of(enclosure),
                                std::clamp(x_m, 0.0, enclosure.shell.length_m));
}

SubstrateStage assess_substrate(const Context& context, const Housed& housed)
{
    SubstrateStage stage;
    if (housed.enclosure.substrate.empty()) {
        report(stage.notes, "substrate.none", {Verdict::not_known, Direction::none}, housed.at(),
               because("rule.stated-by-keeper", {}, {}))
            .remedy = state(housed.pointer("/substrate"));
        return stage;
    }
    stage.results = amounts(context, housed, stage.notes);
    const plan::Shell& shell = housed.enclosure.shell;
    const double deepest_m =
        std::max(bed_surface_m(housed.enclosure, 0.0), bed_surface_m(housed.enclosure, shell.length_m));
    if (deepest_m >= shell.height_m) {
        report(stage.notes, "substrate.fills-box", {Verdict::falls_short, Direction::above}, housed.at(),
               because("rule.stated-by-keeper", {{"depth", deepest_m, "m"}, {"height", shell.height_m, "m"}}, {}))
            .remedy = remedy("remedy.shallower-bed", {{"to", shell.height_m / 2.0, "m"}});
    }
    for (const catalog::Species* species : species_in(housed.enclosure, context.catalog)) {
        judge_depth(housed, stage.notes, *species);
        judge_materials(housed, stage.notes, *species);
    }
    return stage;
}

} // namespace loam::assess
