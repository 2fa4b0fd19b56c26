#include "core/suggest/obstacles.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace loam::suggest {

namespace {

bool bad(const Finding& finding)
{
    return finding.verdict == Verdict::danger || finding.verdict == Verdict::falls_short;
}

bool begins(const Finding& finding, std::string_view stem)
{
    return finding.code.starts_with(stem);
}

// In a heat wave the cool side is no cooler than the room, and without mains nothing heats.
bool hangs_on_room(const Finding& finding)
{
    if (finding.code == "heat.heat-wave" || finding.code == "danger.no-escape-from-heat") {
        return true;
    }
    const auto& labels = finding.because.labels;
    return finding.code == "danger.drill" && std::any_of(labels.begin(), labels.end(), [](const Label& label) {
               return label.text == "power-cut" || label.text == "heat-wave";
           });
}

bool of_equipment(const Finding& finding)
{
    static constexpr std::array elsewhere{"danger.circuit",       "danger.strip",       "danger.stand",
                                          "danger.drowning",      "danger.cool-season", "danger.sun-through-glass",
                                          "danger.climbing-reach"};
    static constexpr std::array stems{"heat.", "humidity.", "moisture.", "uv.", "danger.", "control."};
    const bool apart = std::find(elsewhere.begin(), elsewhere.end(), finding.code) != elsewhere.end();
    return !apart && !hangs_on_room(finding) &&
           std::any_of(stems.begin(), stems.end(), [&](const char* stem) { return begins(finding, stem); });
}

// Of the readings that a suggestion answers for; a word that something is to be stated is none.
bool reading_not_known(const Finding& finding)
{
    static constexpr std::array readings{"heat.not-computable", "heat.not-converged", "heat.course-not-known",
                                         "humidity.not-known",  "uv.not-known",       "uv.no-lamp"};
    return finding.verdict == Verdict::not_known &&
           std::find(readings.begin(), readings.end(), finding.code) != readings.end();
}

std::vector<Finding> those(const assess::Assessment& assessment, bool equipment)
{
    std::vector<Finding> found;
    for (const Finding& finding : assessment.findings) {
        if ((bad(finding) && of_equipment(finding) == equipment) || (equipment && reading_not_known(finding))) {
            found.push_back(finding);
        }
    }
    return found;
}

} // namespace

std::vector<Finding> obstacles(const assess::Assessment& assessment)
{
    return those(assessment, true);
}

std::vector<Finding> besides(const assess::Assessment& assessment)
{
    return those(assessment, false);
}

} // namespace loam::suggest
