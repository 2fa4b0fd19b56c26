// A lamp for UV where the animals need one.
#pragma once

#include "core/catalog/catalog.hpp"
#include "core/plan/plan.hpp"

namespace loam::suggest {

// Adds a guarded UV tube under the top, without a distance table, where a species needs UV and no device gives any:
// what it gives stays not known until its table or a reading is entered.
void add_uv_lamp(plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place);

// Puts the lamp that gives most to a height that gives the animals what they need, where one does.
void hang_uv_lamp(plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place);

} // namespace loam::suggest
