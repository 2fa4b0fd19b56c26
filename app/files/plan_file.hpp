// Plans from files and back.
#pragma once

#include <QString>
#include <QStringList>

#include "core/json/problem.hpp"
#include "core/plan/plan.hpp"

namespace loam::files {

enum class Failure {
    none,
    unreadable, // the file is missing, too large, or may not be read
    invalid     // it was read, and is not what it should be
};

struct PlanFile {
    plan::Plan plan;
    bool migrated = false; // it was of an older version
    Failure failure = Failure::none;
    QStringList errors;      // one sentence each with its place; empty: `plan` is good
    json::Problems problems; // the same as codes, where the text was read but is wrong
};

// `path` "-" is standard input.
PlanFile read_plan(const QString& path);

// Atomic. Returns why the plan was not saved, else an empty text.
QString write_plan(const plan::Plan& plan, const QString& path);

// The invented plan that the window opens with.
plan::Plan example_plan();

} // namespace loam::files
