// Figures of water and of a winter rest as rows of words.
#pragma once

#include "app/desk/views/figure_rows.hpp"

namespace loam::desk {

FigureGroup water_group(const assess::EnclosureResult& enclosure, const words::Speaker& speaker);
// One for each group of animals that the keeper wants cooled.
std::vector<FigureGroup> rest_groups(const assess::EnclosureResult& enclosure, const words::Speaker& speaker);

} // namespace loam::desk
