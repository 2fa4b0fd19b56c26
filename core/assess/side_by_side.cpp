#include "core/assess/side_by_side.hpp"

#include <algorithm>
#include <atomic>
#include <future>
#include <thread>
#include <vector>

namespace loam::assess {

void side_by_side(std::size_t count, const std::function<void(std::size_t)>& work)
{
    std::atomic<std::size_t> next{0};
    const auto take_turns = [&] {
        for (std::size_t i = next++; i < count; i = next++) {
            work(i);
        }
    };
    const std::size_t threads = std::min<std::size_t>(count, std::max(1U, std::thread::hardware_concurrency()));
    std::vector<std::future<void>> others; // each waits for its thread when it goes
    for (std::size_t thread = 1; thread < threads; ++thread) {
        others.push_back(std::async(std::launch::async, take_turns));
    }
    take_turns();
    for (std::future<void>& other : others) {
        other.get();
    }
}

} // namespace loam::assess
