// Whether an animal may rest through the winter at all. Nothing here plans a rest that nobody asked for.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/explain.hpp"

namespace loam::season {

enum class Health { well, underweight, ill };

struct Candidate {
    bool rests_in_nature = false; // by the species' sheet
    bool cold_known = false;      // the sheet says how cold and how long
    std::optional<Health> health; // as stated
    std::optional<double> age_at_rest_years;
    std::optional<double> length_m;
    std::optional<double> mass_kg;
    std::optional<double> adult_from_m;  // length from which the sheet's mass holds
    std::optional<double> adult_from_kg; // the least mass of an adult
    friend bool operator==(const Candidate&, const Candidate&) = default;
};

// Why not, or what has to be known first.
enum class Bar {
    species_does_not_rest,
    ill,
    underweight, // stated, or an adult under the sheet's least mass
    first_winter,
    health_not_stated,
    age_not_stated,
    weight_not_stated,
    cold_not_known
};

std::string_view name_of(Bar bar); // "first-winter"

enum class Answer { eligible, refused, not_known };

struct Eligibility {
    Answer answer = Answer::not_known;
    std::vector<Bar> bars; // every one that holds, in the order of the enumeration
    friend bool operator==(const Eligibility&, const Eligibility&) = default;
};

// What: whether an animal may be cooled for the winter.
// Method: refused for a species that does not rest, for the ill, the underweight, and those under a year old when the
//   rest begins (their first winter). Not known where none of these holds but health, age, weight or the sheet's
//   temperatures are missing: then there is no plan either.
// Range: any. Source: common practice, no source; a club page and keepers' sheets agree (secondary): never when ill,
//   underweight, in the first winter, or of a tropical species.
Eligibility eligibility(const Candidate& candidate);

} // namespace loam::season
