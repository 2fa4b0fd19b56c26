// The rows of two plans side by side, in words: the command line prints them, the window shows them.
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "app/report/comparison.hpp"
#include "app/report/pasted_table.hpp"

namespace loam::report {

struct ComparedCell {
    QString text;    // the figure; a range without its middle
    QString likely;  // the same with its middle, where that says more; else empty
    QString verdict; // "falls short"; empty where nothing is judged
    QString in_full; // "falls short (too cold)"
    std::optional<Judgement> judgement;
};

struct ComparisonRow {
    int level = 0; // 1: a part of the row above it
    QString name;
    assess::Sides<ComparedCell> sides;
    // From the first to the second, by sign and word: "+1.4 °C warmer, better"; "same".
    QString change;
    QString note{}; // what the figure holds, where its name does not say so
    bool differs = false;
    bool heading = false; // names what the rows of level 1 below it are about
};

struct ComparisonGroup {
    QString title;
    std::vector<ComparisonRow> rows;
};

// "27.1–31.4 °C fits": a figure and the word for it.
QString cell_text(const ComparedCell& cell);
// "winter day, warm side": a row of level 1 with what it is about.
QString with_heading(const QString& heading, const QString& name);

// One group for each enclosure of either plan.
std::vector<ComparisonGroup> enclosure_groups(const TwoPlans& plans, const words::Formatter& format);
ComparisonGroup costs_group(const TwoPlans& plans, const words::Formatter& format);
// What is bought in different numbers, packs on either side.
ComparisonGroup purchases_group(const TwoPlans& plans, const words::Speaker& speaker);

// All of it, to take along.
PastedTable comparison_table(const TwoPlans& plans, const assess::Sides<QString>& called, const QString& summary,
                             const words::Speaker& speaker);

// Whether what the second costs more comes back; `second` is what it is called, "the second".
QString payback_sentence(const assess::PaybackResult& payback, const QString& second, const words::Formatter& format);

} // namespace loam::report
