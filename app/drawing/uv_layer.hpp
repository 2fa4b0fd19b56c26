// The UV index at an animal's back, under the drawing.
#pragma once

#include "app/drawing/floor_layer.hpp"

namespace loam::drawing {

// "UVI 2.4", "UVI not known".
QString uvi_caption(const std::optional<Range>& uvi, const words::Formatter& formatter);

std::optional<FloorLayer> uv_on_floor(const Picture& picture);

// The cell of the map at a place; nullopt outside it, which may be that of an older box with other sides.
std::optional<std::size_t> uv_cell_at(const light::UvMap& map, double x_m, double y_m);

} // namespace loam::drawing
