#include "core/assess/iso_day.hpp"
#include "core/calendar/parts.hpp"

namespace loam::calendar {

namespace {

using std::chrono::days;
using std::chrono::sys_days;

class Milestones {
public:
    Milestones(const Scope& scope, const Kept& kept, const assess::CoolSeasonResult& result)
        : scope_(scope), kept_(kept), result_(result)
    {
    }

    Task at(TaskCode code, sys_days day) const
    {
        Task one = task(scope_, code, Kind::season, &kept_, result_.animal);
        one.labels.push_back({"species", result_.species});
        one.first = day;
        one.basis = Basis::stated; // the keeper has asked for the rest from this day
        return one;
    }

    std::vector<Task> all() const
    {
        const season::Rest& rest = *result_.rest;
        std::vector<Task> tasks;
        if (const auto check = vet_check()) {
            tasks.push_back(*check);
        }
        tasks.push_back(at("rest-begins", rest.begins));
        Task cold = at("rest-cold", season::cold_from(rest));
        cold.amounts.push_back(
            {"cold", {rest.cold_c.low, (rest.cold_c.low + rest.cold_c.high) / 2.0, rest.cold_c.high}, "degC"});
        tasks.push_back(cold);
        for (std::size_t i = 0; i < result_.weigh_ins.size(); ++i) {
            const season::WeighIn& one = result_.weigh_ins[i];
            Task weigh = at("rest-weigh", one.on);
            weigh.id += '/' + std::to_string(i + 1);
            weigh.amounts.push_back({"ask_below", exactly(one.ask_below_kg), "kg"});
            weigh.amounts.push_back({"stop_below", exactly(one.stop_below_kg), "kg"});
            weigh.wash_hands = true;
            tasks.push_back(weigh);
        }
        tasks.push_back(at("rest-warm-up", season::cold_until(rest)));
        tasks.push_back(at("rest-over", season::ends(rest)));
        return tasks;
    }

private:
    // As early as it counts, so that there is time to change one's mind; not once it has been.
    std::optional<Task> vet_check() const
    {
        const catalog::Assumption* weeks = scope_.catalog.find_assumption("cool-season.vet_check_weeks");
        if (result_.vet_check_counts || weeks == nullptr) {
            return std::nullopt;
        }
        Task check = at("rest-vet", result_.rest->begins - days(7 * static_cast<int>(weeks->spread.high)));
        check.basis = Basis::guidance;
        check.source = weeks->spread.source;
        check.first = std::max(check.first, std::min(scope_.start, result_.rest->begins));
        return check;
    }

    const Scope& scope_;
    const Kept& kept_;
    const assess::CoolSeasonResult& result_;
};

} // namespace

std::vector<Task> rest_tasks(const Scope& scope, const Kept& kept)
{
    std::vector<Task> tasks;
    for (const assess::CoolSeasonResult& result : kept.result.cool_seasons) {
        if (!result.rest) {
            continue;
        }
        for (const Task& one : Milestones(scope, kept, result).all()) {
            if (one.first >= scope.start) { // a rest may be under way already
                tasks.push_back(one);
            }
        }
    }
    return tasks;
}

} // namespace loam::calendar
