// Equipment that meets every target, worked out from the animals, the room and what may be spent.
#pragma once

#include <array>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/assess/assess.hpp"
#include "core/suggest/box_sizes.hpp"
#include "core/suggest/obstacles.hpp"
#include "core/suggest/outfit.hpp"

namespace loam::suggest {

// What a suggestion is best in.
enum class Merit { cheapest_to_buy, cheapest_over_years, widest_margin };
inline constexpr std::array merits{Merit::cheapest_to_buy, Merit::cheapest_over_years, Merit::widest_margin};

struct Suggestion {
    std::vector<Merit> merits; // one plan may be best in several
    plan::Plan plan;
    assess::Assessment assessment; // whole but for remedies: both ends of the ranges, both seasons, every drill
    double margin_k = 0.0; // how far the nearest end of any zone's range lies inside its target; negative: outside
    // By how much likely readings miss their targets, summed, every dimmer standing as the basking spot asks: a verdict
    // alone grants each zone the setting that suits it.
    double missed_k = 0.0;
    bool meets = false; // no obstacles(), and nothing missed
};

struct Asked {
    bool keep_box = false;              // else another size where the animals need it
    std::optional<Money> most_to_begin; // typical prices, in the plan's currency
};

struct Result {
    std::vector<Suggestion> suggestions;  // those that meet everything; where none does, the nearest, which do not
    std::vector<std::string> new_boxes;   // ids of the enclosures that were given another size
    std::vector<std::string> deeper_beds; // of those whose beds were filled up to what their animals dig
    std::vector<std::string> no_box;      // of those whose animals no usual size is enough for
    std::vector<std::string> unknown;     // of those whose climate can't be computed: they are left as they are
    std::optional<Money> least_to_begin;  // of what meets everything, where all of it costs more than was asked for
    std::size_t tried = 0;                // outfits that were worked out
};

// Every enclosure gets its outfit for itself; the whole plans are assessed again, so that what they share counts.
// The same input gives the same result. nullopt only where `stop` was requested.
std::optional<Result> suggest(const plan::Plan& plan, const catalog::Catalog& catalog,
                              std::chrono::year_month_day today, const Asked& asked, std::stop_token stop = {});

} // namespace loam::suggest
