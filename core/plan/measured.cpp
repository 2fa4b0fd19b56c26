#include "core/plan/measured.hpp"

namespace loam::plan {

namespace {

// Days written as YYYY-MM-DD sort as they follow one another; of two on one day the later in the list counts.
std::optional<double> newest(const Animal& animal, std::optional<double> Measurement::*figure)
{
    const Measurement* found = nullptr;
    for (const Measurement& each : animal.measurements) {
        if ((each.*figure).has_value() && (found == nullptr || each.date >= found->date)) {
            found = &each;
        }
    }
    return found != nullptr ? found->*figure : std::nullopt;
}

} // namespace

std::optional<double> length_now_m(const Animal& animal)
{
    const auto measured = newest(animal, &Measurement::length_m);
    return measured ? measured : animal.length_m;
}

std::optional<double> mass_now_kg(const Animal& animal)
{
    const auto measured = newest(animal, &Measurement::mass_kg);
    return measured ? measured : animal.mass_kg;
}

} // namespace loam::plan
