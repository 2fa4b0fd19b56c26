// The parts of climate_box: shell and bed, equipment, fittings and animals. Each fills its own members of the box.
#pragma once

#include "core/assess/climate_box.hpp"

namespace loam::assess {

std::optional<NotComputable> fill_shell(const Context& context, const Housed& housed, Notes& notes, climate::Box& box);
std::optional<NotComputable> fill_bed(const Context& context, const Housed& housed, Notes& notes, climate::Box& box);
std::optional<NotComputable> fill_equipment(const Context& context, const Housed& housed, Notes& notes,
                                            ClimateBox& result);
std::optional<NotComputable> fill_contents(const Context& context, const Housed& housed, Notes& notes,
                                           climate::Box& box);
std::optional<NotComputable> fill_coefficients(const catalog::Catalog& catalog, climate::Box& box);

} // namespace loam::assess
