#include "core/climate/storage.hpp"

#include "core/climate/psychrometrics.hpp"
#include "core/climate/walls.hpp"

namespace loam::climate {

namespace {

double of_sheet_j_m2k(const Sheet& sheet)
{
    return sheet.thickness_m * sheet.heat_capacity_j_m3k;
}

struct OfFace {
    double inside_j_m2k = 0.0;
    double outside_j_m2k = 0.0;
};

OfFace halves(double whole_j_m2k)
{
    return {0.5 * whole_j_m2k, 0.5 * whole_j_m2k};
}

// A wall's faces are joined by its whole resistance, so each sheet's heat goes to them by where it lies within that.
OfFace of_wall(const std::vector<const Sheet*>& sheets)
{
    const double whole = resistance_m2k_w(sheets);
    double before = 0.0;
    OfFace sum;
    for (const Sheet* sheet : sheets) {
        const double own = sheet->thickness_m / sheet->conductivity_w_mk.likely;
        const double outwards = (before + 0.5 * own) / whole;
        sum.inside_j_m2k += (1.0 - outwards) * of_sheet_j_m2k(*sheet);
        sum.outside_j_m2k += outwards * of_sheet_j_m2k(*sheet);
        before += own;
    }
    return sum;
}

OfFace of_face(const Box& box, const Face& face)
{
    if (face.kind == FaceKind::wall)
        return of_wall(wall_sheets(box, face.plane, face.mat.has_value()));
    const double pane = box.top == TopKind::pane ? of_sheet_j_m2k(box.top_sheet) : 0.0;
    const double cover = face.cover ? of_sheet_j_m2k(box.covers[*face.cover].sheet) : 0.0;
    return pane > 0.0 && cover > 0.0 ? OfFace{pane, cover} : halves(pane + cover);
}

} // namespace

std::vector<double> storage_of(const Model& model, const Box& box, const Scene& scene)
{
    const Geometry& g = scene.geometry;
    const Layout& layout = model.layout;
    std::vector<double> stored = model.stored_j_k;
    stored.resize(layout.size(), 0.0);
    const double half_air_kg = 0.5 * box.length_m * box.width_m * g.air_height_m * model.room.density_kg_m3;
    for (const std::size_t air : {layout.lower_air(), layout.upper_air()})
        stored[air] = half_air_kg * dry_air_heat_j_kgk;
    for (const std::size_t vapour : {layout.lower_vapour(), layout.upper_vapour()})
        stored[vapour] = half_air_kg * latent_heat_j_kg;
    for (std::size_t b = 0; b < box.bowls.size(); ++b)
        stored[layout.bowl(b)] = model.bowls[b].area_m2 * box.bowls[b].water_depth_m * water_heat_j_m3k;
    for (std::size_t f = 0; f < g.faces.size(); ++f)
        if (const auto& place = model.faces[f].place) {
            const OfFace face = of_face(box, g.faces[f]);
            stored[layout.face_inside(*place)] = face.inside_j_m2k * g.faces[f].area_m2;
            stored[layout.face_outside(*place)] = face.outside_j_m2k * g.faces[f].area_m2;
        }
    return stored;
}

} // namespace loam::climate
