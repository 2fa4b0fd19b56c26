#include "core/assess/load.hpp"

#include "core/assess/climate_box.hpp"
#include "core/assess/fittings.hpp"
#include "core/plan/measured.hpp"
#include "core/plan/names.hpp"
#include "core/substrate/mass.hpp"
#include "core/water/water.hpp"

namespace loam::assess {

namespace {

std::optional<substrate::Panel> panel(const Context& context, const Housed& housed, Notes& notes,
                                      const std::string& material_id, std::optional<double> given_m,
                                      const std::string& key, std::string part)
{
    const catalog::Material* material = context.catalog.find_material(material_id);
    if (material == nullptr) {
        report(notes, "material.not-known", {Verdict::not_known, Direction::none}, housed.at(),
               because("rule.material-list", {}, {{"material", material_id}, {"part", std::move(part)}}))
            .remedy = state(housed.pointer("/shell/" + key));
        return std::nullopt;
    }
    const auto thickness = thickness_of(notes, context.catalog, *material, given_m, housed.pointer("/shell/" + key));
    if (!thickness) {
        return std::nullopt;
    }
    // The thickness' bracket and the density's go into one spread: the product of like ends.
    const Range density = material->density_kg_m3.range();
    const double likely_m = thickness->likely;
    return substrate::Panel{
        likely_m, {density.low * thickness->low / likely_m, density.likely, density.high * thickness->high / likely_m}};
}

bool add_panels(const Context& context, const Housed& housed, Notes& notes, substrate::ShellForm& form)
{
    const std::vector<plan::Panel>& panels = housed.enclosure.shell.panels;
    for (std::size_t i = 0; i < panels.size(); ++i) {
        const auto sheet = panel(context, housed, notes, panels[i].material, panels[i].thickness_m,
                                 "panels/" + std::to_string(i) + "/thickness_m", "walls");
        if (!sheet) {
            return false;
        }
        switch (panels[i].wall) {
        case plan::Wall::front:
            form.front = sheet;
            break;
        case plan::Wall::back:
            form.back = sheet;
            break;
        case plan::Wall::left:
            form.left = sheet;
            break;
        case plan::Wall::right:
            form.right = sheet;
            break;
        }
    }
    return true;
}

bool add_linings(const Context& context, const Housed& housed, Notes& notes, substrate::ShellForm& form)
{
    const std::vector<plan::Lining>& linings = housed.enclosure.shell.linings;
    for (std::size_t i = 0; i < linings.size(); ++i) {
        const auto sheet = panel(context, housed, notes, linings[i].material, linings[i].thickness_m,
                                 "linings/" + std::to_string(i) + "/thickness_m", "walls");
        if (!sheet) {
            return false;
        }
        const bool is_long = linings[i].wall == plan::Wall::front || linings[i].wall == plan::Wall::back;
        (is_long ? form.long_linings : form.side_linings).push_back(*sheet);
    }
    return true;
}

std::optional<substrate::ShellForm> shell_form(const Context& context, const Housed& housed, Notes& notes)
{
    const plan::Shell& shell = housed.enclosure.shell;
    const auto walls = panel(context, housed, notes, shell.walls, shell.wall_thickness_m, "wall_thickness_m", "walls");
    const auto base = panel(context, housed, notes, shell.base, shell.base_thickness_m, "base_thickness_m", "base");
    std::optional<substrate::Panel> top;
    const bool has_pane = shell.top.kind == plan::TopKind::glass || shell.top.kind == plan::TopKind::board;
    if (has_pane) {
        top = panel(context, housed, notes, std::string(plan::name_of(shell.top.kind)), shell.top.thickness_m,
                    "top/thickness_m", "top");
    }
    if (!walls || !base || (has_pane && !top)) {
        return std::nullopt;
    }
    substrate::ShellForm form{.length_m = shell.length_m,
                              .width_m = shell.width_m,
                              .height_m = shell.height_m,
                              .walls = *walls,
                              .base = *base,
                              .top = top};
    const bool known = add_panels(context, housed, notes, form) && add_linings(context, housed, notes, form);
    return known ? std::optional(std::move(form)) : std::nullopt;
}

Range water_kg(const Context& context, const Housed& housed, Notes& notes)
{
    Range total;
    const auto fullness = spread_of(context.catalog, "bowl.fill_ratio");
    for (std::size_t i = 0; i < housed.enclosure.fittings.size(); ++i) {
        const plan::Fitting& fitting = housed.enclosure.fittings[i];
        if (fitting.kind != plan::FittingKind::water_bowl) {
            continue;
        }
        const auto depth = bowl_water_depth(context, housed, i, notes);
        if (depth && fullness) {
            const Range litres = water::bowl_l({fitting.id, fitting.length_m, fitting.width_m, *depth, *fullness});
            total = {total.low + litres.low, total.likely + litres.likely, total.high + litres.high};
        }
    }
    return total; // a litre is a kilogram to within 0.3 %
}

// Those that are stated; the rest is told as assumed, without a bracket.
double fittings_kg(const Housed& housed, Notes& notes)
{
    double total = 0.0;
    for (std::size_t i = 0; i < housed.enclosure.fittings.size(); ++i) {
        const plan::Fitting& fitting = housed.enclosure.fittings[i];
        if (!fitting.mass_kg) {
            assume(notes, {housed.pointer("/fittings/" + std::to_string(i) + "/mass_kg"), "kg", std::nullopt, {}});
        }
        total += fitting.mass_kg.value_or(0.0);
    }
    return total;
}

Range animals_kg(const Context& context, const Housed& housed, Notes& notes)
{
    Range total;
    for (std::size_t i = 0; i < housed.enclosure.animals.size(); ++i) {
        const plan::Animal& animal = housed.enclosure.animals[i];
        const catalog::Species* species = context.catalog.find_species(animal.species);
        std::optional<Range> adult;
        Source source;
        if (species != nullptr && species->adult_mass_kg && species->adult_mass_kg->max) {
            const double max_kg = *species->adult_mass_kg->max;
            const double min_kg = species->adult_mass_kg->min.value_or(max_kg);
            adult = Range{min_kg, (min_kg + max_kg) / 2.0, max_kg};
            source = species->adult_mass_kg->source;
        }
        const auto mass = given_or(notes, plan::mass_now_kg(animal),
                                   housed.pointer("/animals/" + std::to_string(i) + "/mass_kg"), "kg", adult, source);
        const auto count = static_cast<double>(animal.count);
        if (mass) {
            total = {total.low + count * mass->low, total.likely + count * mass->likely,
                     total.high + count * mass->high};
        }
    }
    return total;
}

} // namespace

MassStage assess_mass(const Context& context, const Housed& housed, const std::vector<SubstrateResult>& bed)
{
    MassStage stage;
    const auto shell = shell_form(context, housed, stage.notes);
    substrate::Masses masses;
    masses.water_kg = water_kg(context, housed, stage.notes);
    masses.fittings_kg = exactly(fittings_kg(housed, stage.notes));
    masses.animals_kg = animals_kg(context, housed, stage.notes);
    for (const SubstrateResult& layer : bed) {
        masses.substrate_kg = {masses.substrate_kg.low + layer.damp_kg.low,
                               masses.substrate_kg.likely + layer.damp_kg.likely,
                               masses.substrate_kg.high + layer.damp_kg.high};
    }
    if (shell) {
        masses.shell_kg = substrate::shell_kg(*shell);
    }
    stage.result.shell_kg = masses.shell_kg.likely;
    stage.result.substrate_kg = masses.substrate_kg;
    stage.result.water_kg = masses.water_kg.likely;
    stage.result.fittings_kg = masses.fittings_kg.likely;
    stage.result.animals_kg = masses.animals_kg.likely;
    const plan::Shell& form = housed.enclosure.shell;
    const double footprint_m2 = shell ? substrate::footprint_m2(*shell) : form.length_m * form.width_m;
    if (const auto load = substrate::load(masses, footprint_m2)) {
        stage.result.total_kg = load->total_kg;
        stage.result.pressure_kpa = load->pressure_kpa;
    }
    stage.known = shell.has_value() && bed.size() == housed.enclosure.substrate.size();
    return stage;
}

} // namespace loam::assess
