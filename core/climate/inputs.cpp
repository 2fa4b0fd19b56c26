#include "core/climate/inputs.hpp"

namespace loam::climate {

namespace {

constexpr Parts conduction{.conduction = true};
constexpr Parts longwave{.longwave = true, .shortwave = true};
constexpr Parts shortwave{.shortwave = true};
constexpr Parts beam{.shortwave = true, .beam = true};
constexpr Parts rest{.rest = true};

void visit_hidden_sheet(Sheet& sheet, const std::string& name, const Parts& conducts, const VisitInput& visit)
{
    visit(name + ".conductivity", sheet.conductivity_w_mk, conducts);
    Parts emits = longwave;
    emits.conduction = conducts.conduction; // flanks and underside radiate too
    visit(name + ".emissivity", sheet.emissivity, emits);
}

// A sheet that lamp light reaches.
void visit_sheet(Sheet& sheet, const std::string& name, const Parts& conducts, const VisitInput& visit)
{
    visit_hidden_sheet(sheet, name, conducts, visit);
    visit(name + ".lamp-transmittance", sheet.lamp_transmittance, shortwave);
    visit(name + ".lamp-absorptance", sheet.lamp_absorptance, shortwave);
}

void visit_shell(Box& box, const VisitInput& visit)
{
    visit_sheet(box.walls, "walls", {.conduction = true, .rest = true}, visit);
    const Parts conducts{.conduction = true, .rest = true};
    for (WallBuild& build : box.other_walls) {
        if (build.panel)
            visit_sheet(build.panel->sheet, build.panel->id, conducts, visit);
        for (WallLayer& layer : build.inside)
            visit_sheet(layer.sheet, layer.id, conducts, visit);
        for (WallLayer& layer : build.outside)
            visit_sheet(layer.sheet, layer.id, conducts, visit);
    }
    if (box.bed.empty())
        visit_sheet(box.base, "base", conduction, visit);
    else
        visit_hidden_sheet(box.base, "base", conduction, visit);
    if (box.top == TopKind::pane)
        visit_sheet(box.top_sheet, "top", rest, visit);
    if (box.top == TopKind::mesh) {
        visit("mesh.open-fraction", box.mesh_open_fraction, {.longwave = true, .shortwave = true, .rest = true});
        visit("mesh.return", box.mesh_return, shortwave);
    }
    for (Sheet& sheet : box.underlay)
        visit_hidden_sheet(sheet, "underlay." + sheet.material, conduction, visit);
    for (CoverPatch& cover : box.covers) {
        visit_sheet(cover.sheet, cover.id, rest, visit);
        visit(cover.id + ".leak", cover.leak, rest);
    }
}

void visit_bed(Box& box, const VisitInput& visit)
{
    for (BedLayer& layer : box.bed) {
        const std::string name = "bed." + layer.material;
        visit(name + ".conductivity", layer.conductivity_dry_w_mk, conduction);
        visit(name + ".conductivity-per-water", layer.conductivity_per_water_w_mk, conduction);
        visit(name + ".water-damp", layer.water_damp, conduction);
        visit(name + ".water-dry", layer.water_dry, conduction);
    }
    if (box.bed.empty())
        return;
    BedLayer& top = box.bed.back();
    const std::string name = "bed." + top.material;
    visit(name + ".emissivity", top.emissivity, longwave);
    visit(name + ".lamp-absorptance", top.lamp_absorptance, shortwave);
    visit(name + ".wetness", top.wetness, rest);
}

void visit_devices(Box& box, const VisitInput& visit)
{
    for (Lamp& lamp : box.lamps) {
        visit(lamp.id + ".power", lamp.power_w, shortwave);
        visit(lamp.id + ".radiant-share", lamp.radiant_share, shortwave);
        visit(lamp.id + ".convective-share", lamp.convective_share, shortwave);
        visit(lamp.id + ".beam", lamp.beam_deg, beam);
    }
    for (Mat& mat : box.mats)
        visit(mat.id + ".power", mat.power_w, shortwave);
}

} // namespace

void visit_inputs(Box& box, Case& now, const VisitInput& visit)
{
    visit("room.temperature", now.room.temperature_c, {.conduction = true, .rest = true});
    visit("room.relative-humidity", now.room.relative_humidity, rest);
    visit_shell(box, visit);
    visit_bed(box, visit);
    visit_devices(box, visit);
    visit("misting", box.misting_l_per_day, rest);
    visit("model.film-factor", box.film_factor, {.conduction = true, .rest = true});
    visit("model.exchange-factor", box.exchange_factor, rest);
    visit("model.leak", box.leak_air_changes_per_h, rest);
    visit("model.evaporation-factor", box.evaporation_factor, rest);
    visit("model.mixing", box.mixing_w_m2k, rest);
}

} // namespace loam::climate
