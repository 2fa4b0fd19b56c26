#include "core/assess/stages.hpp"

namespace loam::assess {

std::optional<std::size_t> place_of(const plan::Plan& plan, const std::string& enclosure)
{
    for (std::size_t i = 0; i < plan.enclosures.size(); ++i) {
        if (plan.enclosures[i].id == enclosure) {
            return i;
        }
    }
    return std::nullopt;
}

bool keep_climate(const Context& context, const Housed& housed, Workspace::Store::Kept& kept, std::stop_token stop)
{
    ClimateKey key = climate_key(context, housed);
    if (kept.climate_key == key) {
        return true;
    }
    auto solved = assess_climate(context, housed, kept.starts, stop);
    if (!solved) {
        return false;
    }
    kept.climate = std::move(*solved);
    kept.climate_key = std::move(key);
    kept.has_remedies = false;
    return true;
}

} // namespace loam::assess
