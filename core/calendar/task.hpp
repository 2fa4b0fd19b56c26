// One thing that the keeper has to do, on which days, and why.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "core/calendar/recurrence.hpp"
#include "core/explain.hpp"

namespace loam::calendar {

enum class Kind { animal, water, cleaning, food, equipment, replacement, health, season, paper };

// What the days of a task go by.
enum class Basis {
    stated,   // the plan says so
    guidance, // a species sheet, a material or an assumption; `source` names it
    computed, // from the assessment: hours burnt, water lost
    not_known // nothing says how often: the keeper has to decide, and the task stands on the first day only
};

// A figure of a task with its range, for example the litres of a change of water.
struct Amount {
    std::string name;
    Range range;
    std::string unit;
    friend bool operator==(const Amount&, const Amount&) = default;
};

struct Task {
    std::string id;   // "change-water/e1": stays the same while the plan's elements keep their ids
    std::string code; // of task_codes, for which app/words has a name and a sentence
    Kind kind = Kind::animal;
    std::string enclosure; // id; empty: the whole plan
    std::string where;     // id of the plan's element; empty: the whole plan
    Recurrence recurrence;
    std::chrono::sys_days first;
    std::optional<std::chrono::sys_days> until; // the last day on which it may fall; absent: for good
    std::vector<Amount> amounts;                // those that the code's sentence names
    std::vector<Label> labels;
    Basis basis = Basis::guidance;
    Source source;                   // of how often, where `basis` is guidance
    std::optional<Range> interval_d; // days between, as guidance has it: the recurrence takes the likely
    bool wash_hands = false;         // hands touch the animal, its water, food or bed
    friend bool operator==(const Task&, const Task&) = default;
};

// The days of [from, until] on which the task falls.
std::vector<std::chrono::sys_days> days_of(const Task& task, std::chrono::sys_days from, std::chrono::sys_days until);

} // namespace loam::calendar
