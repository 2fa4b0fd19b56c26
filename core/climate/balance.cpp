#include "core/climate/balance.hpp"

#include <algorithm>
#include <numeric>

#include "core/climate/assembly.hpp"
#include "core/climate/probe.hpp"
#include "core/units.hpp"

namespace loam::climate {

void Slopes::clear(std::size_t bricks)
{
    diagonal.assign(bricks, 0.0);
    brick_shared.clear();
    shared_brick.clear();
    shared_shared.clear();
    emitters.clear();
}

void Slopes::add_from_bricks(std::span<const double> of_bricks, std::span<double> to_shared) const
{
    for (const Entry& entry : shared_brick)
        to_shared[entry.row] += entry.value * of_bricks[entry.column];
    std::vector<double> emitted(patches, 0.0);
    for (const Emitter& emitter : emitters)
        emitted[emitter.patch] += emitter.slope * of_bricks[emitter.brick];
    for (std::size_t p = 0; p < patches; ++p)
        to_shared[first_irradiation + p] += std::inner_product(
            emitted.begin(), emitted.end(), spread.begin() + static_cast<std::ptrdiff_t>(p * patches), 0.0);
}

void Slopes::add_to_bricks(std::span<const double> of_shared, std::span<double> to_bricks) const
{
    for (const Entry& entry : shared_brick)
        to_bricks[entry.column] += entry.value * of_shared[entry.row];
    std::vector<double> arriving(patches, 0.0);
    for (std::size_t p = 0; p < patches; ++p)
        for (std::size_t q = 0; q < patches; ++q)
            arriving[q] += spread[p * patches + q] * of_shared[first_irradiation + p];
    for (const Emitter& emitter : emitters)
        to_bricks[emitter.brick] += emitter.slope * arriving[emitter.patch];
}

double power_w(const Device& device, const Layout& layout, const std::vector<double>& solution)
{
    return device.regulated ? solution[layout.power(*device.regulated)] : device.fixed_w;
}

std::optional<Balance> balance(const Model& model, const std::vector<double>& solution, Slopes* slopes)
{
    return Assembly(model, solution, slopes).run();
}

double emitted_w_m2(double celsius)
{
    const double kelvin = units::kelvin_from_celsius(celsius);
    return units::stefan_boltzmann_w_m2_k4 * kelvin * kelvin * kelvin * kelvin;
}

double emitted_slope(double celsius)
{
    const double kelvin = units::kelvin_from_celsius(celsius);
    return 4.0 * units::stefan_boltzmann_w_m2_k4 * kelvin * kelvin * kelvin;
}

Assembly::Assembly(const Model& model, const std::vector<double>& x, Slopes* slopes)
    : model_(model), layout_(model.layout), x_(x), slopes_(slopes)
{
    result_.residual_w.assign(layout_.size(), 0.0);
    if (slopes_)
        slopes_->clear(layout_.bricks);
    emission_.assign(layout_.patches, 0.0);
}

std::optional<Balance> Assembly::run()
{
    conduction();
    devices();
    undersides();
    for (std::size_t c = 0; c < model_.columns(); ++c)
        floor_column(c);
    for (std::size_t b = 0; b < model_.bowls.size(); ++b)
        bowl(b);
    for (const FaceModel& face : model_.faces)
        face.place ? pane(face, *face.place) : mesh(face);
    air();
    irradiation();
    return valid_ ? std::optional(std::move(result_)) : std::nullopt;
}

void Assembly::slope(std::size_t row, std::size_t column, double value)
{
    if (!slopes_ || value == 0.0)
        return;
    const std::size_t bricks = layout_.bricks;
    if (row < bricks && column < bricks) {
        // Bricks meet each other only through links; anything else here is a brick with itself.
        slopes_->diagonal[row] += value;
    } else if (row < bricks) {
        slopes_->brick_shared.push_back({row, column - bricks, value});
    } else if (column < bricks) {
        slopes_->shared_brick.push_back({row - bricks, column, value});
    } else {
        slopes_->shared_shared.push_back({row - bricks, column - bricks, value});
    }
}

void Assembly::leaves(std::size_t place, double flow_w, std::initializer_list<Drive> drives)
{
    leaves(place, flow_w);
    if (slopes_)
        for (const Drive& drive : drives)
            slope(place, drive.place, drive.slope);
}

void Assembly::flows(std::size_t from, std::size_t to, double flow_w, std::initializer_list<Drive> drives)
{
    leaves(from, flow_w, drives);
    leaves(to, -flow_w);
    if (slopes_)
        for (const Drive& drive : drives)
            slope(to, drive.place, -drive.slope);
}

FilmValue Assembly::film(const Film& film, double face_c, double air_c)
{
    std::optional<FilmValue> value;
    if (slopes_)
        value = film_value(film, face_c, air_c);
    else if (const auto only = film_w_m2k(film, face_c, air_c))
        value = FilmValue{.w_m2k = *only};
    if (!value) {
        valid_ = false;
        return {};
    }
    return *value;
}

Saturation Assembly::saturated(double celsius)
{
    const auto value = saturation(celsius);
    if (!value)
        valid_ = false;
    return value.value_or(Saturation{});
}

void Assembly::convect(std::size_t face, std::size_t air, double area_m2, const FilmValue& h)
{
    const double rise_k = at(face) - at(air);
    flows(face, air, area_m2 * h.w_m2k * rise_k,
          {{face, area_m2 * (h.w_m2k + h.per_face_k * rise_k)}, {air, area_m2 * (-h.w_m2k + h.per_air_k * rise_k)}});
}

// Heat to the room from an outer face by film and long-wave.
void Assembly::to_room(std::size_t face, double area_m2, const Film& outer, double emissivity)
{
    const double room_c = model_.room.celsius;
    const FilmValue h = film(outer, at(face), room_c);
    const double rise_k = at(face) - room_c;
    const double flow_w = area_m2 * (h.w_m2k * rise_k + emissivity * (emitted_w_m2(at(face)) - emitted_w_m2(room_c)));
    const double per_k = area_m2 * (h.w_m2k + h.per_face_k * rise_k + emissivity * emitted_slope(at(face)));
    leaves(face, flow_w, {{face, per_k}});
    result_.losses.conducted_w += flow_w;
}

// Long-wave inside: what the face emits less what it takes of its patch's irradiation.
void Assembly::radiate(std::size_t face, std::size_t patch, double area_m2, double emissivity)
{
    const std::size_t onto = layout_.irradiation(patch);
    const double weight = area_m2 * emissivity;
    leaves(face, weight * (emitted_w_m2(at(face)) - at(onto)),
           {{face, weight * emitted_slope(at(face))}, {onto, -weight}});
    emission_[patch] += weight * emitted_w_m2(at(face));
    if (!slopes_)
        return;
    if (face < layout_.bricks)
        slopes_->emitters.push_back({patch, face, weight * emitted_slope(at(face))});
    else
        emitters_.push_back({patch, face, weight * emitted_slope(at(face))});
}

void Assembly::conduction()
{
    model_.stencil.add_flows({x_.data(), layout_.bricks}, {result_.residual_w.data(), layout_.bricks});
    for (std::size_t i = 0; i < layout_.bricks; ++i) {
        if (model_.side_w_k[i] == 0.0)
            continue;
        const double flow_w = model_.side_w_k[i] * (at(i) - model_.room.celsius);
        leaves(i, flow_w, {{i, model_.side_w_k[i]}});
        result_.losses.conducted_w += flow_w;
    }
}

void Assembly::devices()
{
    for (const Device& device : model_.devices) {
        const double drawn_w = power_w(device, layout_, x_);
        result_.drawn_w += drawn_w;
        result_.input_w += drawn_w * device.released;
        for (const auto& [place, share] : device.release) {
            leaves(place, -share * drawn_w);
            if (device.regulated)
                slope(place, layout_.power(*device.regulated), -share);
        }
        if (device.regulated)
            regulate(device);
    }
}

// The power lies between nothing and all, and where it does the probe is at its target.
void Assembly::regulate(const Device& device)
{
    const std::size_t place = layout_.power(*device.regulated);
    const double gain_w_k = std::max(1.0, device.installed_w / 5.0);
    const double short_k = device.setpoint_c - value_of(device.probe, x_);
    const double wish_w = at(place) + gain_w_k * short_k;
    const double given_w = std::clamp(wish_w, 0.0, device.installed_w);
    leaves(place, at(place) - given_w);
    if (given_w != wish_w) {
        slope(place, place, 1.0);
        return;
    }
    if (slopes_)
        for (const auto& [driver, weight] : slopes_of(device.probe, x_))
            slope(place, driver, gain_w_k * weight);
}

void Assembly::irradiation()
{
    const std::size_t n = layout_.patches;
    for (std::size_t p = 0; p < n; ++p) {
        const std::size_t place = layout_.irradiation(p);
        double sum_w_m2 = 0.0;
        for (std::size_t q = 0; q < n; ++q)
            sum_w_m2 += model_.longwave(p, q) * emission_[q] / model_.patch_m2[q];
        leaves(place, model_.patch_m2[p] * (at(place) - sum_w_m2), {{place, model_.patch_m2[p]}});
    }
    if (!slopes_)
        return;
    slopes_->patches = n;
    slopes_->first_irradiation = layout_.irradiation(0) - layout_.bricks;
    slopes_->spread.resize(n * n);
    for (std::size_t p = 0; p < n; ++p)
        for (std::size_t q = 0; q < n; ++q)
            slopes_->spread[p * n + q] = -model_.patch_m2[p] * model_.longwave(p, q) / model_.patch_m2[q];
    for (const Slopes::Entry& emitter : emitters_)
        for (std::size_t p = 0; p < n; ++p)
            slope(layout_.irradiation(p), emitter.column, slopes_->spread[p * n + emitter.row] * emitter.value);
}

} // namespace loam::climate
