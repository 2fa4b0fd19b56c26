// What the care calendar's tasks are called, what they say, how often and why.
#pragma once

#include <QString>

#include "app/words/speaker.hpp"
#include "core/calendar/task.hpp"

namespace loam::words {

QString task_title(const calendar::Task& task, const Speaker& speaker);        // "Change the water"
QString task_title_placed(const calendar::Task& task, const Speaker& speaker); // "Change the water (Turtle table)"
QString task_advice(const calendar::Task& task, const Speaker& speaker);       // what to do, with its figures
QString task_when(const calendar::Task& task, const Formatter& formatter);     // "every day", "every 3 months"
QString task_basis(const calendar::Task& task, const Formatter& formatter);    // where how often comes from
QString hands_advice();                                                        // after a task that touches an animal
QString task_kind(calendar::Kind kind);                                        // "water"

} // namespace loam::words
