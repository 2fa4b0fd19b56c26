// What is known of a species, each figure with its source. Read from resources/species/*.json and the user's folder.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/explain.hpp"
#include "core/json/node.hpp"
#include "core/space/area_formula.hpp"

namespace loam::catalog {

enum class Group { land_turtle, tortoise, lizard, snake, frog };
enum class Habit { ground, burrowing, climbing };

// A band with its source. Each end may be absent; disagreeing sources are listed in `others`.
struct Band {
    std::optional<double> min;
    std::optional<double> max;
    Source source;
    std::vector<Source> others; // sources that disagree, their figures in the citation
    friend bool operator==(const Band&, const Band&) = default;
};

struct Temperatures {                      // degC
    std::optional<Band> basking_surface_c; // absent: the species has no basking spot
    std::optional<Band> warm_c;            // shaded thermometer at ground level
    std::optional<Band> cool_c;            // shaded thermometer at ground level
    std::optional<Band> night_c;           // ground level, healthy and not brumating
    std::optional<Band> harmful_c;         // body can't bear: below min or above max an animal comes to harm
    friend bool operator==(const Temperatures&, const Temperatures&) = default;
};

struct HumidityNeed { // 0..1, at ground level
    std::optional<Band> adult;
    std::optional<Band> juvenile;
    std::optional<double> juvenile_below_length_m;
    bool humid_hide = false;
    Source source;
    friend bool operator==(const HumidityNeed&, const HumidityNeed&) = default;
};

struct UvNeed {
    std::int64_t ferguson_zone = 1; // 1..4
    Source source;
    friend bool operator==(const UvNeed&, const UvNeed&) = default;
};

// Growth in length per year as a share of the present length, for an age span; slow and fast bound.
struct GrowthSpan {
    double from_age_years = 0.0;
    std::optional<double> to_age_years;
    double slow_per_year = 0.0;
    double fast_per_year = 0.0;
    Source source;
    friend bool operator==(const GrowthSpan&, const GrowthSpan&) = default;
};

// How it rests in the cold, for those that may.
struct CoolSeasonNeed {
    Band cold_c;     // of the place it rests in
    Band cold_weeks; // at that temperature
    friend bool operator==(const CoolSeasonNeed&, const CoolSeasonNeed&) = default;
};

struct Diet {
    std::optional<Band> monthly_cost_units; // units of `food_item` an adult eats a month
    std::string food_item;                  // a need kind of the price list, for example "food.greens"
    friend bool operator==(const Diet&, const Diet&) = default;
};

struct Species {
    std::string id; // scientific name, kebab-case
    std::string scientific_name;
    std::string common_name; // English; app/words may hold other languages by id
    Group group = Group::tortoise;
    Habit habit = Habit::ground;
    space::BodyMeasure measure = space::BodyMeasure::carapace;
    Band adult_length_m;                      // in `measure`
    std::optional<Band> adult_total_length_m; // where `measure` is not the total length
    std::optional<Band> adult_mass_kg;
    std::optional<Band> hatchling_length_m;
    Band lifespan_years;
    double back_height_ratio = 0.5; // height of the back over `measure`, for what an animal reaches
    Source back_height_source;
    bool solitary = true; // keeping one is sound; a second one is a finding
    bool males_fight = true;
    Source social_source;
    Temperatures temperatures;
    HumidityNeed humidity;
    std::optional<UvNeed> uv;
    Band photoperiod_h; // light a day
    Band substrate_depth_m;
    std::vector<std::string> substrates; // suited materials, best first
    std::vector<std::string> rules;      // ids of the space rules that apply to it
    std::vector<GrowthSpan> growth;      // empty: no published rate, the keeper's own measurements only
    Band water_changes_per_day;
    Band bowl_water_depth_ratio; // of `measure`
    bool brumates = false;
    Source brumation_source;
    std::optional<CoolSeasonNeed> cool_season; // absent: no figures, so no rest is planned with this program
    Diet diet;
    std::vector<std::string> notes; // cautions particular to it, as codes that app/words knows
    json::Extras extras;
    friend bool operator==(const Species&, const Species&) = default;
};

} // namespace loam::catalog
