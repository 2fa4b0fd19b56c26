// The bricks' conductances by direction, for products that run through memory in order.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "core/climate/bricks.hpp"

namespace loam::climate {

struct Stencil {
    std::size_t right = 0;      // how far the neighbour along x lies
    std::size_t back = 0;       // and the one along y
    std::vector<double> up_w_k; // per brick, to the one above; 0 where there is none; likewise below
    std::vector<double> right_w_k;
    std::vector<double> back_w_k;

    // Adds what flows from each brick to its neighbours at these temperatures, W.
    void add_flows(std::span<const double> celsius, std::span<double> flow_w) const;
};

Stencil stencil_of(const Bricks& bricks, const std::vector<Link>& links);

} // namespace loam::climate
