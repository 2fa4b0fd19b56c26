// A plan to begin with, from the few things that a keeper can say before there is a plan.
#pragma once

#include <chrono>
#include <optional>
#include <string>

#include "core/catalog/catalog.hpp"
#include "core/plan/plan.hpp"
#include "core/suggest/box_sizes.hpp"

namespace loam::suggest {

struct FirstAnswers {
    std::string species; // id of the catalog
    std::int64_t count = 1;
    std::optional<double> length_m; // of each now, by the species' own measure
    std::optional<BoxSize> box;     // absent: the smallest usual one that every space rule allows
    std::string walls = "float-glass";
    plan::Room room; // what is not known stays so
    std::optional<Decimal> electricity_price_per_kwh;
    std::string currency = "USD";
    std::string jurisdiction = "none";
    std::string title;
    std::string enclosure_name;
};

// The box with a bed as deep as the animals dig of the material that suits them best, a bowl and hides of their size,
// and lamps' hours as the sheet asks; no lamps and heaters yet. What the species sheet does not know is left out. Where
// no usual box is large enough the largest is taken, and its assessment says so. nullopt: the species is not known.
std::optional<plan::Plan> first_plan(const FirstAnswers& answers, const catalog::Catalog& catalog,
                                     std::chrono::year_month_day today);

} // namespace loam::suggest
