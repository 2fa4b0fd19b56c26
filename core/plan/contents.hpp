// What stands in the box: animals, bed, fittings, and the keeper's thermometer readings.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/json/node.hpp"

namespace loam::plan {

enum class Sex { unknown, female, male };

// What the keeper, or better a vet, says of it.
enum class Condition { well, underweight, ill };

// A rest in the cold that the keeper asks for; nothing plans one by itself.
struct CoolSeason {
    std::string begins;                     // YYYY-MM-DD: the first day without food
    std::optional<std::int64_t> cold_weeks; // at rest, without winding down and warming up
    std::optional<std::string> vet_checked; // YYYY-MM-DD
    json::Extras extras;
    friend bool operator==(const CoolSeason&, const CoolSeason&) = default;
};

// What the keeper measured on a day: of one animal, or the mean of a group's.
struct Measurement {
    std::string id;
    std::string date;               // YYYY-MM-DD
    std::optional<double> length_m; // by the species' own measure
    std::optional<double> mass_kg;
    json::Extras extras;
    friend bool operator==(const Measurement&, const Measurement&) = default;
};

// One or several animals of one species, sex and size.
struct Animal {
    std::string id;
    std::string species; // by scientific name, kebab-case
    std::int64_t count = 1;
    std::optional<Sex> sex;
    std::optional<double> length_m; // by the species' own measure: carapace, snout to vent, or total
    std::optional<double> mass_kg;
    std::optional<double> age_years;
    std::optional<Condition> condition;
    std::optional<CoolSeason> cool_season;
    std::vector<Measurement> measurements; // in any order; the newest counts before length_m and mass_kg
    json::Extras extras;
    friend bool operator==(const Animal&, const Animal&) = default;
};

// Layers lie in the order of the list, the first on the base pane.
struct SubstrateLayer {
    std::string id;
    std::string material;
    double depth_m = 0.08;                  // settled
    std::optional<double> depth_at_right_m; // of a bed that slopes along x; absent: level
    std::optional<double> water_fraction;   // volume of water over volume of bed, 0..1
    json::Extras extras;
    friend bool operator==(const SubstrateLayer&, const SubstrateLayer&) = default;
};

enum class FittingKind { water_bowl, hide, humid_hide, rock, log, plant, feeding_dish };

struct Fitting {
    std::string id;
    FittingKind kind = FittingKind::hide;
    double x_m = 0.0;
    double y_m = 0.0;
    double length_m = 0.1;
    double width_m = 0.1;
    std::optional<double> height_m;
    std::optional<double> rotation_deg; // about its centre, counter-clockwise seen from above
    std::optional<double> mass_kg;
    std::optional<double> water_depth_m; // of a bowl
    std::optional<bool> walkable;        // the animal can walk over it or through it
    json::Extras extras;
    friend bool operator==(const Fitting&, const Fitting&) = default;
};

enum class Measure { surface, ground, operative };
enum class LampState { on, off };

struct Reading {
    std::string id;
    Measure measure = Measure::ground;
    double x_m = 0.0;
    double y_m = 0.0;
    double value_c = 0.0;
    std::optional<double> accuracy_k;
    std::optional<LampState> lamps;
    std::optional<double> room_c;
    std::optional<std::string> date; // YYYY-MM-DD
    json::Extras extras;
    friend bool operator==(const Reading&, const Reading&) = default;
};

} // namespace loam::plan
