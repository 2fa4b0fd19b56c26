// Long-wave exchange inside.
#include <algorithm>
#include <cmath>

#include "core/climate/domes.hpp"
#include "core/climate/optics.hpp"

namespace loam::climate {

bool set_longwave(Model& model, const Box& box, const Scene& scene)
{
    const Geometry& g = scene.geometry;
    model.floor.emissivity = floor_optics(box).emissivity;
    for (std::size_t f = 0; f < g.faces.size(); ++f) {
        FaceModel& face = model.faces[f];
        if (face.kind == FaceKind::mesh) {
            const Patch& patch = g.patches[face.patch];
            const Rect part{patch.at[0].from, patch.at[1].from, patch.at[0].to - patch.at[0].from,
                            patch.at[1].to - patch.at[1].from};
            const double shut_m2 = box.top == TopKind::mesh ? under_domes_m2(box, part) : 0.0;
            face.emissivity_inside = mesh_emissivity(box) * std::max(0.0, 1.0 - shut_m2 / face.area_m2);
            continue;
        }
        face.emissivity_inside = inner_sheet(box, g.faces[f]).emissivity.likely;
        face.emissivity_outside = outer_sheet(box, g.faces[f]).emissivity.likely;
    }
    std::vector<double> reflectance = patch_means(
        scene,
        [&](std::size_t c) { return 1.0 - std::lerp(model.floor.emissivity, water_emissivity, bowl_share(scene, c)); },
        [&](std::size_t f) { return 1.0 - model.faces[f].emissivity_inside; });
    model.longwave = interreflection(g.views, reflectance);
    return true;
}

} // namespace loam::climate
