// UV of one enclosure as rows of words.
#pragma once

#include "app/desk/views/figure_rows.hpp"

namespace loam::desk {

FigureGroup uv_group(const assess::UvResult& uv, const words::Speaker& speaker);

} // namespace loam::desk
