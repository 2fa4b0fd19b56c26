#include "core/power/feeds.hpp"

#include <algorithm>

namespace loam::power {

Feed feed_of(std::size_t start, const std::vector<Strip>& strips, const std::vector<Circuit>& circuits)
{
    Feed feed;
    std::optional<std::size_t> at = start;
    while (at) {
        if (std::find(feed.strips.begin(), feed.strips.end(), *at) != feed.strips.end()) {
            feed.broken = true; // a ring
            return feed;
        }
        feed.strips.push_back(*at);
        const Strip& strip = strips[*at];
        if (!strip.fed_from) {
            feed.circuit = index_of(circuits, strip.circuit);
            feed.broken = !feed.circuit;
            return feed;
        }
        at = index_of(strips, *strip.fed_from);
    }
    feed.broken = true; // fed from a strip that does not exist
    return feed;
}

} // namespace loam::power
