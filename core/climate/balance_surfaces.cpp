// What happens at faces: underside, bed, bowls, panes, mesh.
#include <algorithm>
#include <cmath>

#include "core/climate/assembly.hpp"
#include "core/climate/evaporation.hpp"
#include "core/climate/psychrometrics.hpp"
#include "core/units.hpp"

namespace loam::climate {

namespace {
constexpr double wet_below_c = 90.0; // hotter than this nothing stays wet
} // namespace

void Assembly::undersides()
{
    for (std::size_t c = 0; c < model_.columns(); ++c)
        to_room(model_.underside_of(c), model_.cell_m2, model_.underside.film, model_.underside.emissivity);
}

void Assembly::floor_column(std::size_t c)
{
    const std::size_t face = model_.surface(c);
    const double area_m2 = model_.floor.exposed_m2[c];
    if (area_m2 <= 0.0)
        return;
    const FilmValue h = film(model_.floor.film, at(face), at(layout_.lower_air()));
    convect(face, layout_.lower_air(), area_m2, h);
    radiate(face, model_.floor_patch[c], area_m2, model_.floor.emissivity);
    if (model_.floor.wetness > 0.0 || model_.floor.mist_at(c) > 0.0)
        evaporate(c, area_m2, h);
}

// Vapour from the damp share of the surface by the Lewis relation; misted water from the rest, as far as it lasts;
// condensation on all of it where it is colder than the dew point.
void Assembly::evaporate(std::size_t c, double area_m2, const FilmValue& h)
{
    const std::size_t face = model_.surface(c);
    const std::size_t air = layout_.lower_air();
    const std::size_t vapour = layout_.lower_vapour();
    // The damp share of what is so hot has long dried, and what is misted on it goes at once.
    Saturation full = saturated(std::min(at(face), wet_below_c));
    if (at(face) > wet_below_c)
        full.per_kelvin = 0.0;
    const double excess = full.humidity_ratio - at(vapour);
    const double open_kg_s = area_m2 * lewis_kg_s_m2(h.w_m2k); // of open water, per humidity ratio
    const double wet = excess > 0.0 ? model_.floor.wetness * (1.0 - model_.floor.dryness[c]) : 1.0;
    double flow_kg_s = wet * open_kg_s * excess;
    double share = wet; // of the open-water flow's slope
    const double mist_kg_s = model_.floor.mist_at(c) * area_m2;
    if (mist_kg_s > 0.0 && excess > 0.0) {
        const MistFlow mist = mist_flow(mist_kg_s, (1.0 - wet) * open_kg_s * excess);
        flow_kg_s += mist.flow;
        share += mist.lasting * (1.0 - wet);
    }
    (flow_kg_s > 0.0 ? result_.evaporation_kg_s : result_.condensation_kg_s) += std::abs(flow_kg_s);
    const double weight = latent_heat_j_kg * share;
    const double per_film = area_m2 / dry_air_heat_j_kgk * excess;
    flows(face, vapour, latent_heat_j_kg * flow_kg_s,
          {{face, weight * (open_kg_s * full.per_kelvin + per_film * h.per_face_k)},
           {air, weight * per_film * h.per_air_k},
           {vapour, -weight * open_kg_s}});
}

void Assembly::bowl(std::size_t b)
{
    // Through the bowl's wall into the bed: stirred by evaporation above, some millimetres of plastic or ceramic.
    constexpr double seat_w_m2k = 50.0;
    const BowlModel& bowl = model_.bowls[b];
    const std::size_t water = layout_.bowl(b);
    if (bowl.area_m2 <= 0.0) { // lies outside the floor
        leaves(water, at(water) - model_.room.celsius, {{water, 1.0}});
        return;
    }
    for (const auto& [column, area_m2] : bowl.columns) {
        const std::size_t below = model_.surface(column);
        const double w_k = seat_w_m2k * area_m2;
        flows(water, below, w_k * (at(water) - at(below)), {{water, w_k}, {below, -w_k}});
        radiate(water, model_.floor_patch[column], area_m2, 0.96);
    }
    convect(water, layout_.lower_air(), bowl.area_m2, film(bowl.film, at(water), at(layout_.lower_air())));
    const Saturation full = saturated(at(water));
    const std::size_t vapour = layout_.lower_vapour();
    const auto slope_pa = [](double ratio) {
        const double whole = vapour_mass_ratio + ratio;
        return units::standard_pressure_pa * vapour_mass_ratio / (whole * whole);
    };
    const double weight = bowl.area_m2 * bowl.evaporation_kg_s_m2_pa;
    const double flow_kg_s = weight * (vapour_pressure_pa(full.humidity_ratio) - vapour_pressure_pa(at(vapour)));
    (flow_kg_s > 0.0 ? result_.evaporation_kg_s : result_.condensation_kg_s) += std::abs(flow_kg_s);
    flows(water, vapour, latent_heat_j_kg * flow_kg_s,
          {{water, latent_heat_j_kg * weight * slope_pa(full.humidity_ratio) * full.per_kelvin},
           {vapour, -latent_heat_j_kg * weight * slope_pa(at(vapour))}});
}

void Assembly::pane(const FaceModel& face, std::size_t place)
{
    const std::size_t inside = layout_.face_inside(place);
    const std::size_t outside = layout_.face_outside(place);
    const std::size_t air = face.upper ? layout_.upper_air() : layout_.lower_air();
    const std::size_t vapour = face.upper ? layout_.upper_vapour() : layout_.lower_vapour();
    const FilmValue h = film(face.inside, at(inside), at(air));
    convect(inside, air, face.area_m2, h);
    radiate(inside, face.patch, face.area_m2, face.emissivity_inside);
    const double w_k = face.area_m2 / face.resistance_m2k_w;
    flows(inside, outside, w_k * (at(inside) - at(outside)), {{inside, w_k}, {outside, -w_k}});
    to_room(outside, face.area_m2, face.outside, face.emissivity_outside);
    condense(inside, air, vapour, face.area_m2, h);
}

void Assembly::condense(std::size_t face, std::size_t air, std::size_t vapour, double area_m2, const FilmValue& h)
{
    if (at(face) > wet_below_c)
        return;
    const Saturation full = saturated(at(face));
    const double excess = at(vapour) - full.humidity_ratio;
    if (excess <= 0.0)
        return;
    const double open_kg_s = area_m2 * lewis_kg_s_m2(h.w_m2k);
    const double per_film = latent_heat_j_kg * area_m2 / dry_air_heat_j_kgk * excess;
    result_.condensation_kg_s += open_kg_s * excess;
    flows(vapour, face, latent_heat_j_kg * open_kg_s * excess,
          {{vapour, latent_heat_j_kg * open_kg_s},
           {face, -latent_heat_j_kg * open_kg_s * full.per_kelvin + per_film * h.per_face_k},
           {air, per_film * h.per_air_k}});
}

// The mesh as a window to the room; what its wires send back counts as reflected.
void Assembly::mesh(const FaceModel& face)
{
    const std::size_t onto = layout_.irradiation(face.patch);
    const double weight = face.area_m2 * face.emissivity_inside;
    const double room_w_m2 = emitted_w_m2(model_.room.celsius);
    emission_[face.patch] += weight * room_w_m2;
    result_.losses.radiated_w += weight * (at(onto) - room_w_m2);
}

} // namespace loam::climate
