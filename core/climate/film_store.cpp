#include "core/climate/film_store.hpp"

#include <algorithm>

#include "core/climate/evaporation.hpp"
#include "core/climate/psychrometrics.hpp"

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
    constexpr double boils_c = 90.0; // as the balance has it
    const double air_c = values[model.layout.lower_air()];
    const double vapour = values[model.layout.lower_vapour()];
    for (std::size_t c = 0; c < kg_m2_.size(); ++c) {
        if (kg_m2_[c] <= 0.0)
            continue;
        const double face_c = values[model.surface(c)];
        const auto full = saturation(std::min(face_c, boils_c));
        const auto film = film_w_m2k(model.floor.film, face_c, air_c);
        if (!full || !film || full->humidity_ratio <= vapour)
            continue;
        const double wet = model.floor.wetness * (1.0 - model.floor.dryness[c]);
        const double bare = (1.0 - wet) * lewis_kg_s_m2(*film) * (full->humidity_ratio - vapour);
        const double gone = seconds * mist_flow(kg_m2_[c] / seconds, bare).flow;
        // The last gram goes with the rest: what is left of it would never end.
        kg_m2_[c] = kg_m2_[c] - gone < 1e-3 ? 0.0 : kg_m2_[c] - gone;
    }
}

} // namespace loam::climate
