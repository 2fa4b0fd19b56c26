#include "core/plan/consistency.hpp"

#include <algorithm>

#include "core/json/pointer.hpp"
#include "core/money.hpp"
#include "core/plan/problem_codes.hpp"

namespace loam::plan {

namespace {

// True where one pointer is the other's ancestor, or they are the same.
bool touch(std::string_view left, std::string_view right)
{
    const std::string_view shorter = left.size() < right.size() ? left : right;
    const std::string_view longer = left.size() < right.size() ? right : left;
    return longer.substr(0, shorter.size()) == shorter &&
           (longer.size() == shorter.size() || longer[shorter.size()] == '/');
}

} // namespace

bool Consistency::is_sound(std::string_view pointer) const
{
    return std::none_of(of_form_.begin(), of_form_.end(),
                        [&](const json::Problem& problem) { return touch(problem.where, pointer); });
}

void Consistency::refuse(std::string where, std::string_view code, std::vector<std::string> args)
{
    found_.push_back({std::move(where), std::string(code), std::move(args)});
}

json::Problems Consistency::check()
{
    if (is_sound("/currency") && !Currency::find(plan_.currency)) {
        refuse("/currency", problem::unknown_currency, {plan_.currency});
    }
    check_ids();
    check_references();
    check_feeding();
    for (std::size_t i = 0; i < plan_.enclosures.size(); ++i) {
        const Enclosure& enclosure = plan_.enclosures[i];
        const std::string where = json::pointer_to("/enclosures", i);
        check_box(enclosure, where);
        for (std::size_t j = 0; j < enclosure.equipment.size(); ++j) {
            check_device(enclosure.equipment[j], json::pointer_to(where + "/equipment", j));
        }
    }
    return std::move(found_);
}

} // namespace loam::plan
