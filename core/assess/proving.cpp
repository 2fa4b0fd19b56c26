#include "core/assess/proving.hpp"

#include <algorithm>

namespace loam::assess {

namespace {

std::optional<std::size_t> index_of(const plan::Plan& plan, std::string_view enclosure)
{
    const auto found = std::find_if(plan.enclosures.begin(), plan.enclosures.end(),
                                    [&](const plan::Enclosure& each) { return each.id == enclosure; });
    return found == plan.enclosures.end() ? std::nullopt : std::optional<std::size_t>(found - plan.enclosures.begin());
}

void tell_cost(const Context& context, const Housed& replacing, const plan::Enclosure& old, const Supplies& supplies,
               Notes& notes)
{
    const auto days = spread_of(context.catalog, "proving.days");
    if (!days) {
        return;
    }
    const Range& daily = supplies.power.result.daily_kwh;
    std::vector<Input> inputs{{"daily", daily.likely, "kWh"},
                              {"days_min", days->low, "d"},
                              {"days_max", days->high, "d"},
                              {"energy_min", daily.low * days->low, "kWh"},
                              {"energy_max", daily.high * days->high, "kWh"}};
    report(notes, "proving.both-run", {Verdict::fits, Direction::none}, replacing.at(),
           because("rule.test-run", inputs, {{"old", old.id}, {"new", replacing.enclosure.id}},
                   context.catalog.find_assumption("proving.days")->spread.source));
}

std::vector<power::Device> devices_without(const Context& context, const std::vector<Supplies>& supplies)
{
    std::vector<power::Device> devices;
    for (std::size_t i = 0; i < supplies.size(); ++i) {
        if (!is_replaced(context.plan, context.plan.enclosures[i].id)) {
            devices.insert(devices.end(), supplies[i].power.devices.begin(), supplies[i].power.devices.end());
        }
    }
    return devices;
}

// Of what carries too much with both, what carries no more than it may once the old box has gone.
template <class Result>
void tell_meanwhile(const std::vector<Result>& with_both, const std::vector<Result>& afterwards, Notes& notes)
{
    for (std::size_t i = 0; i < with_both.size() && i < afterwards.size(); ++i) {
        if (with_both[i].judgement.direction == Direction::above &&
            afterwards[i].judgement.direction == Direction::none) {
            report(notes, "proving.overload-meanwhile", {Verdict::fits, Direction::none}, {with_both[i].id, ""},
                   because("rule.test-run",
                           {{"both", with_both[i].load_w.high, "W"}, {"afterwards", afterwards[i].load_w.high, "W"}},
                           {{"carrier", with_both[i].id}}))
                .remedy = remedy("remedy.other-circuit-meanwhile");
        }
    }
}

} // namespace

bool is_replaced(const plan::Plan& plan, std::string_view enclosure)
{
    return std::any_of(plan.enclosures.begin(), plan.enclosures.end(), [&](const plan::Enclosure& each) {
        return each.replaces && *each.replaces == enclosure && each.id != enclosure;
    });
}

Notes judge_proving(const Context& context, const std::vector<Part>& parts, const std::vector<Supplies>& supplies,
                    const Assessment& with_both)
{
    Notes notes;
    bool any = false;
    for (const Part& part : parts) {
        const auto old =
            part.housed.enclosure.replaces ? index_of(context.plan, *part.housed.enclosure.replaces) : std::nullopt;
        if (old && *old != part.housed.index) {
            any = true;
            tell_cost(context, part.housed, context.plan.enclosures[*old], supplies[*old], notes);
        }
    }
    if (any) {
        const CircuitStage afterwards = assess_circuits(context, devices_without(context, supplies));
        tell_meanwhile(with_both.circuits, afterwards.circuits, notes);
        tell_meanwhile(with_both.strips, afterwards.strips, notes);
    }
    return notes;
}

} // namespace loam::assess
