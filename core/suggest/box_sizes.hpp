// Sizes in which enclosures are commonly made.
#pragma once

#include <optional>
#include <span>

#include "core/assess/context.hpp"

namespace loam::suggest {

struct BoxSize {
    double length_m = 0.0;
    double width_m = 0.0;
    double height_m = 0.0;
    friend bool operator==(const BoxSize&, const BoxSize&) = default;
};

// By floor, ascending. Source: common practice, no source.
std::span<const BoxSize> box_sizes();

// The smallest of them, no lower than the enclosure is now, whose floor every space rule of the animals allows.
// nullopt: none does, or no rule applies.
std::optional<BoxSize> smallest_box(const plan::Plan& plan, const catalog::Catalog& catalog,
                                    std::chrono::year_month_day today, std::size_t place);

} // namespace loam::suggest
