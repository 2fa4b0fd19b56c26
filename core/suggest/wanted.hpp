// What the animals of an enclosure ask for.
#pragma once

#include <optional>

#include "core/catalog/catalog.hpp"
#include "core/explain.hpp"
#include "core/plan/plan.hpp"

namespace loam::suggest {

// All of them: the narrowest of their bands.
struct Wanted {
    std::optional<Target> basking;
    std::optional<Target> warm;
    std::optional<Target> cool;
    std::optional<Target> night; // of the cool side, where they sleep
    Target humidity;
};

Wanted wanted_by(const plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place);

// The middle of a band; two kelvin inside where it has one end only.
double middle(const Target& target);

} // namespace loam::suggest
