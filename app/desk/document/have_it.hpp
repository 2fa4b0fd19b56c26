// Ticking off what one has already: a line of the order goes to or from the plan's list of what is owned. And leaving
// out what one does not want.
#pragma once

#include "core/assess/assessment.hpp"
#include "core/plan/plan.hpp"

namespace loam::desk {

// One that the keeper added; the price list does not know it.
bool is_own_line(const assess::ShoppingLine& line);

// Only what the price list knows by an id can be owned.
bool can_be_owned(const assess::ShoppingLine& line);

// The plan with as much more of the line's item on the shelf as the line still asks for, of unknown age; or without any
// of the item.
plan::Plan with_it(plan::Plan plan, const assess::ShoppingLine& line);
plan::Plan without_it(plan::Plan plan, const assess::ShoppingLine& line);

// The plan with a wish that nothing of the line's kind be bought, wherever it is needed; a line of one's own goes.
plan::Plan left_out(plan::Plan plan, const assess::ShoppingLine& line);

} // namespace loam::desk
