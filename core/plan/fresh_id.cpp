#include <set>

#include "core/plan/element_ids.hpp"
#include "core/plan/file.hpp"

namespace loam::plan {

std::string fresh_id(const Plan& plan, std::string_view stem)
{
    std::set<std::string> used;
    for_each_id(plan, [&](const std::string& id, const std::string&) { used.insert(id); });
    std::size_t number = 1;
    std::string id;
    do {
        id = std::string(stem) + std::to_string(number++);
    } while (used.count(id) > 0);
    return id;
}

} // namespace loam::plan
