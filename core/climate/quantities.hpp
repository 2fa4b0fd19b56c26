// Everything that is reported with a range, as functions of the solution.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/climate/balance.hpp"
#include "core/climate/body.hpp"
#include "core/climate/model.hpp"
#include "core/climate/newton.hpp"
#include "core/climate/spot.hpp"
#include "core/climate/zones.hpp"

namespace loam::climate {

enum class QuantityKind { reading, humidity, evaporation, bowl_evaporation };

struct Quantity {
    QuantityKind kind = QuantityKind::reading;
    Reading reading; // of humidity: the thermometer beside the hygrometer
    bool is_temperature = true;
    double per_model_k = 1.0; // how far a kelvin of the model's error moves it
};

struct ZoneQuantities {
    std::size_t surface = 0; // places among the quantities
    std::size_t ground = 0;
    std::size_t operative = 0;
    std::size_t humidity = 0;
};

// Where the extremes lie at the likely solution.
struct Places {
    Zones zones;
    std::size_t hottest_brick = 0; // down to the pane
    std::size_t hottest_column = 0;
    std::size_t hottest_perch = 0; // counts only where `on_perch`
    bool on_perch = false;
    std::optional<std::size_t> basking_perch; // the hottest in the beam: what a basker stands on there
    std::size_t hottest_face = 0;             // place of its inside in the solution
    std::vector<Spot> spots;                  // asked for by the keeper's readings
};
Places find_places(const Model& model, const Box& box, const Scene& scene, const std::vector<double>& solution);

struct Quantities {
    std::vector<Quantity> all;
    ZoneQuantities basking;
    ZoneQuantities warm;
    ZoneQuantities cool;
    std::size_t gradient = 0; // warm side less cool side, at ground level
    std::size_t hottest_surface = 0;
    std::size_t hottest_digging = 0;
    std::size_t hottest_pane = 0;
    std::size_t lower_air = 0;
    std::size_t upper_air = 0;
    std::size_t air_humidity = 0;
    std::size_t evaporation = 0;
    std::size_t bowl_evaporation = 0;
    std::vector<std::size_t> powers; // of the regulated devices, in their order
    std::vector<std::size_t> probes;
    std::vector<std::size_t> spots;
};
Quantities make_quantities(const Model& model, const Box& box, const Scene& scene, const Places& places,
                           const std::vector<double>& solution);

double value_of(const Quantity& quantity, const Model& model, const Solution& solution);

// Slopes against the whole solution. Evaporation is taken as what the air carries off, condensation held.
std::vector<double> gradient_of(const Quantity& quantity, const Model& model, const Solution& solution);

// A perch's upper face in the beam.
Body perch_body(const Box& box, const Scene& scene, std::size_t perch);

} // namespace loam::climate
