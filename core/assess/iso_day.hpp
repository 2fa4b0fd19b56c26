// Days as the plan writes them.
#pragma once

#include <chrono>
#include <optional>
#include <string>

namespace loam::assess {

// A day as "YYYY-MM-DD" names it; nullopt where there is none such.
std::optional<std::chrono::sys_days> day_of(const std::string& iso);
std::string iso_of(std::chrono::sys_days day);

} // namespace loam::assess
