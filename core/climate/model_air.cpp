// Films, air exchange, moisture and the room.
#include <algorithm>
#include <cmath>

#include "core/climate/air.hpp"
#include "core/climate/domes.hpp"
#include "core/climate/evaporation.hpp"
#include "core/climate/model.hpp"
#include "core/climate/psychrometrics.hpp"
#include "core/climate/walls.hpp"

namespace loam::climate {

namespace {

double area_over_perimeter_m(double length_m, double width_m)
{
    return length_m * width_m / (2.0 * (length_m + width_m));
}

bool set_room(Model& model, const RoomState& room)
{
    const auto ratio = humidity_ratio_at(room.temperature_c.likely, room.relative_humidity.likely);
    if (!ratio || !air_at(room.temperature_c.likely))
        return false;
    model.room = {.celsius = room.temperature_c.likely,
                  .humidity_ratio = *ratio,
                  .density_kg_m3 = air_density_kg_m3(room.temperature_c.likely)};
    return true;
}

void set_floor(Model& model, const Box& box, const Scene& scene)
{
    const Geometry& g = scene.geometry;
    FloorModel& floor = model.floor;
    floor.exposed_m2.assign(g.columns(), model.cell_m2);
    for (const auto& bowl : g.bowl_m2)
        for (std::size_t c = 0; c < g.columns(); ++c)
            floor.exposed_m2[c] = std::max(0.0, floor.exposed_m2[c] - bowl[c]);
    const double wetness = box.bed.empty() ? 0.0 : box.bed.back().wetness.likely;
    floor.wetness = stretched_wetness(wetness, box.evaporation_factor.likely);
    floor.mist_kg_s_m2 = box.misting_l_per_day.likely / 86400.0 / (box.length_m * box.width_m);
    floor.film = {Facing::up, area_over_perimeter_m(box.length_m, box.width_m), box.film_factor.likely};
    model.underside.film = {Facing::down, floor.film.length_m, box.film_factor.likely};
}

void set_bowls(Model& model, const Box& box, const Scene& scene)
{
    model.bowls.assign(box.bowls.size(), BowlModel{});
    for (std::size_t b = 0; b < box.bowls.size(); ++b) {
        BowlModel& bowl = model.bowls[b];
        for (std::size_t c = 0; c < scene.geometry.columns(); ++c)
            if (const double area_m2 = scene.geometry.bowl_m2[b][c]; area_m2 > 0.0) {
                bowl.columns.emplace_back(c, area_m2);
                bowl.area_m2 += area_m2;
            }
        bowl.evaporation_kg_s_m2_pa = still_water_kg_s_m2_pa() * box.evaporation_factor.likely;
        const Rect& area = box.bowls[b].area;
        bowl.film = {Facing::up, area_over_perimeter_m(area.length_m, area.width_m), box.film_factor.likely};
    }
}

void set_face_films(Model& model, const Box& box, const Scene& scene)
{
    const Geometry& g = scene.geometry;
    const double factor = box.film_factor.likely;
    for (std::size_t f = 0; f < g.faces.size(); ++f) {
        FaceModel& face = model.faces[f];
        const auto resistance = [](const Sheet& sheet) { return sheet.thickness_m / sheet.conductivity_w_mk.likely; };
        double through = 0.0;
        if (face.kind == FaceKind::wall) {
            through = resistance_m2k_w(wall_sheets(box, g.faces[f].plane, g.faces[f].mat.has_value()));
            face.inside = face.outside = {Facing::vertical, g.air_height_m, factor};
        } else if (face.kind != FaceKind::mesh) {
            if (box.top == TopKind::pane)
                through += resistance(box.top_sheet);
            double length_m = area_over_perimeter_m(box.length_m, box.width_m);
            if (g.faces[f].cover) {
                const CoverPatch& cover = box.covers[*g.faces[f].cover];
                through += resistance(cover.sheet);
                length_m = area_over_perimeter_m(cover.area.length_m, cover.area.width_m);
            }
            face.inside = {Facing::down, length_m, factor};
            face.outside = {Facing::up, length_m, factor};
        }
        face.resistance_m2k_w = std::max(through, 1e-5); // thin metal: keeps the balance well scaled
    }
}

Lid free_lid(const Model& model, const Box& box, const Scene& scene)
{
    if (box.top == TopKind::pane)
        return {};
    double free_m2 = 0.0;
    for (std::size_t f = 0; f < model.faces.size(); ++f) {
        const auto& cover = scene.geometry.faces[f].cover;
        if (model.faces[f].kind == FaceKind::mesh)
            free_m2 += model.faces[f].area_m2;
        else if (cover)
            free_m2 += box.covers[*cover].leak.likely * model.faces[f].area_m2;
    }
    if (box.top == TopKind::mesh)
        free_m2 = std::max(0.0, free_m2 - under_domes_m2(box, {0.0, 0.0, box.length_m, box.width_m}));
    const double whole_m = 4.0 * area_over_perimeter_m(box.length_m, box.width_m);
    // The free part is taken as of the whole top's shape, so its diameter goes with the root of its area.
    return {.area_m2 = free_m2,
            .hydraulic_diameter_m = whole_m * std::sqrt(free_m2 / (box.length_m * box.width_m)),
            .open_fraction = box.top == TopKind::open ? 1.0 : box.mesh_open_fraction.likely};
}

void set_air(Model& model, const Box& box, const Scene& scene)
{
    const Geometry& g = scene.geometry;
    AirModel& air = model.air;
    air.exchange_factor = box.exchange_factor.likely;
    air.lid = free_lid(model, box, scene);
    std::vector<Opening> openings;
    double doorways = 0.0;
    for (const Vent& vent : box.vents) {
        openings.push_back({vent.free_area_m2, vent.height_m});
        doorways += doorway_coefficient(vent.free_area_m2);
    }
    if (air.lid.area_m2 > 0.0)
        openings.push_back({air.lid.area_m2 * air.lid.open_fraction, box.height_m});
    air.stack_m3_s = stack_coefficient(openings);
    air.doorway_m3_s = air.stack_m3_s > 0.0 ? 0.0 : doorways;
    const double floor_m2 = box.length_m * box.width_m;
    const double volume_m3 = floor_m2 * g.air_height_m;
    air.leak_kg_s = box.leak_air_changes_per_h.likely * volume_m3 / 3600.0 * model.room.density_kg_m3;
    air.mixing_kg_s = box.mixing_w_m2k.likely * floor_m2 / dry_air_heat_j_kgk;
    air.floor_diameter_m = 4.0 * area_over_perimeter_m(box.length_m, box.width_m);
}

} // namespace

bool set_air_and_moisture(Model& model, const Box& box, const Case& now, const Scene& scene)
{
    if (!set_room(model, now.room))
        return false;
    set_floor(model, box, scene);
    set_bowls(model, box, scene);
    set_face_films(model, box, scene);
    set_air(model, box, scene);
    return true;
}

} // namespace loam::climate
