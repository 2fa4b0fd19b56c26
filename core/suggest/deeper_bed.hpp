// A bed as deep as the animals dig.
#pragma once

#include <cstddef>

#include "core/catalog/catalog.hpp"
#include "core/plan/plan.hpp"

namespace loam::suggest {

// Fills the thickest layer up to what the species sheets ask for. Left as it is, and false, where it is deep enough,
// where there is no bed to add to or it slopes (its deep end may serve), or where it would fill more than half the box:
// then another box is called for.
bool deepen_bed(plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place);

} // namespace loam::suggest
