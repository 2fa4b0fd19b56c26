#include "core/climate/optics.hpp"

#include <algorithm>

namespace loam::climate {

double mesh_emissivity(const Box& box)
{
    return box.top == TopKind::open ? 1.0 : 0.5 * (1.0 + box.mesh_open_fraction.likely);
}

const Sheet& inner_sheet(const Box& box, const Face& face)
{
    if (face.kind == FaceKind::wall)
        return box.walls;
    if (box.top == TopKind::pane)
        return box.top_sheet;
    return box.covers[*face.cover].sheet;
}

const Sheet& outer_sheet(const Box& box, const Face& face)
{
    return face.cover ? box.covers[*face.cover].sheet : inner_sheet(box, face);
}

double bowl_share(const Scene& scene, std::size_t column)
{
    double area_m2 = 0.0;
    for (const auto& bowl : scene.geometry.bowl_m2)
        area_m2 += bowl[column];
    return std::min(1.0, area_m2 / (scene.geometry.dx_m * scene.geometry.dy_m));
}

} // namespace loam::climate
