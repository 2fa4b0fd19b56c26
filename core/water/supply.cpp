#include "core/water/supply.hpp"

#include "core/independent.hpp"

namespace loam::water {

Range drawn_l(const Range& used_l, const Range& reject_l_per_l)
{
    const Range share{1.0 + reject_l_per_l.low, 1.0 + reject_l_per_l.likely, 1.0 + reject_l_per_l.high};
    return product_of_independent({used_l, share});
}

std::optional<Range> cartridges_per_year(const Range& filtered_l_per_day, double cartridge_l)
{
    constexpr double days_a_year = 365.0;
    if (!(cartridge_l > 0.0)) {
        return std::nullopt;
    }
    return scaled(filtered_l_per_day, days_a_year / cartridge_l);
}

} // namespace loam::water
