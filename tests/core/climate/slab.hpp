// A bare slab in time: bricks in a column of 1 m2 between the room and nothing, without air, light or moisture, so that
// closed forms apply to the very scheme that carries the whole balance.
#pragma once

#include <numeric>

#include "core/climate/transient.hpp"

namespace loam::climate::test {

struct Slab {
    std::size_t bricks = 1;
    double depth_m = 0.1; // of the brick on top only where there is one
    double conductivity_w_mk = 0.3;
    double capacity_j_m3k = 1e6;
    double film_w_m2k = 10.0; // between the top and the room; the bottom is adiabatic
    double start_c = 20.0;
    double room_c = 20.0;
};

inline Stepper stepper_of(const Slab& slab)
{
    Model model;
    model.nx = 1;
    model.nz = slab.bricks;
    model.cell_m2 = 1.0;
    model.floor_patch = {0};
    model.layout.bricks = slab.bricks;
    model.room = {.celsius = slab.room_c, .humidity_ratio = 0.005, .density_kg_m3 = 1.2};
    const double brick_m = slab.depth_m / static_cast<double>(slab.bricks);
    const Bricks bricks{.nx = 1,
                        .ny = 1,
                        .nz = slab.bricks,
                        .dx_m = {1.0},
                        .dy_m = {1.0},
                        .thickness_m = std::vector<double>(slab.bricks, brick_m),
                        .conductivity_w_mk = std::vector<double>(slab.bricks, slab.conductivity_w_mk),
                        .joint_m2k_w = {}};
    model.links = conduction_links(bricks);
    model.stencil = stencil_of(bricks, model.links);
    model.side_w_k.assign(slab.bricks, 0.0);
    model.side_w_k.back() = 1.0 / (1.0 / slab.film_w_m2k + 0.5 * brick_m / slab.conductivity_w_mk);
    model.floor.exposed_m2 = {0.0};
    model.floor.dryness = {0.0};
    model.underside.film = {Facing::down, 0.1, 0.0};
    model.air.leak_kg_s = 0.001; // the airs stay the room's
    model.air.mixing_kg_s = 0.001;
    model.air.floor_diameter_m = 1.0;
    std::vector<double> stored(slab.bricks, brick_m * slab.capacity_j_m3k);
    stored.resize(model.layout.size(), 0.0);
    std::vector<std::size_t> order(slab.bricks);
    std::iota(order.begin(), order.end(), 0);
    std::vector<double> start(model.layout.size(), slab.start_c);
    for (const std::size_t air : {model.layout.lower_air(), model.layout.upper_air()})
        start[air] = slab.room_c;
    for (const std::size_t vapour : {model.layout.lower_vapour(), model.layout.upper_vapour()})
        start[vapour] = 0.005;
    Stepper stepper(std::move(model), std::move(stored), order);
    stepper.set_values(std::move(start));
    return stepper;
}

inline const Stepper::Set steady_room = [](Model&, double) { return true; };

} // namespace loam::climate::test
