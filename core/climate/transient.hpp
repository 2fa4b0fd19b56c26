// The balance in time.
#pragma once

#include <functional>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/climate/bordered.hpp"
#include "core/climate/film_store.hpp"
#include "core/climate/newton.hpp"
#include "core/climate/workspace.hpp"

namespace loam::climate {

// A model carried forward in time.
// Method: two-stage singly diagonally implicit Runge-Kutta, stiffly accurate, gamma = 1 - 1/sqrt(2), of second order
// (Alexander 1977, SIAM J. Numer. Anal. 14; from memory); what stores nothing is solved for at each stage's end.
class Stepper {
public:
    // `stored` per place as `storage_of` has it; `order` is that of elimination.
    Stepper(Model model, std::vector<double> stored, const std::vector<std::size_t>& order);

    const Model& model() const { return model_; }
    const std::vector<double>& values() const { return values_; }
    const Balance& balance_now() const { return balance_; }
    void set_values(std::vector<double> values) { values_ = std::move(values); }

    // Goes to the steady state. False where it is not found or `stop` was requested.
    bool settle(const std::vector<double>* start, const std::stop_token& stop);

    // `set` brings the model to a share of the step's time, 0 to 1. False where it does, where the step has no
    // solution, or where `stop` was requested.
    using Set = std::function<bool(Model&, double share)>;
    bool advance(double hours, const Set& set, const std::stop_token& stop);

private:
    bool stage(const std::vector<double>& base, double seconds, const std::stop_token& stop);

    Model model_;
    BorderedSolver solver_;
    std::vector<double> stored_;
    std::vector<double> values_;
    Balance balance_;
    double factored_s_ = 0.0; // length of the stage that the factors are for; 0: none
};

// One box under one set of devices, carried forward while its room warms or cools. Box and scene must outlive it.
class Transient {
public:
    // nullopt where a value is outside the range of its equation. `level` keeps the order of elimination.
    static std::optional<Transient> of(const Box& box, const Case& now, const Scene& scene, Workspace::Level& level);

    Stepper& stepper() { return stepper_; }
    const Stepper& stepper() const { return stepper_; }
    double room_c() const { return now_.room.temperature_c.likely; }
    // Takes over the temperatures and vapours of the same box under other devices; powers and irradiation follow.
    void carry_on_from(const Transient& other);
    // Where the box is misted in pulses: one of them.
    void spray(double kg_m2);
    // Goes on for a time in which the room goes straight from where it was to `room_c`.
    bool advance(double hours, double room_c, const std::stop_token& stop);

private:
    Transient(const Box& box, const Case& now, const Scene& scene, Stepper stepper);

    const Box* box_;
    Case now_;
    const Scene* scene_;
    Stepper stepper_;
    std::optional<FilmStore> film_; // absent: misting is spread evenly
};

} // namespace loam::climate
