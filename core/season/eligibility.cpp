#include "core/season/eligibility.hpp"

namespace loam::season {

namespace {

bool under_the_sheet(const Candidate& candidate)
{
    return candidate.mass_kg && candidate.length_m && candidate.adult_from_m && candidate.adult_from_kg &&
           *candidate.length_m >= *candidate.adult_from_m && *candidate.mass_kg < *candidate.adult_from_kg;
}

} // namespace

Eligibility eligibility(const Candidate& candidate)
{
    constexpr double first_winter_until_years = 1.0;
    Eligibility result;
    const auto bar = [&](bool holds, Bar why) {
        if (holds) {
            result.bars.push_back(why);
        }
    };
    bar(!candidate.rests_in_nature, Bar::species_does_not_rest);
    bar(candidate.health == Health::ill, Bar::ill);
    bar(candidate.health == Health::underweight || under_the_sheet(candidate), Bar::underweight);
    bar(candidate.age_at_rest_years && *candidate.age_at_rest_years < first_winter_until_years, Bar::first_winter);
    if (!result.bars.empty()) {
        result.answer = Answer::refused;
        return result;
    }
    bar(!candidate.health, Bar::health_not_stated);
    bar(!candidate.age_at_rest_years, Bar::age_not_stated);
    bar(!candidate.mass_kg, Bar::weight_not_stated);
    bar(!candidate.cold_known, Bar::cold_not_known);
    result.answer = result.bars.empty() ? Answer::eligible : Answer::not_known;
    return result;
}

std::string_view name_of(Bar bar)
{
    switch (bar) {
    case Bar::species_does_not_rest:
        return "species-does-not-rest";
    case Bar::ill:
        return "ill";
    case Bar::underweight:
        return "underweight";
    case Bar::first_winter:
        return "first-winter";
    case Bar::health_not_stated:
        return "health-not-stated";
    case Bar::age_not_stated:
        return "age-not-stated";
    case Bar::weight_not_stated:
        return "weight-not-stated";
    case Bar::cold_not_known:
        return "cold-not-known";
    }
    return {};
}

} // namespace loam::season
