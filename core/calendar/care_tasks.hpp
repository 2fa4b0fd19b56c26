// What has to be done for the animals of a plan, and when.
#pragma once

#include <chrono>
#include <vector>

#include "core/assess/assessment.hpp"
#include "core/calendar/task.hpp"
#include "core/catalog/catalog.hpp"
#include "core/plan/plan.hpp"

namespace loam::calendar {

// What: the tasks of the plan from `start` on, the first day of care.
// Method: how often a thing is done comes from the plan, else the species sheet or the assumptions of the catalog, at
//   the likely value of their bracket; where none of them says, the task stands on the first day with Basis::not_known.
//   Replacements are those of the assessment, which reach a year ahead of its day. Where care starts later than the
//   assessment's day, what wears out wears from the start; what would have been due before the start is due on it.
//   While an animal rests in the cold it is neither fed nor weighed as usual: such tasks stop and begin again after it.
// Order: by enclosure as in the plan, then animals, equipment and the plan itself; the same for the same input.
std::vector<Task> care_tasks(const plan::Plan& plan, const assess::Assessment& assessment,
                             const catalog::Catalog& catalog, std::chrono::sys_days start);

} // namespace loam::calendar
