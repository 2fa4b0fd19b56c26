#include "core/climate/model.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/beam.hpp"

namespace loam::climate {

namespace {

// Where the lamp shines more than this, evaporation outruns what a damp bed brings up from below: 100 W/m2 of latent
// heat is 3.5 l of water per m2 and day. Own estimate; the ramp keeps the field smooth while a lamp is dragged.
constexpr double damp_below_w_m2 = 50.0;
constexpr double dry_above_w_m2 = 150.0;

double dryness_at(double irradiance_w_m2)
{
    const double t = std::clamp((irradiance_w_m2 - damp_below_w_m2) / (dry_above_w_m2 - damp_below_w_m2), 0.0, 1.0);
    return t * t * (3.0 - 2.0 * t);
}

void size_layout(Model& model, const Box& box, const Scene& scene)
{
    const Geometry& g = scene.geometry;
    model.nx = g.nx;
    model.nz = g.nz();
    model.cell_m2 = g.dx_m * g.dy_m;
    model.floor_patch = g.floor_patch;
    for (const Patch& patch : g.patches)
        model.patch_m2.push_back(patch.area_m2());
    model.layout.bricks = g.columns() * g.nz();
    model.layout.bowls = box.bowls.size();
    model.layout.patches = g.patches.size();
    for (const Face& face : g.faces) {
        FaceModel made{.kind = face.kind, .patch = face.patch, .area_m2 = face.area_m2, .upper = face.upper};
        if (face.kind != FaceKind::mesh)
            made.place = model.layout.faces++;
        model.faces.push_back(made);
    }
}

} // namespace

FloorOptics floor_optics(const Box& box)
{
    if (box.bed.empty())
        return {box.base.emissivity.likely, box.base.lamp_absorptance.likely};
    return {box.bed.back().emissivity.likely, box.bed.back().lamp_absorptance.likely};
}

double region_transmittance(const Box& box, std::size_t region, const Lamp& lamp)
{
    if (!lamp.above_top)
        return 1.0;
    const auto through = [&lamp](const Sheet& sheet) { return lamp.thermal ? 0.0 : sheet.lamp_transmittance.likely; };
    double share = 1.0;
    if (box.top == TopKind::mesh)
        share *= box.mesh_open_fraction.likely;
    if (box.top == TopKind::pane)
        share *= through(box.top_sheet);
    if (region > 0)
        share *= through(box.covers[region - 1].sheet);
    return share;
}

std::vector<double> full_irradiance_w_m2(const Box& box, const Scene& scene)
{
    const Geometry& g = scene.geometry;
    std::vector<double> sum(g.columns(), 0.0);
    for (std::size_t l = 0; l < box.lamps.size(); ++l) {
        const Lamp& lamp = box.lamps[l];
        const double level = lamp.control.kind == ControlKind::dimmer ? lamp.control.level : 1.0;
        const double beam_w = lamp.power_w.likely * lamp.radiant_share.likely * level;
        for (std::size_t r = 0; r < scene.casts[l].column.size(); ++r) {
            const double passed_w = beam_w * region_transmittance(box, r, lamp);
            for (std::size_t c = 0; c < g.columns(); ++c)
                sum[c] += passed_w * scene.casts[l].column[r][c] / (g.dx_m * g.dy_m);
        }
    }
    return sum;
}

std::vector<double> dryness_of(const Box& box, const Scene& scene)
{
    std::vector<double> dryness;
    for (const double irradiance_w_m2 : full_irradiance_w_m2(box, scene))
        dryness.push_back(dryness_at(irradiance_w_m2));
    return dryness;
}

std::optional<Scene> make_scene(const Box& box, const Cells& cells)
{
    auto geometry = lay_out(box, cells);
    if (!geometry)
        return std::nullopt;
    auto scene = cast_where(box, {.geometry = *std::move(geometry), .exponents = {}, .casts = {}, .dryness = {}},
                            [](std::size_t, double) { return true; });
    if (scene)
        scene->dryness = dryness_of(box, *scene);
    return scene;
}

std::optional<Scene> cast_where(const Box& box, Scene scene, const IsNew& is_new)
{
    scene.exponents.resize(box.lamps.size());
    scene.casts.resize(box.lamps.size());
    for (std::size_t l = 0; l < box.lamps.size(); ++l) {
        const auto exponent = beam_exponent(box.lamps[l].beam_deg.likely);
        if (!exponent)
            return std::nullopt;
        if (!is_new(l, *exponent))
            continue;
        scene.exponents[l] = *exponent;
        scene.casts[l] = cast_beam(box, scene.geometry, box.lamps[l], *exponent);
    }
    return scene;
}

std::optional<Scene> recast(const Box& box, const Scene& scene)
{
    return cast_where(box, scene, [&](std::size_t l, double exponent) { return exponent != scene.exponents[l]; });
}

std::optional<Model> make_model(const Box& box, const Case& now, const Scene& scene)
{
    Model model;
    size_layout(model, box, scene);
    const bool made = set_devices(model, box, now, scene) && set_air_and_moisture(model, box, now, scene) &&
                      set_conduction(model, box, scene) && set_longwave(model, box, scene);
    return made ? std::optional(std::move(model)) : std::nullopt;
}

bool renew(Model& model, const Box& box, const Case& now, const Scene& scene, const Parts& parts)
{
    return (!parts.shortwave || set_devices(model, box, now, scene)) &&
           (!parts.rest || set_air_and_moisture(model, box, now, scene)) &&
           (!parts.conduction || set_conduction(model, box, scene)) &&
           (!parts.longwave || set_longwave(model, box, scene));
}

} // namespace loam::climate
