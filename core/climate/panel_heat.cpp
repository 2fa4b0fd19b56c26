// Lamp light and mats on the cells of walls and top. What a face takes up in all is the joint balance's; the cells
// share it by where light falls straight from the lamps.
#include "core/climate/beam.hpp"
#include "core/climate/optics.hpp"
#include "core/climate/panels.hpp"

namespace loam::climate {

namespace {

struct Sharing {
    const Box& box;
    const Scene& scene;
    const PanelCells& cells;
    PanelHeat& heat;

    // Each face's whole, spread evenly.
    void evenly(const Model& model, const std::vector<double>& taken_w) const
    {
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const FaceModel& face = model.faces[cells.face[i]];
            if (!face.place)
                continue;
            heat.inside_w_m2[i] = taken_w[model.layout.face_inside(*face.place)] / face.area_m2;
            heat.outside_w_m2[i] = taken_w[model.layout.face_outside(*face.place)] / face.area_m2;
        }
    }

    // Straight light on a wall, in the place of its patch's mean of it.
    void straight_on_wall(std::size_t l, double beam_w) const
    {
        const Lamp& lamp = box.lamps[l];
        const Cast& cast = scene.casts[l];
        const auto raw = cast_on_plane(box, scene.geometry, lamp, scene.exponents[l], cells.plane, cells.at);
        for (std::size_t r = 0; r < cast.region_share.size(); ++r) {
            const double passed_w = beam_w * region_transmittance(box, r, lamp);
            std::vector<double> sum(scene.geometry.patches.size(), 0.0);
            for (std::size_t i = 0; i < cells.size(); ++i)
                sum[cells.patch[i]] += raw[r][i] * cells.cell_m2();
            for (std::size_t i = 0; i < cells.size(); ++i) {
                const std::size_t p = cells.patch[i];
                if (sum[p] <= 0.0)
                    continue;
                const double mean = cast.patch[r][p] / scene.geometry.patches[p].area_m2();
                const double here = raw[r][i] * cast.patch[r][p] / sum[p];
                const FaceOptics optics = face_optics(box, scene.geometry.faces[cells.face[i]], lamp.thermal);
                const double more_w_m2 = passed_w * (here - mean) * optics.absorbed;
                heat.inside_w_m2[i] += more_w_m2 * optics.inner;
                heat.outside_w_m2[i] += more_w_m2 * (1.0 - optics.inner);
            }
        }
    }

    // Light from above on a pane or cover, in the place of the region's mean of it.
    void straight_on_top(std::size_t l, double beam_w) const
    {
        const Lamp& lamp = box.lamps[l];
        const Cast& cast = scene.casts[l];
        const Geometry& g = scene.geometry;
        const auto region = [&](std::size_t f) { return g.faces[f].cover ? *g.faces[f].cover + 1 : 0; };
        const auto above = irradiance_on_top(box, lamp, scene.exponents[l], cells.at);
        std::vector<double> raw(cast.region_share.size(), 0.0);
        std::vector<double> area_m2(cast.region_share.size(), 0.0);
        for (std::size_t i = 0; i < cells.size(); ++i)
            raw[region(cells.face[i])] += above[i] * cells.cell_m2();
        for (std::size_t f = 0; f < g.faces.size(); ++f)
            if (g.faces[f].kind != FaceKind::wall && g.faces[f].kind != FaceKind::mesh)
                area_m2[region(f)] += g.faces[f].area_m2;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const Face& face = g.faces[cells.face[i]];
            const std::size_t r = region(cells.face[i]);
            if (face.kind == FaceKind::mesh || raw[r] <= 0.0 || area_m2[r] <= 0.0)
                continue;
            const Sheet& sheet = outer_sheet(box, face);
            const double taken = lamp.thermal ? sheet.emissivity.likely : sheet.lamp_absorptance.likely;
            heat.outside_w_m2[i] += beam_w * cast.region_share[r] * taken * (above[i] / raw[r] - 1.0 / area_m2[r]);
        }
    }
};

} // namespace

PanelHeat panel_heat(const Box& box, const Scene& scene, const Model& model, const std::vector<double>& solution,
                     const PanelCells& cells)
{
    PanelHeat heat{std::vector<double>(cells.size(), 0.0), std::vector<double>(cells.size(), 0.0)};
    const Sharing sharing{box, scene, cells, heat};
    std::vector<double> taken_w(model.layout.size(), 0.0);
    for (const Device& device : model.devices) {
        const double drawn_w = power_w(device, model.layout, solution);
        for (const auto& [place, share] : device.release)
            taken_w[place] += share * drawn_w;
    }
    sharing.evenly(model, taken_w);
    for (std::size_t l = 0; l < box.lamps.size(); ++l) {
        const double beam_w = power_w(model.devices[l], model.layout, solution) * box.lamps[l].radiant_share.likely;
        if (beam_w <= 0.0)
            continue;
        if (cells.plane != Plane::ceiling)
            sharing.straight_on_wall(l, beam_w);
        else if (box.lamps[l].above_top)
            sharing.straight_on_top(l, beam_w);
    }
    return heat;
}

} // namespace loam::climate
