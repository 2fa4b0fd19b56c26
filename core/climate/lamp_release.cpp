// Where the watts of a lamp go.
#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/climate/optics.hpp"

namespace loam::climate {

namespace {

// Releases the beam of one lamp (a watt of it) after all reflections.
struct BeamRelease {
    const Model& model;
    const Box& box;
    const Scene& scene;
    const Lamp& lamp;
    std::vector<double>& into; // by place in the solution

    double floor_absorptance() const
    {
        const FloorOptics optics = floor_optics(box);
        return lamp.thermal ? optics.emissivity : optics.lamp_absorptance;
    }
    double water_absorptance() const { return lamp.thermal ? water_emissivity : water_lamp_absorptance; }

    // Light arriving on a column, shared between bed and bowls by area.
    void on_column(std::size_t c, double arriving) const
    {
        const Geometry& g = scene.geometry;
        const double water = bowl_share(scene, c);
        into[g.surface(c)] += arriving * (1.0 - water) * floor_absorptance();
        for (std::size_t b = 0; b < g.bowl_m2.size(); ++b)
            into[model.layout.bowl(b)] += arriving * g.bowl_m2[b][c] / (g.dx_m * g.dy_m) * water_absorptance();
    }

    void on_face(std::size_t f, double arriving) const
    {
        const FaceModel& face = model.faces[f];
        if (!face.place)
            return;
        const FaceOptics optics = face_optics(box, scene.geometry.faces[f], lamp.thermal);
        into[model.layout.face_inside(*face.place)] += arriving * optics.absorbed * optics.inner;
        into[model.layout.face_outside(*face.place)] += arriving * optics.absorbed * (1.0 - optics.inner);
    }

    void first_arrival(std::vector<double>& columns, std::vector<double>& patches, const Cast& cast) const
    {
        for (std::size_t r = 0; r < cast.region_share.size(); ++r) {
            const double passed = region_transmittance(box, r, lamp);
            for (std::size_t c = 0; c < columns.size(); ++c)
                columns[c] += passed * cast.column[r][c];
            for (std::size_t p = 0; p < patches.size(); ++p)
                patches[p] += passed * cast.patch[r][p];
        }
    }

    std::vector<double> reflectances() const
    {
        const Geometry& g = scene.geometry;
        const double bed = 1.0 - floor_absorptance();
        const double water = 1.0 - water_absorptance();
        return patch_means(
            scene, [&](std::size_t c) { return std::lerp(bed, water, bowl_share(scene, c)); },
            [&](std::size_t f) {
                const FaceOptics optics = face_optics(box, g.faces[f], lamp.thermal);
                return std::max(0.0, 1.0 - optics.absorbed - optics.passed);
            });
    }

    // Later bounces: what each patch reflects of the first arrival, spread evenly over what it sees.
    std::vector<double> later_w_m2(const std::vector<double>& patches) const
    {
        const Geometry& g = scene.geometry;
        const std::vector<double> reflectance = reflectances();
        const Square spread = interreflection(g.views, reflectance);
        std::vector<double> later(g.patches.size(), 0.0);
        for (std::size_t p = 0; p < later.size(); ++p)
            for (std::size_t q = 0; q < later.size(); ++q)
                later[p] += spread(p, q) * reflectance[q] * patches[q] / g.patches[q].area_m2();
        return later;
    }

    // A solid block hands on what it takes up to the bed under it; the roof of a hollow one, warmer than everything
    // around, loses about as much to the air as by radiation upwards. It reflects as the bed does, upwards.
    void on_block(std::size_t b, double arriving) const
    {
        const Geometry& g = scene.geometry;
        const Rect& area = box.blocks[b].area;
        const std::size_t below =
            g.floor_patch[g.column_at(area.x_m + 0.5 * area.length_m, area.y_m + 0.5 * area.width_m)];
        const double taken = arriving * floor_absorptance();
        radiate_up(below, arriving - taken);
        const std::vector<double>& below_m2 = g.block_m2[b];
        const double whole_m2 = std::accumulate(below_m2.begin(), below_m2.end(), 0.0);
        if (box.blocks[b].hollow || whole_m2 <= 0.0) {
            into[model.layout.lower_air()] += 0.5 * taken;
            radiate_up(below, 0.5 * taken);
            return;
        }
        for (std::size_t c = 0; c < below_m2.size(); ++c)
            into[g.surface(c)] += taken * below_m2[c] / whole_m2;
    }

