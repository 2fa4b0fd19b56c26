#include "core/climate/zones.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/balance.hpp"
#include "core/climate/body.hpp"
#include "core/climate/probe.hpp"

namespace loam::climate {

namespace {

struct Block {
    std::size_t i = 0;
    std::size_t j = 0;
    std::size_t wide = 1;
    std::size_t deep = 1;
};

Zone zone_of(const Geometry& g, const Block& block)
{
    Zone zone;
    for (std::size_t j = block.j; j < block.j + block.deep; ++j)
        for (std::size_t i = block.i; i < block.i + block.wide; ++i)
            zone.columns.emplace_back(j * g.nx + i, 1.0 / static_cast<double>(block.wide * block.deep));
    zone.area = {static_cast<double>(block.i) * g.dx_m, static_cast<double>(block.j) * g.dy_m,
                 static_cast<double>(block.wide) * g.dx_m, static_cast<double>(block.deep) * g.dy_m};
    return zone;
}

Zone hottest_block(const Model& model, const Geometry& g, double side_m, const std::vector<double>& solution)
{
    const auto cells = [side_m](double step_m, std::size_t most) {
        return std::clamp<std::size_t>(static_cast<std::size_t>(std::lround(side_m / step_m)), 1, most);
    };
    Block block{0, 0, cells(g.dx_m, g.nx), cells(g.dy_m, g.ny)};
    const auto mean_c = [&](const Block& at) {
        double sum = 0.0;
        for (std::size_t j = at.j; j < at.j + at.deep; ++j)
            for (std::size_t i = at.i; i < at.i + at.wide; ++i)
                sum += solution[model.surface(j * g.nx + i)];
        return sum / static_cast<double>(at.wide * at.deep);
    };
    Block best = block;
    double best_c = -INFINITY;
    for (block.j = 0; block.j + block.deep <= g.ny; ++block.j)
        for (block.i = 0; block.i + block.wide <= g.nx; ++block.i)
            if (const double here_c = mean_c(block); here_c > best_c + 1e-9) {
                best_c = here_c;
                best = block;
            }
    return zone_of(g, best);
}

void keep_least_lit(Zone& zone, const std::vector<double>& light)
{
    std::stable_sort(zone.columns.begin(), zone.columns.end(),
                     [&light](const auto& a, const auto& b) { return light[a.first] < light[b.first]; });
    zone.columns.resize(std::max<std::size_t>(1, zone.columns.size() / 4));
    for (auto& column : zone.columns)
        column.second = 1.0 / static_cast<double>(zone.columns.size());
}

Zone outside_spot(Zone zone, const std::vector<double>& light)
{
    const double peak = *std::max_element(light.begin(), light.end());
    if (peak <= 0.0)
        return zone;
    std::vector<std::pair<std::size_t, double>> shaded;
    double sum = 0.0;
    for (const auto& [column, weight] : zone.columns)
        if (const double share = std::clamp((0.65 - light[column] / peak) / 0.3, 0.0, 1.0); share > 0.0) {
            shaded.emplace_back(column, weight * share);
            sum += weight * share;
        }
    if (sum < 0.05) {
        keep_least_lit(zone, light);
        return zone;
    }
    for (auto& column : shaded)
        column.second /= sum;
    zone.columns = std::move(shaded);
    return zone;
}

Reading mean_over(const Zone& zone, const auto& reading_at)
{
    std::vector<std::pair<Reading, double>> parts;
    for (const auto& [column, weight] : zone.columns)
        parts.emplace_back(reading_at(column), weight);
    return mean_of(parts);
}

// Up to nine columns spread over the zone: bodies are dear to work out.
Zone few_of(const Zone& zone)
{
    constexpr std::size_t most = 9;
    Zone few{.columns = {}, .area = zone.area};
    const std::size_t count = std::min(most, zone.columns.size());
    double sum = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        few.columns.push_back(zone.columns[(2 * i + 1) * zone.columns.size() / (2 * count)]);
        sum += few.columns.back().second;
    }
    for (auto& column : few.columns)
        column.second /= sum;
    return few;
}

} // namespace

Reading surface_of(const Model& model, const Zone& zone)
{
    return mean_over(zone, [&](std::size_t c) {
        return Reading{.temperatures = {{model.surface(c), 1.0}}, .radiant = {}};
    });
}

Reading ground_of(const Model& model, const Zone& zone)
{
    return mean_over(zone, [&](std::size_t c) { return ground_reading(model, c); });
}

Reading operative_of(const Model& model, const Box& box, const Scene& scene, const Zone& zone,
                     const std::vector<double>& solution)
{
    const Geometry& g = scene.geometry;
    return mean_over(few_of(zone), [&](std::size_t c) {
        const Body body{.at = {g.x_m(c), g.y_m(c), g.depth_m[c] + box.animal_back_m}, .length_m = box.animal_length_m};
        return body_reading(model, box, scene, body, solution);
    });
}

std::vector<double> irradiance_w_m2(const Model& model, const Box& box, const Scene& scene,
                                    const std::vector<double>& solution)
{
    const Geometry& g = scene.geometry;
    std::vector<double> sum(g.columns(), 0.0);
    for (std::size_t l = 0; l < box.lamps.size(); ++l) {
        const double beam_w = power_w(model.devices[l], model.layout, solution) * box.lamps[l].radiant_share.likely;
        for (std::size_t r = 0; r < scene.casts[l].column.size(); ++r) {
            const double passed = beam_w * region_transmittance(box, r, box.lamps[l]) / model.cell_m2;
            for (std::size_t c = 0; c < g.columns(); ++c)
                sum[c] += passed * scene.casts[l].column[r][c];
        }
    }
    return sum;
}

Zones find_zones(const Model& model, const Box& box, const Scene& scene, const std::vector<double>& solution)
{
    const Geometry& g = scene.geometry;
    const std::vector<double> light = irradiance_w_m2(model, box, scene, solution);
    const std::size_t third = std::max<std::size_t>(1, g.nx / 3);
    const Zone left = zone_of(g, {0, 0, third, g.ny});
    const Zone right = zone_of(g, {g.nx - third, 0, third, g.ny});
    const Zone left_shade = outside_spot(left, light);
    const Zone right_shade = outside_spot(right, light);
    const bool left_warmer =
        value_of(ground_of(model, left_shade), solution) >= value_of(ground_of(model, right_shade), solution);
    return {.basking = hottest_block(model, g, box.animal_length_m, solution),
            .warm = left_warmer ? left_shade : right_shade,
            .cool = left_warmer ? right_shade : left_shade};
}

} // namespace loam::climate
