#include "core/climate/optics.hpp"

#include <algorithm>

#include "core/climate/walls.hpp"

namespace loam::climate {

double mesh_emissivity(const Box& box)
{
    return box.top == TopKind::open ? 1.0 : 0.5 * (1.0 + box.mesh_open_fraction.likely);
}

const Sheet& inner_sheet(const Box& box, const Face& face)
{
    if (face.kind == FaceKind::wall)
        return *wall_sheets(box, face.plane, face.mat.has_value()).front();
    if (box.top == TopKind::pane)
        return box.top_sheet;
    return box.covers[*face.cover].sheet;
}

const Sheet& outer_sheet(const Box& box, const Face& face)
{
    if (face.kind == FaceKind::wall)
        return *wall_sheets(box, face.plane, face.mat.has_value()).back();
    return face.cover ? box.covers[*face.cover].sheet : inner_sheet(box, face);
}

FaceOptics face_optics(const Box& box, const Face& face, bool thermal)
{
    if (face.kind == FaceKind::mesh)
        return {0.0, thermal ? mesh_emissivity(box) : 1.0};
    const Sheet& sheet = inner_sheet(box, face);
    if (thermal)
        return {sheet.emissivity.likely, 0.0};
    // A clear sheet takes lamp light all through its thickness, any other one at its face.
    const double inner = sheet.lamp_transmittance.likely > 0.0 ? 0.5 : 1.0;
    if (face.kind != FaceKind::wall)
        return {sheet.lamp_absorptance.likely, sheet.lamp_transmittance.likely, inner};
    const LampShares shares = lamp_shares(wall_sheets(box, face.plane, face.mat.has_value()));
    return {shares.absorbed, shares.passed, inner};
}

double bowl_share(const Scene& scene, std::size_t column)
{
    double area_m2 = 0.0;
    for (const auto& bowl : scene.geometry.bowl_m2)
        area_m2 += bowl[column];
    return std::min(1.0, area_m2 / (scene.geometry.dx_m * scene.geometry.dy_m));
}

} // namespace loam::climate
