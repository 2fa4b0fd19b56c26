// All enclosures of a plan at a glance, a row each, and what they come to together.
#pragma once

#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "app/words/speaker.hpp"

namespace loam::report {

struct OverviewRow {
    std::string enclosure; // id; empty: all together
    QString name;
    Verdict verdict = Verdict::not_known;
    QString verdict_words;
    std::optional<Finding> worst; // its most serious one; absent: all is well
    QString floor;                // usable
    QString needed;               // of floor, by the governing rule; empty: no rule applies
    QString connected;
    QString energy;       // a year, likely
    QString energy_range; // empty for all together
    QString electricity_cost;
};

// Empty where the plan has no enclosure. The last row is of all together, where there are several.
std::vector<OverviewRow> overview_rows(const assess::Assessment& assessment, const words::Speaker& speaker);

} // namespace loam::report
