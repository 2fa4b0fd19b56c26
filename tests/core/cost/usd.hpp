// Amounts that the tests of core/cost count in.
#pragma once

#include "core/money.hpp"

namespace loam::test {

inline const Currency usd{"USD", 2};

inline MoneyRange price(std::int64_t low, std::int64_t typical, std::int64_t high, const Currency& currency = usd)
{
    return {Money(low, currency), Money(typical, currency), Money(high, currency)};
}

} // namespace loam::test
