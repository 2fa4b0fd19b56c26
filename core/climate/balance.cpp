#include "core/climate/balance.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/evaporation.hpp"
#include "core/climate/probe.hpp"
#include "core/climate/psychrometrics.hpp"
#include "core/units.hpp"

namespace loam::climate {

void Slopes::clear(std::size_t bricks)
{
    diagonal.assign(bricks, 0.0);
    brick_shared.clear();
    shared_brick.clear();
    shared_shared.clear();
}

double power_w(const Device& device, const Layout& layout, const std::vector<double>& solution)
{
    return device.regulated ? solution[layout.power(*device.regulated)] : device.fixed_w;
}

namespace {

// A flow and its slopes against the places that drive it.
struct Drive {
    std::size_t place = 0;
    double slope = 0.0;
};

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

class Assembly {
public:
    Assembly(const Model& model, const std::vector<double>& x, Slopes* slopes)
        : model_(model), layout_(model.layout), x_(x), slopes_(slopes)
    {
        result_.residual_w.assign(layout_.size(), 0.0);
        if (slopes_)
            slopes_->clear(layout_.bricks);
        emission_.assign(layout_.patches, 0.0);
    }

    std::optional<Balance> run()
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

private:
    double at(std::size_t place) const { return x_[place]; }

    void slope(std::size_t row, std::size_t column, double value)
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

    void leaves(std::size_t place, double flow_w) { result_.residual_w[place] += flow_w; }

    void leaves(std::size_t place, double flow_w, std::initializer_list<Drive> drives)
    {
        leaves(place, flow_w);
        if (slopes_)
            for (const Drive& drive : drives)
                slope(place, drive.place, drive.slope);
    }

    void flows(std::size_t from, std::size_t to, double flow_w, std::initializer_list<Drive> drives)
    {
        leaves(from, flow_w, drives);
        leaves(to, -flow_w);
        if (slopes_)
            for (const Drive& drive : drives)
                slope(to, drive.place, -drive.slope);
    }

    FilmValue film(const Film& film, double face_c, double air_c)
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

    Saturation saturated(double celsius)
    {
        const auto value = saturation(celsius);
        if (!value)
            valid_ = false;
        return value.value_or(Saturation{});
    }

    void convect(std::size_t face, std::size_t air, double area_m2, const FilmValue& h)
    {
        const double rise_k = at(face) - at(air);
        flows(
            face, air, area_m2 * h.w_m2k * rise_k,
            {{face, area_m2 * (h.w_m2k + h.per_face_k * rise_k)}, {air, area_m2 * (-h.w_m2k + h.per_air_k * rise_k)}});
    }

    // Heat to the room from an outer face by film and long-wave.
    void to_room(std::size_t face, double area_m2, const Film& outer, double emissivity)
    {
        const double room_c = model_.room.celsius;
        const FilmValue h = film(outer, at(face), room_c);
        const double rise_k = at(face) - room_c;
        const double flow_w =
            area_m2 * (h.w_m2k * rise_k + emissivity * (emitted_w_m2(at(face)) - emitted_w_m2(room_c)));
        const double per_k = area_m2 * (h.w_m2k + h.per_face_k * rise_k + emissivity * emitted_slope(at(face)));
        leaves(face, flow_w, {{face, per_k}});
        result_.losses.conducted_w += flow_w;
    }

    // Long-wave inside: what the face emits less what it takes of its patch's irradiation.
    void radiate(std::size_t face, std::size_t patch, double area_m2, double emissivity)
    {
        const std::size_t onto = layout_.irradiation(patch);
        const double weight = area_m2 * emissivity;
        leaves(face, weight * (emitted_w_m2(at(face)) - at(onto)),
               {{face, weight * emitted_slope(at(face))}, {onto, -weight}});
        emit(patch, weight * emitted_w_m2(at(face)));
        if (slopes_)
            emitters_.push_back({patch, face, weight * emitted_slope(at(face))});
    }

    void emit(std::size_t patch, double watts) { emission_[patch] += watts; }

