#include <algorithm>

#include "core/assess/heat_choice.hpp"
#include "core/assess/heat_devices.hpp"
#include "core/assess/side_by_side.hpp"

namespace loam::assess {

namespace {

std::optional<Miss> miss_of(const Finding& finding, const std::vector<SolvedCase>& cases)
{
    Miss miss;
    miss.direction = finding.direction;
    miss.by_k = input_of(finding, finding.direction == Direction::below ? "short_by" : "over_by").value_or(0.0);
    const std::string case_id = label_of(finding, "case");
    for (const SolvedCase& one : cases) {
        miss.solved = one.room.id == case_id ? &one : miss.solved;
    }
    if (finding.code == "heat.basking") {
        miss.zone = Zone::basking;
        miss.measure = climate::Measure::surface;
    } else if (finding.code == "heat.cool-side" || finding.code == "heat.heat-wave" ||
               finding.code == "danger.no-escape-from-heat") {
        miss.zone = Zone::cool;
    } else if (finding.code == "heat.night") {
        miss.zone = finding.direction == Direction::above ? Zone::warm : Zone::cool;
    } else if (finding.code == "danger.lamp-dried-surface" || finding.code == "danger.touch-burn") {
        miss.touch = true;
        miss.perch = label_of(finding, "on");
    } else if (finding.code != "heat.warm-side" && finding.code != "danger.no-escape-from-cold") {
        return std::nullopt;
    }
    const bool drill = miss.solved != nullptr && miss.solved->room.fault != climate::Fault::none;
    return miss.solved != nullptr && !drill && miss.by_k > 0.0 ? std::optional(miss) : std::nullopt;
}

bool is_worse(const Finding& left, const Finding& right)
{
    const auto amount = [](const Finding& finding) {
        return input_of(finding, finding.direction == Direction::below ? "short_by" : "over_by").value_or(0.0);
    };
    return gravity(left.verdict) > gravity(right.verdict) ||
           (left.verdict == right.verdict && amount(left) > amount(right));
}

bool alike(const Finding& left, const Finding& right)
{
    return left.code == right.code && left.direction == right.direction;
}

// Of each kind and direction the finding that misses by most.
std::vector<Finding> worst_of_each(const std::vector<Finding>& findings, const std::vector<SolvedCase>& cases)
{
    std::vector<Finding> worst;
    for (const Finding& finding : findings) {
        if (finding.remedy || !miss_of(finding, cases) || finding.code == "heat.heat-wave" ||
            finding.code == "danger.no-escape-from-heat") { // in a heat wave only a cooler room helps
            continue;
        }
        const auto same =
            std::find_if(worst.begin(), worst.end(), [&](const Finding& one) { return alike(one, finding); });
        if (same == worst.end()) {
            worst.push_back(finding);
        } else if (is_worse(finding, *same)) {
            *same = finding;
        }
    }
    return worst;
}

} // namespace

// One search for each kind and direction, for the case that misses by most; what cures it cures the others. Where no
// device does, each case is told of its own room.
bool add_heat_remedies(Notes& notes, const std::vector<HeatCase>& heat, const std::vector<SolvedCase>& cases,
                       const climate::Workspace& workspace, std::stop_token stop)
{
    const auto judged = [&](const Miss& miss) {
        const auto found =
            std::find_if(heat.begin(), heat.end(), [&](const HeatCase& one) { return one.id == miss.solved->room.id; });
        return found == heat.end() ? nullptr : &*found;
    };
    const std::vector<Finding> worst = worst_of_each(notes.findings, cases);
    std::vector<Choice> found(worst.size());
    side_by_side(worst.size(), [&](std::size_t i) {
        climate::Workspace own = workspace;
        const auto miss = miss_of(worst[i], cases);
        const Search search{own, stop, *miss, judged(*miss)};
        found[i] = {miss->direction, miss->solved->room.id, cure_by_device(search), miss->touch, miss->solved->heaters};
    });
    if (stop.stop_requested()) {
        return false;
    }
    agree(found);
    for (Finding& finding : notes.findings) {
        const auto miss = finding.remedy ? std::nullopt : miss_of(finding, cases);
        if (!miss) {
            continue;
        }
        for (std::size_t i = 0; i < worst.size(); ++i) {
            if (alike(finding, worst[i])) {
                finding.remedy = found[i].remedy;
            }
        }
        if (!finding.remedy) {
            climate::Workspace unused;
            finding.remedy = without_devices({unused, stop, *miss, judged(*miss)}, finding);
        }
    }
    return true;
}

} // namespace loam::assess
