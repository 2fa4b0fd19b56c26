// What the running card and the printed year share. Internal to app/sheets.
#pragma once

#include <vector>

#include "app/sheets/contents.hpp"
#include "core/calendar/task.hpp"

namespace loam::sheets {

// From the day the plan was worked out on.
std::chrono::sys_days first_day_of(const Request& request);
std::vector<calendar::Task> tasks_of(const Request& request);

// Seldom enough to be put on dates; what is done more often stands on the running card only.
bool is_dated(const calendar::Task& task);

// With the enclosure's name, where the plan has several.
QString title_of(const calendar::Task& task, const Request& request, const words::Speaker& speaker);

} // namespace loam::sheets
