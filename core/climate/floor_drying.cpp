#include "core/climate/floor_drying.hpp"

#include <algorithm>

#include "core/climate/evaporation.hpp"
#include "core/climate/psychrometrics.hpp"

namespace loam::climate {

std::optional<ColumnDrying> column_drying(const Model& model, const std::vector<double>& values, std::size_t column)
{
    constexpr double boils_c = 90.0; // as the balance has it
    const double vapour = values[model.layout.lower_vapour()];
    const double face_c = values[model.surface(column)];
    const auto full = saturation(std::min(face_c, boils_c));
    const auto film = film_w_m2k(model.floor.film, face_c, values[model.layout.lower_air()]);
    if (!full || !film || full->humidity_ratio <= vapour)
        return std::nullopt;
    const double wet = model.floor.wetness * (1.0 - model.floor.dryness[column]);
    const double open_kg_s_m2 = lewis_kg_s_m2(*film) * (full->humidity_ratio - vapour);
    return ColumnDrying{wet * open_kg_s_m2, (1.0 - wet) * open_kg_s_m2};
}

} // namespace loam::climate
