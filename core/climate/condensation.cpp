#include "core/climate/condensation.hpp"

#include "core/climate/psychrometrics.hpp"

namespace loam::climate {

std::optional<double> lower_humidity_ratio(const CaseResult& result)
{
    return result.converged ? humidity_ratio_at(result.lower_air_c.likely, result.air_humidity.likely) : std::nullopt;
}

std::optional<double> lower_dew_point_c(const CaseResult& result)
{
    const auto ratio = lower_humidity_ratio(result);
    return ratio ? dew_point_c(*ratio) : std::nullopt;
}

std::optional<ColdPlace> coldest_place(const CaseResult& result)
{
    std::optional<ColdPlace> coldest;
    for (const PanelField& field : result.panels)
        for (std::size_t cell = 0; cell < field.closed.size(); ++cell)
            if (field.closed[cell] != 0 && (!coldest || field.inside_c[cell] < coldest->inside_c))
                coldest = {field.plane, centre_of(field, cell), field.inside_c[cell]};
    return coldest;
}

} // namespace loam::climate
