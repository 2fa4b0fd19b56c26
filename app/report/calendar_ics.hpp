// The care calendar as an iCalendar file, RFC 5545.
#pragma once

#include <QByteArray>
#include <QString>
#include <chrono>
#include <string>
#include <vector>

#include "app/words/speaker.hpp"
#include "core/calendar/task.hpp"

namespace loam::report {

struct CalendarOf {
    std::string plan_title;
    std::chrono::year_month_day worked_out; // the assessment's day
};

// What: one VEVENT for each task, on whole days and without a time zone, so that no change of the clocks moves it. They
//   are events and not VTODO, since many calendars show no VTODO; transparent, so that none of them marks a day as
//   taken. Without alarms: those are the reader's to choose.
// UID: a name-based UUID (RFC 4122, version 5) of the plan's title, without regard to case and blanks, and the task's
//   id. A plan has no id of its own: its title is what stays when everything else is edited. So reading the file in
//   again replaces the events; renaming the plan begins a calendar of its own.
// DTSTAMP, LAST-MODIFIED: midnight UTC of the assessment's day. SEQUENCE: its days since 2000, so that a later one
// wins.
//   The same tasks and the same day give the same bytes.
// Month's ends: BYSETPOS=-1 over the days from the 28th on gives the last that a month has.
QByteArray calendar_ics(const std::vector<calendar::Task>& tasks, const CalendarOf& of, const words::Speaker& speaker);

// Whether a file begins as one that calendar_ics() wrote.
bool is_own_calendar(const QByteArray& beginning);

// The RRULE of a task; empty where it falls once.
QByteArray rule_of(const calendar::Task& task);
QString uid_of(const calendar::Task& task, const std::string& plan_title);

} // namespace loam::report
