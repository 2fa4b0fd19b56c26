// The covering problem behind a choice of packs, in whole numbers: min sum price_i x_i with sum yield_i x_i >= demand.
#pragma once

#include <cassert>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace loam::buying {

struct CoverPack {
    std::int64_t yield = 0; // > 0
    std::int64_t price = 0; // >= 0
};

struct Covering {
    std::int64_t demand = 0;      // > 0
    std::vector<CoverPack> packs; // at least one
};

using Counts = std::vector<std::int64_t>; // one for each pack

__extension__ using Wide = __int128; // products of two amounts

// The pack with the most yield for its price; of equals the largest, then the first.
std::size_t best_value(const std::vector<CoverPack>& packs);

inline std::int64_t divided_up(std::int64_t amount, std::int64_t by)
{
    assert(by > 0);
    return amount <= 0 ? 0 : (amount - 1) / by + 1;
}

} // namespace loam::buying
