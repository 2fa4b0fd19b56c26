#include "core/climate/film_store.hpp"

#include <algorithm>

#include "core/climate/evaporation.hpp"
#include "core/climate/floor_drying.hpp"

namespace loam::climate {

void FilmStore::spray(double kg_m2)
{
    constexpr double most_kg_m2 = 0.5;
    for (double& film : kg_m2_)
        film = std::min(most_kg_m2, film + kg_m2);
}

void FilmStore::offer(double seconds, FloorModel& floor) const
{
    floor.mist_kg_s_m2 = 0.0;
    floor.film_kg_s_m2.resize(kg_m2_.size());
    for (std::size_t c = 0; c < kg_m2_.size(); ++c)
        floor.film_kg_s_m2[c] = kg_m2_[c] / seconds;
}

void FilmStore::dry(const Model& model, const std::vector<double>& values, double seconds)
{
    for (std::size_t c = 0; c < kg_m2_.size(); ++c) {
        if (kg_m2_[c] <= 0.0)
            continue;
        const auto drying = column_drying(model, values, c);
        if (!drying)
            continue;
        const double gone = seconds * mist_flow(kg_m2_[c] / seconds, drying->bare).flow;
        // The last gram goes with the rest: what is left of it would never end.
        kg_m2_[c] = kg_m2_[c] - gone < 1e-3 ? 0.0 : kg_m2_[c] - gone;
    }
}

} // namespace loam::climate
