// Long-wave exchange inside.
#include <cmath>

#include "core/climate/optics.hpp"

namespace loam::climate {

bool set_longwave(Model& model, const Box& box, const Scene& scene)
{
    const Geometry& g = scene.geometry;
    model.floor.emissivity = floor_optics(box).emissivity;
    for (std::size_t f = 0; f < g.faces.size(); ++f) {
        FaceModel& face = model.faces[f];
        if (face.kind == FaceKind::mesh) {
            face.emissivity_inside = mesh_emissivity(box);
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
