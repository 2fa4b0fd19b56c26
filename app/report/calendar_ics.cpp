#include "app/report/calendar_ics.hpp"

#include <QCoreApplication>
#include <QUuid>
#include <algorithm>
#include <array>

#include "app/report/ics_lines.hpp"
#include "app/words/capitals.hpp"
#include "app/words/tasks.hpp"
#include "core/assess/iso_day.hpp"

namespace loam::report {

namespace {

using calendar::Frequency;
using calendar::Task;
using std::chrono::sys_days;

constexpr const char* maker = "-//Loamstead//Loamstead";

QByteArray date_text(sys_days day) // "20261125"
{
    return QByteArray::fromStdString(assess::iso_of(day)).replace("-", "");
}

QByteArray by_day(const std::vector<std::chrono::weekday>& days)
{
    static constexpr std::array names{"SU", "MO", "TU", "WE", "TH", "FR", "SA"};
    QByteArrayList on;
    for (const std::chrono::weekday day : days) {
        on << names.at(day.c_encoding());
    }
    return on.join(',');
}

// The day itself, or the last one of a month that lacks it.
QByteArray month_day(unsigned day)
{
    constexpr unsigned in_every_month = 28;
    if (day <= in_every_month) {
        return {};
    }
    QByteArrayList days;
    for (unsigned one = in_every_month; one <= day; ++one) {
        days << QByteArray::number(one);
    }
    return ";BYMONTHDAY=" + days.join(',') + ";BYSETPOS=-1";
}

QString description(const Task& task, const words::Speaker& speaker)
{
    QStringList lines;
    if (task.recurrence.times_a_day > 1) {
        lines << words::capitalised(words::task_when(task, speaker.formatter())) + QLatin1Char('.');
    }
    lines << words::task_advice(task, speaker);
    if (task.wash_hands) {
        lines << words::hands_advice();
    }
    lines << words::task_basis(task, speaker.formatter());
    return lines.join(QLatin1Char('\n'));
}

QByteArray event(const Task& task, const CalendarOf& of, const words::Speaker& speaker)
{
    const sys_days stamp_day(of.worked_out);
    const sys_days counted_from{std::chrono::year(2000) / 1 / 1};
    const QByteArray stamp = date_text(stamp_day) + "T000000Z";
    QByteArray text = ics_line("BEGIN", "VEVENT");
    text += ics_line("UID", uid_of(task, of.plan_title).toUtf8());
    text += ics_line("DTSTAMP", stamp);
    text += ics_line("LAST-MODIFIED", stamp);
    text += ics_line("SEQUENCE", QByteArray::number(std::max<qint64>(0, (stamp_day - counted_from).count())));
    text += ics_line("DTSTART;VALUE=DATE", date_text(task.first));
    if (const QByteArray rule = rule_of(task); !rule.isEmpty()) {
        text += ics_line("RRULE", rule);
    }
    text += ics_line("SUMMARY", ics_text(words::task_title_placed(task, speaker)));
    text += ics_line("DESCRIPTION", ics_text(description(task, speaker)));
    text += ics_line("CATEGORIES", ics_text(words::task_kind(task.kind)));
    text += ics_line("CLASS", "PRIVATE");
    text += ics_line("TRANSP", "TRANSPARENT");
    return text + ics_line("END", "VEVENT");
}

} // namespace

QByteArray rule_of(const Task& task)
{
    const calendar::Recurrence& recurrence = task.recurrence;
    const std::chrono::year_month_day first(task.first);
    const bool leap_day = first.month() == std::chrono::February && unsigned(first.day()) == 29;
    QByteArray rule;
    switch (recurrence.frequency) {
    case Frequency::once:
        return {};
    case Frequency::daily:
        rule = "FREQ=DAILY";
        break;
    case Frequency::weekly:
        rule = "FREQ=WEEKLY";
        break;
    case Frequency::monthly:
        rule = "FREQ=MONTHLY";
        break;
    case Frequency::yearly:
        rule = "FREQ=YEARLY";
        break;
    }
    if (recurrence.every > 1) {
        rule += ";INTERVAL=" + QByteArray::number(recurrence.every);
    }
    if (!recurrence.on.empty()) {
        rule += ";BYDAY=" + by_day(recurrence.on);
    }
    if (recurrence.frequency == Frequency::monthly) {
        rule += month_day(unsigned(first.day()));
    } else if (recurrence.frequency == Frequency::yearly && leap_day) {
        rule += ";BYMONTH=2" + month_day(unsigned(first.day()));
    }
    if (task.until) {
        rule += ";UNTIL=" + date_text(*task.until);
    }
    return rule;
}

QString uid_of(const Task& task, const std::string& plan_title)
{
    static const QUuid ours(QStringLiteral("{6c3d7f0e-52a4-4c58-9f0b-8d1f6a3e7b24}")); // drawn once, never changed
    const QString title =
        QString::fromStdString(plan_title).normalized(QString::NormalizationForm_C).simplified().toCaseFolded();
    return QUuid::createUuidV5(ours, title + QLatin1Char('\n') + QString::fromStdString(task.id))
        .toString(QUuid::WithoutBraces);
}

QByteArray calendar_ics(const std::vector<Task>& tasks, const CalendarOf& of, const words::Speaker& speaker)
{
    const QByteArray title = ics_text(QString::fromStdString(of.plan_title));
    const QString product =
        QLatin1String(maker) + QLatin1Char(' ') + QCoreApplication::applicationVersion() + QStringLiteral("//EN");
    QByteArray text = ics_line("BEGIN", "VCALENDAR");
    text += ics_line("PRODID", ics_text(product));
    text += ics_line("VERSION", "2.0");
    text += ics_line("CALSCALE", "GREGORIAN");
    text += ics_line("NAME", title); // RFC 7986; the next is what was usual before it
    text += ics_line("X-WR-CALNAME", title);
    for (const Task& task : tasks) {
        text += event(task, of, speaker);
    }
    return text + ics_line("END", "VCALENDAR");
}

bool is_own_calendar(const QByteArray& beginning)
{
    return beginning.startsWith(QByteArray("BEGIN:VCALENDAR\r\nPRODID:") + maker);
}

} // namespace loam::report
