// What it costs, row by row, as the window shows it, copies it and exports it.
#pragma once

#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "app/report/pasted_table.hpp"
#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"

namespace loam::report {

enum class CostPart { start, running, horizon, life, lines, months, replacements };

struct CostRow {
    CostPart part = CostPart::start;
    int level = 0; // 1: a part of the row above it of level 0
    QString name;
    std::string when; // YYYY-MM or YYYY-MM-DD; empty: of no date
    std::optional<MoneyRange> amount;
    bool typical_only = false;
    bool round = false;   // known in round figures only
    bool heading = false; // of rows that are no parts of a sum: has no amount
    QString how;
    std::string where = {}; // plan element it comes from

    // Whether there is such an end to tell; one that is not known counts as told.
    bool has(Money MoneyRange::*end) const { return !typical_only || end == &MoneyRange::typical; }
};

std::vector<CostRow> cost_rows(const assess::Costs& costs, const words::Speaker& speaker);

// "Not in these sums, for want of a price: …"; empty where nothing is missing.
QString not_included_text(const assess::Costs& costs, const words::Speaker& speaker);
// Of when the prices are, that they are invented, and what the sums leave out.
QStringList cost_notes(const assess::Costs& costs, const words::Speaker& speaker);

PastedTable costs_table(const assess::Assessment& assessment, const words::Speaker& speaker);
// Part, name, date, currency, low, typical, high, reason (RFC 4180, no cell is read as a formula).
std::string costs_csv(const assess::Costs& costs, const words::Speaker& speaker);

} // namespace loam::report
