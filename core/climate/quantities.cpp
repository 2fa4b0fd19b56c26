#include "core/climate/quantities.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/body.hpp"
#include "core/climate/probe.hpp"
#include "core/climate/psychrometrics.hpp"

namespace loam::climate {

namespace {

constexpr double seconds_per_day = 86400.0;

double air_humidity(double celsius, double ratio)
{
    return relative_humidity(celsius, ratio).value_or(0.0);
}

// What the bowls lose, l a day; less than nothing where water condenses on theirs.
double bowls_l_per_day(const Model& model, const std::vector<double>& solution)
{
    const double vapour_pa = vapour_pressure_pa(solution[model.layout.lower_vapour()]);
    double flow_kg_s = 0.0;
    for (std::size_t b = 0; b < model.bowls.size(); ++b) {
        const BowlModel& bowl = model.bowls[b];
        const double water_pa = saturation_pressure_pa(solution[model.layout.bowl(b)]).value_or(vapour_pa);
        flow_kg_s += bowl.area_m2 * bowl.evaporation_kg_s_m2_pa * (water_pa - vapour_pa);
    }
    return flow_kg_s * seconds_per_day;
}

std::size_t add(Quantities& quantities, Quantity quantity)
{
    quantities.all.push_back(std::move(quantity));
    return quantities.all.size() - 1;
}

std::size_t add(Quantities& quantities, Reading reading, bool is_temperature = true)
{
    return add(quantities,
               Quantity{QuantityKind::reading, std::move(reading), is_temperature, is_temperature ? 1.0 : 0.0});
}

// A hygrometer in the lower air's vapour, as warm as the thermometer beside it. The model's error moves it by what a
// kelvin does to the saturation pressure there.
std::size_t add_humidity(Quantities& quantities, Reading beside, const Model& model,
                         const std::vector<double>& solution)
{
    const double ratio = solution[model.layout.lower_vapour()];
    const double here_c = value_of(beside, solution);
    const double per_k = 0.5 * (air_humidity(here_c - 1.0, ratio) - air_humidity(here_c + 1.0, ratio));
    return add(quantities, Quantity{QuantityKind::humidity, std::move(beside), false, per_k});
}

std::size_t add_place(Quantities& quantities, std::size_t place, bool is_temperature = true)
{
    return add(quantities, Reading{.temperatures = {{place, 1.0}}, .radiant = {}}, is_temperature);
}

} // namespace

Body perch_body(const Box& box, const Scene& scene, std::size_t perch)
{
    const Rect& area = box.perches[perch].area;
    Point at{area.x_m + 0.5 * area.length_m, area.y_m + 0.5 * area.width_m, 0.0};
    // The point of the perch nearest to the strongest lamp is what an animal finds.
    for (const Lamp& lamp : box.lamps)
        if (lamp.radiant_share.likely * lamp.power_w.likely > 0.0) {
            at.x_m = std::clamp(lamp.at.x_m, area.x_m, area.x_m + area.length_m);
            at.y_m = std::clamp(lamp.at.y_m, area.y_m, area.y_m + area.width_m);
            break;
        }
    at.z_m = scene.geometry.depth_m[scene.geometry.column_at(at.x_m, at.y_m)] + box.perches[perch].height_m;
    return {.at = at, .length_m = std::min(area.length_m, area.width_m), .seen_surface = 0.0};
}

Places find_places(const Model& model, const Box& box, const Scene& scene, const std::vector<double>& solution)
{
    const Geometry& g = scene.geometry;
    Places places;
    places.zones = find_zones(model, box, scene, solution);
    const std::size_t pane = g.place_of(BrickKind::pane);
    places.hottest_brick = pane;
    for (std::size_t c = 0; c < g.columns(); ++c) {
        if (solution[model.surface(c)] > solution[model.surface(places.hottest_column)])
            places.hottest_column = c;
        for (std::size_t k = pane; k < g.nz(); ++k)
            if (solution[c * g.nz() + k] > solution[places.hottest_brick])
                places.hottest_brick = c * g.nz() + k;
    }
    double hottest_c = solution[model.surface(places.hottest_column)];
    double basking_c = -INFINITY;
    const std::vector<double> light = irradiance_w_m2(model, box, scene, solution);
    const double in_beam = 0.5 * *std::max_element(light.begin(), light.end()); // as wide as beams are told
    for (std::size_t p = 0; p < box.perches.size(); ++p) {
        const Body body = perch_body(box, scene, p);
        const double perch_c = value_of(body_reading(model, box, scene, body, solution), solution);
        if (perch_c > hottest_c) {
            hottest_c = perch_c;
            places.hottest_perch = p;
            places.on_perch = true;
        }
        if (in_beam > 0.0 && light[g.column_at(body.at.x_m, body.at.y_m)] >= in_beam && perch_c > basking_c) {
            basking_c = perch_c;
            places.basking_perch = p;
            places.zones.basking.area = box.perches[p].area;
        }
    }
    double pane_c = -INFINITY;
    bool on_mat = false;
    for (std::size_t f = 0; f < model.faces.size(); ++f) {
        const FaceModel& face = model.faces[f];
        if (face.kind != FaceKind::wall)
            continue;
        const bool has_mat = g.faces[f].mat.has_value();
        const std::size_t inside = model.layout.face_inside(*face.place);
        if ((has_mat && !on_mat) || (has_mat == on_mat && solution[inside] > pane_c)) {
            on_mat = has_mat;
            pane_c = solution[inside];
            places.hottest_face = inside;
        }
    }
    return places;
}

Quantities make_quantities(const Model& model, const Box& box, const Scene& scene, const Places& places,
                           const std::vector<double>& solution)
{
    Quantities q;
    const auto add_zone = [&](const Zone& zone) {
        const std::size_t surface = add(q, surface_of(model, zone));
        const std::size_t ground = add(q, ground_of(model, zone));
        const std::size_t operative = add(q, operative_of(model, box, scene, zone, solution));
        return ZoneQuantities{surface, ground, operative, add_humidity(q, ground_of(model, zone), model, solution)};
    };
    q.basking = add_zone(places.zones.basking);
    // Always there, so that the figures stand in the same order on cells of any width.
    Reading stood_on = q.all[q.basking.surface].reading;
    Reading felt_there = q.all[q.basking.operative].reading;
    if (places.basking_perch) {
        Body body = perch_body(box, scene, *places.basking_perch);
        stood_on = body_reading(model, box, scene, body, solution);
        body.at.z_m += box.animal_back_m;
        body.length_m = box.animal_length_m;
        felt_there = body_reading(model, box, scene, body, solution);
    }
    q.basking.surface = add(q, std::move(stood_on));
    q.basking.operative = add(q, std::move(felt_there));
    q.warm = add_zone(places.zones.warm);
    q.cool = add_zone(places.zones.cool);
    q.gradient =
        add(q, mean_of({{ground_of(model, places.zones.warm), 1.0}, {ground_of(model, places.zones.cool), -1.0}}));
    q.hottest_surface =
        places.on_perch
            ? add(q, body_reading(model, box, scene, perch_body(box, scene, places.hottest_perch), solution))
            : add_place(q, model.surface(places.hottest_column));
    q.hottest_digging = add_place(q, places.hottest_brick);
    q.hottest_pane = add_place(q, places.hottest_face);
    q.lower_air = add_place(q, model.layout.lower_air());
    q.upper_air = add_place(q, model.layout.upper_air());
    q.air_humidity =
        add_humidity(q, {.temperatures = {{model.layout.lower_air(), 1.0}}, .radiant = {}}, model, solution);
    q.evaporation = add(q, Quantity{QuantityKind::evaporation, {}, false, 0.0});
    q.bowl_evaporation = add(q, Quantity{QuantityKind::bowl_evaporation, {}, false, 0.0});
    for (const Device& device : model.devices)
        if (device.regulated) {
            q.powers.push_back(add_place(q, model.layout.power(*device.regulated), false));
            q.probes.push_back(add(q, device.probe));
        }
    for (const Spot& spot : places.spots)
        q.spots.push_back(add(q, spot_reading(model, box, scene, spot, solution)));
    return q;
}

double value_of(const Quantity& quantity, const Model& model, const Solution& solution)
{
    switch (quantity.kind) {
    case QuantityKind::humidity:
        return air_humidity(value_of(quantity.reading, solution.values), solution.values[model.layout.lower_vapour()]);
    case QuantityKind::evaporation:
        return solution.balance.evaporation_kg_s * seconds_per_day;
    case QuantityKind::bowl_evaporation:
        return bowls_l_per_day(model, solution.values);
    case QuantityKind::reading:
        break;
    }
    return value_of(quantity.reading, solution.values);
}

std::vector<double> gradient_of(const Quantity& quantity, const Model& model, const Solution& solution)
{
    const Layout& layout = model.layout;
    std::vector<double> gradient(layout.size(), 0.0);
    if (quantity.kind == QuantityKind::reading) {
        for (const auto& [place, slope] : slopes_of(quantity.reading, solution.values))
            gradient[place] += slope;
        return gradient;
    }
    const auto differ = [&](std::size_t place, double step, const auto& value) {
        std::vector<double> up = solution.values;
        std::vector<double> down = solution.values;
        up[place] += step;
        down[place] -= step;
        gradient[place] = (value(up) - value(down)) / (2.0 * step);
    };
    if (quantity.kind == QuantityKind::humidity) {
        const double here_c = value_of(quantity.reading, solution.values);
        const double ratio = solution.values[layout.lower_vapour()];
        constexpr double step_k = 1e-3;
        const double per_k =
            (air_humidity(here_c + step_k, ratio) - air_humidity(here_c - step_k, ratio)) / (2.0 * step_k);
        for (const auto& [place, slope] : slopes_of(quantity.reading, solution.values))
            gradient[place] += per_k * slope;
        differ(layout.lower_vapour(), 1e-6,
               [&](const std::vector<double>& at) { return air_humidity(here_c, at[layout.lower_vapour()]); });
        return gradient;
    }
    if (quantity.kind == QuantityKind::bowl_evaporation) {
        const auto of_bowls = [&](const std::vector<double>& at) { return bowls_l_per_day(model, at); };
        differ(layout.lower_vapour(), 1e-6, of_bowls);
        for (std::size_t b = 0; b < model.bowls.size(); ++b)
            differ(layout.bowl(b), 1e-3, of_bowls);
        return gradient;
    }
    const auto carried_off = [&](const std::vector<double>& at) {
        const auto there = balance(model, at, nullptr);
        return (there ? there->losses.vapour_w : solution.balance.losses.vapour_w) / latent_heat_j_kg * seconds_per_day;
    };
    differ(layout.lower_air(), 1e-3, carried_off);
    differ(layout.upper_air(), 1e-3, carried_off);
    differ(layout.lower_vapour(), 1e-6, carried_off);
    differ(layout.upper_vapour(), 1e-6, carried_off);
    return gradient;
}

} // namespace loam::climate
