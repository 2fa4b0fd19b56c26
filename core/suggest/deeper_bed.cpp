#include "core/suggest/deeper_bed.hpp"

#include <algorithm>
#include <cmath>

#include "core/assess/climate_stage.hpp"
#include "core/suggest/outfit.hpp"

namespace loam::suggest {

bool deepen_bed(plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place)
{
    plan::Enclosure& enclosure = plan.enclosures.at(place);
    double wanted_m = 0.0;
    for (const catalog::Species* species : assess::species_in(enclosure, catalog)) {
        wanted_m = std::max(wanted_m, species->substrate_depth_m.min.value_or(0.0));
    }
    const double short_m = wanted_m - bed_depth_m(enclosure);
    const bool slopes =
        std::any_of(enclosure.substrate.begin(), enclosure.substrate.end(),
                    [](const plan::SubstrateLayer& layer) { return layer.depth_at_right_m.has_value(); });
    constexpr double rounding_m = 1e-9;
    if (enclosure.substrate.empty() || slopes || short_m <= rounding_m || wanted_m > 0.5 * enclosure.shell.height_m) {
        return false;
    }
    const auto thickest = std::max_element(enclosure.substrate.begin(), enclosure.substrate.end(),
                                           [](const auto& a, const auto& b) { return a.depth_m < b.depth_m; });
    constexpr double step_m = 0.005; // as a bed is filled
    thickest->depth_m += step_m * std::ceil(short_m / step_m - rounding_m);
    return true;
}

} // namespace loam::suggest
