// The way from a strip to its circuit.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/power/circuits.hpp"

namespace loam::power {

struct Feed {
    std::vector<std::size_t> strips;    // indices, from the strip itself towards the wall
    std::optional<std::size_t> circuit; // index; absent: the way is broken
    bool broken = false;                // an unknown strip or circuit, or a ring
};

// What: the way of strip number `start`. Method: follows fed_from; the last strip's circuit feeds it.
Feed feed_of(std::size_t start, const std::vector<Strip>& strips, const std::vector<Circuit>& circuits);

// The index of the first element with this id; absent: none.
template <typename Element>
std::optional<std::size_t> index_of(const std::vector<Element>& elements, const std::string& id)
{
    for (std::size_t i = 0; i < elements.size(); ++i) {
        if (elements[i].id == id) {
            return i;
        }
    }
    return std::nullopt;
}

} // namespace loam::power
