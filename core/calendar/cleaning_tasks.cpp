#include <utility>

#include "core/calendar/parts.hpp"

namespace loam::calendar {

std::vector<Task> cleaning_tasks(const Scope& scope, const Kept& kept)
{
    std::vector<Task> tasks;
    const auto add = [&](TaskCode code, std::string_view assumption) -> Task& {
        Task clean = task(scope, code, Kind::cleaning, &kept, kept.enclosure.id);
        clean.wash_hands = true;
        go_by(clean, scope, assumption);
        return tasks.emplace_back(std::move(clean));
    };
    add("spot-clean", "hygiene.spot_clean_days");
    if (!kept.enclosure.substrate.empty()) {
        begin_after_one(add("turn-bed", "bed.turn_days"));
    }
    begin_after_one(add("disinfect", "hygiene.disinfect_days"));
    return tasks;
}

} // namespace loam::calendar
