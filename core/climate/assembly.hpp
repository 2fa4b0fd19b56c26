// The residual of the balance as it is summed up; only balance*.cpp include this.
#pragma once

#include <cstddef>
#include <initializer_list>
#include <optional>
#include <vector>

#include "core/climate/balance.hpp"
#include "core/climate/psychrometrics.hpp"

namespace loam::climate {

// Black-body emission, W/m2, and its slope per kelvin.
double emitted_w_m2(double celsius);
double emitted_slope(double celsius);

class Assembly {
public:
    Assembly(const Model& model, const std::vector<double>& x, Slopes* slopes);
    std::optional<Balance> run();

private:
    // A place that drives a flow, and the flow's slope against it.
    struct Drive {
        std::size_t place = 0;
        double slope = 0.0;
    };
    // One air; its virtual temperature carries the vapour's lightness.
    struct State {
        double celsius = 0.0;
        double ratio = 0.0;
        double virtual_k() const;
        double per_kelvin() const { return 1.0 + 0.608 * ratio; }
        double per_ratio() const;
    };
    // A mass flow and its slopes against the places of the airs.
    struct Draught {
        double kg_s = 0.0;
        std::vector<Drive> drives;
    };
    // Density ratio by which one air is lighter than another, slopes per kelvin of either virtual temperature.
    struct Lightness {
        double ratio = 0.0;
        double per_a = 0.0;
        double per_b = 0.0;
    };
    static constexpr std::size_t none = static_cast<std::size_t>(-1);

    double at(std::size_t place) const { return x_[place]; }
    void slope(std::size_t row, std::size_t column, double value);
    void leaves(std::size_t place, double flow_w) { result_.residual_w[place] += flow_w; }
    void leaves(std::size_t place, double flow_w, std::initializer_list<Drive> drives);
    void flows(std::size_t from, std::size_t to, double flow_w, std::initializer_list<Drive> drives);
    FilmValue film(const Film& film, double face_c, double air_c);
    Saturation saturated(double celsius);
    void convect(std::size_t face, std::size_t air, double area_m2, const FilmValue& h);
    void to_room(std::size_t face, double area_m2, const Film& outer, double emissivity);
    void radiate(std::size_t face, std::size_t patch, double area_m2, double emissivity);
    void conduction();
    void devices();
    void regulate(const Device& device);
    void irradiation();

    void undersides();
    void floor_column(std::size_t c);
    void evaporate(std::size_t c, double area_m2, const FilmValue& h);
    void bowl(std::size_t b);
    void pane(const FaceModel& face, std::size_t place);
    void condense(std::size_t face, std::size_t air, std::size_t vapour, double area_m2, const FilmValue& h);
    void mesh(const FaceModel& face);

    State lower() const { return {at(layout_.lower_air()), at(layout_.lower_vapour())}; }
    State upper() const { return {at(layout_.upper_air()), at(layout_.upper_vapour())}; }
    State room() const { return {model_.room.celsius, model_.room.humidity_ratio}; }
    State mean_air() const;
    static Lightness lightness(const State& a, const State& b);
    static void drive_by(Draught& draught, double per_virtual_k, const State& state, std::size_t air,
                         std::size_t vapour);
    // Exchange each way with the lower air, or else with the room.
    void exchange(std::size_t from_air, std::size_t from_vapour, bool to_lower, const Draught& draught);
    void carry(std::size_t from, double per_kg, double other, std::size_t to, const Draught& draught, double& loss_w);
    void carry_on(std::size_t second, std::size_t first, double per_kg, const Draught& draught, double& loss_w);
    void air();
    void lid();
    void mixing();
    void stack(double sign);
    void doorway();
    Draught between_openings(double m3_s, double sign) const;

    const Model& model_;
    const Layout& layout_;
    const std::vector<double>& x_;
    Slopes* slopes_;
    Balance result_;
    std::vector<double> emission_;        // W per patch
    std::vector<Slopes::Entry> emitters_; // other than bricks: patch, place, slope
    bool valid_ = true;
};

} // namespace loam::climate