    // From above the floor onto walls and top. A mesh lets it out, as it does the floor's own radiation.
    void radiate_up(std::size_t from, double watts) const
    {
        const Geometry& g = scene.geometry;
        for (std::size_t f = 0; f < g.faces.size(); ++f) {
            const Face& face = g.faces[f];
            const double seen = watts * g.views(from, face.patch) * face.area_m2 / g.patches[face.patch].area_m2();
            if (const auto& place = model.faces[f].place)
                into[model.layout.face_inside(*place)] += seen;
            else
                into[model.layout.upper_air()] += seen * (1.0 - mesh_emissivity(box));
        }
    }

    void beam(const Cast& cast) const
    {
        const Geometry& g = scene.geometry;
        std::vector<double> columns(g.columns(), 0.0);
        std::vector<double> patches(g.patches.size(), 0.0);
        first_arrival(columns, patches, cast);
        std::vector<double> all = patches;
        for (std::size_t c = 0; c < columns.size(); ++c)
            all[g.floor_patch[c]] += columns[c];
        const std::vector<double> later = later_w_m2(all);
        for (std::size_t c = 0; c < columns.size(); ++c)
            on_column(c, columns[c] + later[g.floor_patch[c]] * g.dx_m * g.dy_m);
        for (std::size_t b = 0; b < box.blocks.size(); ++b) {
            double arriving = 0.0;
            for (std::size_t r = 0; r < cast.region_share.size(); ++r)
                arriving += region_transmittance(box, r, lamp) * cast.block[r][b];
            if (arriving > 0.0)
                on_block(b, arriving);
        }
        for (std::size_t f = 0; f < g.faces.size(); ++f) {
            const Face& face = g.faces[f];
            on_face(f, (patches[face.patch] / g.patches[face.patch].area_m2() + later[face.patch]) * face.area_m2);
        }
    }

    // What a top pane or cover takes from a beam that strikes it from above.
    void on_top(const Cast& cast) const
    {
        const Geometry& g = scene.geometry;
        for (std::size_t r = 0; r < cast.region_share.size(); ++r) {
            double struck_m2 = 0.0;
            const auto is_region = [&](const Face& face) {
                return face.kind != FaceKind::mesh && face.kind != FaceKind::wall &&
                       (face.cover ? *face.cover + 1 : 0) == r;
            };
            for (const Face& face : g.faces)
                struck_m2 += is_region(face) ? face.area_m2 : 0.0;
            for (std::size_t f = 0; f < g.faces.size(); ++f) {
                if (!is_region(g.faces[f]))
                    continue;
                const Sheet& sheet = outer_sheet(box, g.faces[f]);
                const double taken = lamp.thermal ? sheet.emissivity.likely : sheet.lamp_absorptance.likely;
                into[model.layout.face_outside(*model.faces[f].place)] +=
                    cast.region_share[r] * taken * g.faces[f].area_m2 / struck_m2;
            }
        }
    }
};

} // namespace

std::vector<double> lamp_release(const Model& model, const Box& box, const Scene& scene, std::size_t l)
{
    const Lamp& lamp = box.lamps[l];
    std::vector<double> into(model.layout.size(), 0.0);
    const BeamRelease release{model, box, scene, lamp, into};
    release.beam(scene.casts[l]);
    if (lamp.above_top)
        release.on_top(scene.casts[l]);
    if (lamp.above_top && box.top == TopKind::mesh)
        into[model.layout.upper_air()] +=
            scene.casts[l].region_share[0] * (1.0 - box.mesh_open_fraction.likely) * box.mesh_return.likely;
    for (double& share : into)
        share *= lamp.radiant_share.likely;
    if (!lamp.above_top) {
        const double height_m = lamp.at.z_m - scene.geometry.bed_mean_m;
        const bool low = height_m < 0.5 * scene.geometry.air_height_m;
        into[low ? model.layout.lower_air() : model.layout.upper_air()] += lamp.convective_share.likely;
    }
    return into;
}

} // namespace loam::climate
