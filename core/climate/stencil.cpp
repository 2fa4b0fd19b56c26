#include "core/climate/stencil.hpp"

namespace loam::climate {

namespace {

void add_along(std::span<const double> w_k, std::size_t step, std::span<const double> celsius, std::span<double> flow_w)
{
    if (celsius.size() <= step)
        return;
    const std::size_t pairs = celsius.size() - step;
    const double* from = celsius.data();
    const double* to = celsius.data() + step;
    for (std::size_t i = 0; i < pairs; ++i) // two passes, so that each is free of what the other writes
        flow_w[i] += w_k[i] * (from[i] - to[i]);
    for (std::size_t i = 0; i < pairs; ++i)
        flow_w[i + step] -= w_k[i] * (from[i] - to[i]);
}

} // namespace

void Stencil::add_flows(std::span<const double> celsius, std::span<double> flow_w) const
{
    add_along(up_w_k, 1, celsius, flow_w);
    add_along(right_w_k, right, celsius, flow_w);
    add_along(back_w_k, back, celsius, flow_w);
}

Stencil stencil_of(const Bricks& bricks, const std::vector<Link>& links)
{
    const std::vector<double> zeros(bricks.count(), 0.0);
    Stencil stencil{
        .right = bricks.nz, .back = bricks.nx * bricks.nz, .up_w_k = zeros, .right_w_k = zeros, .back_w_k = zeros};
    for (const Link& link : links) {
        if (link.b == link.a + 1)
            stencil.up_w_k[link.a] = link.w_k;
        else
            (link.b == link.a + bricks.nz ? stencil.right_w_k : stencil.back_w_k)[link.a] = link.w_k;
    }
    return stencil;
}

} // namespace loam::climate