    void conduction()
    {
        for (const Link& link : model_.links) {
            const double flow_w = link.w_k * (at(link.a) - at(link.b));
            leaves(link.a, flow_w);
            leaves(link.b, -flow_w);
        }
        for (std::size_t i = 0; i < layout_.bricks; ++i) {
            if (model_.side_w_k[i] == 0.0)
                continue;
            const double flow_w = model_.side_w_k[i] * (at(i) - model_.room.celsius);
            leaves(i, flow_w, {{i, model_.side_w_k[i]}});
            result_.losses.conducted_w += flow_w;
        }
    }

    void devices()
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
    void regulate(const Device& device)
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

    void undersides()
    {
        for (std::size_t c = 0; c < model_.columns(); ++c)
            to_room(model_.underside_of(c), model_.cell_m2, model_.underside.film, model_.underside.emissivity);
    }

    void floor_column(std::size_t c)
    {
        const std::size_t face = model_.surface(c);
        const double area_m2 = model_.floor.exposed_m2[c];
        if (area_m2 <= 0.0)
            return;
        const FilmValue h = film(model_.floor.film, at(face), at(layout_.lower_air()));
        convect(face, layout_.lower_air(), area_m2, h);
        radiate(face, model_.floor_patch[c], area_m2, model_.floor.emissivity);
        if (model_.floor.wetness > 0.0 || model_.floor.mist_kg_s_m2 > 0.0)
            evaporate(c, area_m2, h);
    }

    // Vapour from the damp share of the surface by the Lewis relation; misted water from the rest, as far as it lasts;
    // condensation on all of it where it is colder than the dew point.
    void evaporate(std::size_t c, double area_m2, const FilmValue& h)
    {
        const std::size_t face = model_.surface(c);
        const std::size_t air = layout_.lower_air();
        const std::size_t vapour = layout_.lower_vapour();
        const Saturation full = saturated(at(face));
        const double excess = full.humidity_ratio - at(vapour);
        const double open_kg_s = area_m2 * lewis_kg_s_m2(h.w_m2k); // of open water, per humidity ratio
        const double wet = excess > 0.0 ? model_.floor.wetness * (1.0 - model_.floor.dryness[c]) : 1.0;
        double flow_kg_s = wet * open_kg_s * excess;
        double share = wet; // of the open-water flow's slope
        const double mist_kg_s = model_.floor.mist_kg_s_m2 * area_m2;
        if (mist_kg_s > 0.0 && excess > 0.0) {
            const double lasting = std::exp(-(1.0 - wet) * open_kg_s * excess / mist_kg_s);
            flow_kg_s += mist_kg_s * (1.0 - lasting);
            share += lasting * (1.0 - wet);
        }
        (flow_kg_s > 0.0 ? result_.evaporation_kg_s : result_.condensation_kg_s) += std::abs(flow_kg_s);
        const double weight = latent_heat_j_kg * share;
        const double per_film = area_m2 / dry_air_heat_j_kgk * excess;
        flows(face, vapour, latent_heat_j_kg * flow_kg_s,
              {{face, weight * (open_kg_s * full.per_kelvin + per_film * h.per_face_k)},
               {air, weight * per_film * h.per_air_k},
               {vapour, -weight * open_kg_s}});
    }

    void bowl(std::size_t b)
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

    void pane(const FaceModel& face, std::size_t place)
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

