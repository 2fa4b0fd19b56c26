// Air between the two layers and the room.
#include <cmath>

#include "core/climate/assembly.hpp"
#include "core/climate/psychrometrics.hpp"
#include "core/units.hpp"

namespace loam::climate {

namespace {

// The positive part of a density ratio, rounded off below that of 0.05 K so that flows have slopes at rest. Room air
// never stands quite still either.
struct Rounded {
    double value = 0.0;
    double slope = 0.0;
};
Rounded positive_part(double ratio)
{
    constexpr double rest = 0.05 / 300.0;
    const double root = std::sqrt(ratio * ratio + rest * rest);
    return {0.5 * (ratio + root), 0.5 * (1.0 + ratio / root)};
}

} // namespace

double Assembly::State::virtual_k() const
{
    return units::kelvin_from_celsius(celsius) * per_kelvin();
}

double Assembly::State::per_ratio() const
{
    return units::kelvin_from_celsius(celsius) * 0.608;
}

// Exchange each way between airs, or with the room where `to` is absent.
void Assembly::exchange(std::size_t from_air, std::size_t from_vapour, bool to_lower, const Draught& draught)
{
    const bool outside = !to_lower;
    const double other_c = outside ? model_.room.celsius : at(layout_.lower_air());
    const double other_ratio = outside ? model_.room.humidity_ratio : at(layout_.lower_vapour());
    carry(from_air, dry_air_heat_j_kgk, other_c, outside ? none : layout_.lower_air(), draught, result_.losses.air_w);
    carry(from_vapour, latent_heat_j_kg, other_ratio, outside ? none : layout_.lower_vapour(), draught,
          result_.losses.vapour_w);
}

void Assembly::carry(std::size_t from, double per_kg, double other, std::size_t to, const Draught& draught,
                     double& loss_w)
{
    const double difference = at(from) - other;
    const double flow_w = draught.kg_s * per_kg * difference;
    const auto drive = [&](std::size_t row, double sign) {
        slope(row, from, sign * draught.kg_s * per_kg);
        if (to != none)
            slope(row, to, -sign * draught.kg_s * per_kg);
        for (const Drive& d : draught.drives)
            slope(row, d.place, sign * d.slope * per_kg * difference);
    };
    leaves(from, flow_w);
    drive(from, 1.0);
    if (to == none) {
        loss_w += flow_w;
        return;
    }
    leaves(to, -flow_w);
    drive(to, -1.0);
}

Assembly::Lightness Assembly::lightness(const State& a, const State& b)
{
    const double sum = a.virtual_k() + b.virtual_k();
    return {2.0 * (a.virtual_k() - b.virtual_k()) / sum, 4.0 * b.virtual_k() / (sum * sum),
            -4.0 * a.virtual_k() / (sum * sum)};
}

void Assembly::drive_by(Draught& draught, double per_virtual_k, const State& state, std::size_t air, std::size_t vapour)
{
    draught.drives.push_back({air, per_virtual_k * state.per_kelvin()});
    draught.drives.push_back({vapour, per_virtual_k * state.per_ratio()});
}

void Assembly::air()
{
    lid();
    mixing();
    stack(1.0);
    stack(-1.0);
    doorway();
    const Draught leak{0.5 * model_.air.leak_kg_s, {}};
    exchange(layout_.upper_air(), layout_.upper_vapour(), false, leak);
    exchange(layout_.lower_air(), layout_.lower_vapour(), false, leak);
}

void Assembly::lid()
{
    if (model_.air.lid.area_m2 <= 0.0)
        return;
    const Lightness light = lightness(upper(), room());
    const Rounded ratio = positive_part(light.ratio);
    const double step = 1e-4 * ratio.value;
    const auto flow = lid_exchange_m3_s(model_.air.lid, ratio.value);
    if (!flow) {
        valid_ = false;
        return;
    }
    const double scale = model_.room.density_kg_m3 * model_.air.exchange_factor;
    Draught draught{scale * *flow, {}};
    if (slopes_) {
        const double above = *lid_exchange_m3_s(model_.air.lid, ratio.value + step);
        const double below = *lid_exchange_m3_s(model_.air.lid, ratio.value - step);
        drive_by(draught, scale * (above - below) / (2.0 * step) * ratio.slope * light.per_a, upper(),
                 layout_.upper_air(), layout_.upper_vapour());
    }
    exchange(layout_.upper_air(), layout_.upper_vapour(), false, draught);
}

// Still mixing, and overturning where the lower air is the lighter one, as through an opening of the floor's size.
void Assembly::mixing()
{
    const Lightness light = lightness(lower(), upper());
    const Rounded ratio = positive_part(light.ratio);
    const double overturning =
        model_.room.density_kg_m3 * open_lid_m3_s(model_.air.floor_diameter_m, ratio.value).value_or(0.0);
    Draught draught{model_.air.mixing_kg_s + overturning, {}};
    const double per_ratio = 0.5 * overturning / ratio.value * ratio.slope;
    drive_by(draught, per_ratio * light.per_a, lower(), layout_.lower_air(), layout_.lower_vapour());
    drive_by(draught, per_ratio * light.per_b, upper(), layout_.upper_air(), layout_.upper_vapour());
    exchange(layout_.upper_air(), layout_.upper_vapour(), true, draught);
}

Assembly::State Assembly::mean_air() const
{
    return {0.5 * (lower().celsius + upper().celsius), 0.5 * (lower().ratio + upper().ratio)};
}

Assembly::Draught Assembly::between_openings(double m3_s, double sign) const
{
    const Lightness light = lightness(mean_air(), room());
    const Rounded ratio = positive_part(sign * light.ratio);
    const double flow = model_.room.density_kg_m3 * model_.air.exchange_factor * m3_s * std::sqrt(ratio.value);
    Draught draught{flow, {}};
    const double per_half = 0.25 * flow / ratio.value * ratio.slope * sign * light.per_a;
    drive_by(draught, per_half, mean_air(), layout_.lower_air(), layout_.lower_vapour());
    drive_by(draught, per_half, mean_air(), layout_.upper_air(), layout_.upper_vapour());
    return draught;
}

// Draught from the room through one air into the other and out: upwards for +1, downwards for -1.
void Assembly::stack(double sign)
{
    if (model_.air.stack_m3_s <= 0.0)
        return;
    const Draught draught = between_openings(model_.air.stack_m3_s, sign);
    const bool up = sign > 0.0;
    const std::size_t first = up ? layout_.lower_air() : layout_.upper_air();
    const std::size_t second = up ? layout_.upper_air() : layout_.lower_air();
    carry(first, dry_air_heat_j_kgk, model_.room.celsius, none, draught, result_.losses.air_w);
    carry_on(second, first, dry_air_heat_j_kgk, draught, result_.losses.air_w);
    carry(first + 2, latent_heat_j_kg, model_.room.humidity_ratio, none, draught, result_.losses.vapour_w);
    carry_on(second + 2, first + 2, latent_heat_j_kg, draught, result_.losses.vapour_w);
}

// What the second air gives to the stream that comes from the first and leaves.
void Assembly::carry_on(std::size_t second, std::size_t first, double per_kg, const Draught& draught, double& loss_w)
{
    const double difference = at(second) - at(first);
    const double flow_w = draught.kg_s * per_kg * difference;
    leaves(second, flow_w);
    loss_w += flow_w;
    slope(second, second, draught.kg_s * per_kg);
    slope(second, first, -draught.kg_s * per_kg);
    for (const Drive& d : draught.drives)
        slope(second, d.place, d.slope * per_kg * difference);
}

void Assembly::doorway()
{
    if (model_.air.doorway_m3_s <= 0.0)
        return;
    for (const double sign : {1.0, -1.0}) {
        Draught draught = between_openings(0.5 * model_.air.doorway_m3_s, sign);
        exchange(layout_.upper_air(), layout_.upper_vapour(), false, draught);
        exchange(layout_.lower_air(), layout_.lower_vapour(), false, draught);
    }
}

} // namespace loam::climate
