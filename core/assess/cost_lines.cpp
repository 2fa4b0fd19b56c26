#include "core/assess/cost_lines.hpp"

#include <algorithm>

namespace loam::assess {

std::vector<CostLine> merged_by_name(const std::vector<CostLine>& lines)
{
    std::vector<CostLine> merged;
    merged.reserve(lines.size());
    for (const CostLine& line : lines) {
        const auto same = std::find_if(merged.begin(), merged.end(), [&line](const CostLine& other) {
            return other.kind == line.kind && other.name == line.name;
        });
        if (same == merged.end()) {
            merged.push_back(line);
            continue;
        }
        same->per_year += line.per_year;
        if (same->every_months != line.every_months) {
            same->every_months.reset();
        }
    }
    return merged;
}

std::vector<std::string> not_included(const Costs& costs)
{
    std::vector<std::string> names;
    if (costs.without_electricity) {
        names.emplace_back("electricity");
    }
    names.insert(names.end(), costs.unpriced.begin(), costs.unpriced.end());
    return names;
}

} // namespace loam::assess