    void condense(std::size_t face, std::size_t air, std::size_t vapour, double area_m2, const FilmValue& h)
    {
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
    void mesh(const FaceModel& face)
    {
        const std::size_t onto = layout_.irradiation(face.patch);
        const double weight = face.area_m2 * face.emissivity_inside;
        const double room_w_m2 = emitted_w_m2(model_.room.celsius);
        emit(face.patch, weight * room_w_m2);
        result_.losses.radiated_w += weight * (at(onto) - room_w_m2);
    }

    void irradiation()
    {
        const std::size_t n = layout_.patches;
        for (std::size_t p = 0; p < n; ++p) {
            const std::size_t place = layout_.irradiation(p);
            double sum_w_m2 = 0.0;
            for (std::size_t q = 0; q < n; ++q)
                sum_w_m2 += model_.longwave(p, q) * emission_[q] / model_.patch_m2[q];
            leaves(place, model_.patch_m2[p] * (at(place) - sum_w_m2), {{place, model_.patch_m2[p]}});
        }
        for (const Emitter& emitter : emitters_)
            for (std::size_t p = 0; p < n; ++p)
                slope(layout_.irradiation(p), emitter.place,
                      -model_.patch_m2[p] * model_.longwave(p, emitter.patch) / model_.patch_m2[emitter.patch] *
                          emitter.slope);
    }

    // ---- air ----

    struct State { // of one air, with its virtual temperature, which carries the vapour's lightness
        double celsius = 0.0;
        double ratio = 0.0;
        double virtual_k() const { return units::kelvin_from_celsius(celsius) * (1.0 + 0.608 * ratio); }
        double per_kelvin() const { return 1.0 + 0.608 * ratio; }
        double per_ratio() const { return units::kelvin_from_celsius(celsius) * 0.608; }
    };

    State lower() const { return {at(layout_.lower_air()), at(layout_.lower_vapour())}; }
    State upper() const { return {at(layout_.upper_air()), at(layout_.upper_vapour())}; }
    State room() const { return {model_.room.celsius, model_.room.humidity_ratio}; }

    // A mass flow and its slopes against the four air places.
    struct Draught {
        double kg_s = 0.0;
        std::vector<Drive> drives;
    };

    // Exchange each way between airs, or with the room where `to` is absent.
    void exchange(std::size_t from_air, std::size_t from_vapour, bool to_lower, const Draught& draught)
    {
        const bool outside = !to_lower;
        const double other_c = outside ? model_.room.celsius : at(layout_.lower_air());
        const double other_ratio = outside ? model_.room.humidity_ratio : at(layout_.lower_vapour());
        carry(from_air, dry_air_heat_j_kgk, other_c, outside ? none : layout_.lower_air(), draught,
              result_.losses.air_w);
        carry(from_vapour, latent_heat_j_kg, other_ratio, outside ? none : layout_.lower_vapour(), draught,
              result_.losses.vapour_w);
    }

    static constexpr std::size_t none = static_cast<std::size_t>(-1);

    void carry(std::size_t from, double per_kg, double other, std::size_t to, const Draught& draught, double& loss_w)
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

    // Density ratio by which `a` is lighter than `b`, slopes against its own temperature and humidity (the other
    // one's follow from symmetry).
    struct Lightness {
        double ratio = 0.0;
        double per_a = 0.0; // per kelvin of virtual temperature
        double per_b = 0.0;
    };
    static Lightness lightness(const State& a, const State& b)
    {
        const double sum = a.virtual_k() + b.virtual_k();
        return {2.0 * (a.virtual_k() - b.virtual_k()) / sum, 4.0 * b.virtual_k() / (sum * sum),
                -4.0 * a.virtual_k() / (sum * sum)};
    }

    void drive_by(Draught& draught, double per_virtual_k, const State& state, std::size_t air, std::size_t vapour) const
    {
        draught.drives.push_back({air, per_virtual_k * state.per_kelvin()});
        draught.drives.push_back({vapour, per_virtual_k * state.per_ratio()});
    }

    void air()
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

    void lid()
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
    void mixing()
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

    State mean_air() const
    {
        return {0.5 * (lower().celsius + upper().celsius), 0.5 * (lower().ratio + upper().ratio)};
    }

    Draught between_openings(double m3_s, double sign) const
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
    void stack(double sign)
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
    void carry_on(std::size_t second, std::size_t first, double per_kg, const Draught& draught, double& loss_w)
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

    void doorway()
    {
        if (model_.air.doorway_m3_s <= 0.0)
            return;
        for (const double sign : {1.0, -1.0}) {
            Draught draught = between_openings(0.5 * model_.air.doorway_m3_s, sign);
            exchange(layout_.upper_air(), layout_.upper_vapour(), false, draught);
            exchange(layout_.lower_air(), layout_.lower_vapour(), false, draught);
        }
    }

    struct Emitter {
        std::size_t patch = 0;
        std::size_t place = 0;
        double slope = 0.0;
    };

    const Model& model_;
    const Layout& layout_;
    const std::vector<double>& x_;
    Slopes* slopes_;
    Balance result_;
    std::vector<double> emission_; // W per patch
    std::vector<Emitter> emitters_;
    bool valid_ = true;
};

} // namespace

std::optional<Balance> balance(const Model& model, const std::vector<double>& solution, Slopes* slopes)
{
    return Assembly(model, solution, slopes).run();
}

} // namespace loam::climate
