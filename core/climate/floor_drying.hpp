// What a column of the floor gives off, from a solution of the balance.
#pragma once

#include <optional>
#include <vector>

#include "core/climate/model.hpp"

namespace loam::climate {

// kg/(s m2): from the damp share of the surface, and what the rest would give off were it wetted.
struct ColumnDrying {
    double damp = 0.0;
    double bare = 0.0;
};

// nullopt where nothing dries: the surface is colder than the dew point, or out of the range of an equation.
std::optional<ColumnDrying> column_drying(const Model& model, const std::vector<double>& values, std::size_t column);

} // namespace loam::climate
