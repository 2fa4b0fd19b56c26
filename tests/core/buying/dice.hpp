// Random instances that are the same on every machine: the standard's engines are fixed, its distributions are not.
#pragma once

#include <cstdint>
#include <random>

class Dice {
public:
    explicit Dice(std::uint32_t seed) : engine_(seed) {}
    std::int64_t between(std::int64_t low, std::int64_t high)
    {
        const auto faces = static_cast<std::uint64_t>(high - low + 1);
        return low + static_cast<std::int64_t>(engine_() % faces);
    }

private:
    std::mt19937_64 engine_;
};
