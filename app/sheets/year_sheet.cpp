// Twelve months with what falls due in them, to tick off.
#include <QLocale>
#include <QObject>
#include <algorithm>

#include "app/sheets/care_parts.hpp"
#include "app/words/tasks.hpp"

namespace loam::sheets {

namespace {

using calendar::Task;
using std::chrono::sys_days;
using std::chrono::year_month;
using std::chrono::year_month_day;

struct Entry {
    sys_days first; // of its days in the month
    QString days;
    QString what;
};

QString day_list(const std::vector<sys_days>& days, const words::Formatter& formatter)
{
    QStringList numbers;
    for (const sys_days day : days) {
        numbers << formatter.count(static_cast<unsigned>(year_month_day(day).day()));
    }
    return numbers.join(QStringLiteral(", "));
}

QString what_of(const Task& task, const Request& request, const words::Speaker& speaker)
{
    QString title = title_of(task, request, speaker);
    if (task.kind != calendar::Kind::replacement) {
        return title;
    }
    for (const Label& label : task.labels) {
        if (label.name == "earliest") {
            return QObject::tr("%1; at the earliest on %2").arg(title, request.formatter.iso_date(label.text));
        }
    }
    return title;
}

// Month by month on one day: a row of boxes, and no date in each month.
bool is_monthly(const Task& task)
{
    return task.recurrence == calendar::Recurrence{.frequency = calendar::Frequency::monthly} && !task.until;
}

std::vector<Entry> entries_of(const std::vector<Task>& tasks, year_month month, sys_days from, sys_days until,
                              const Request& request, const words::Speaker& speaker)
{
    const sys_days begins = std::max(from, sys_days(month / 1));
    const sys_days ends = std::min(until, sys_days(month / std::chrono::last));
    std::vector<Entry> entries;
    for (const Task& task : tasks) {
        const auto days =
            is_dated(task) && !is_monthly(task) ? calendar::days_of(task, begins, ends) : std::vector<sys_days>{};
        if (!days.empty()) {
            entries.push_back({days.front(), day_list(days, request.formatter), what_of(task, request, speaker)});
        }
    }
    std::stable_sort(entries.begin(), entries.end(),
                     [](const Entry& one, const Entry& other) { return one.first < other.first; });
    return entries;
}

QString month_title(year_month month, const words::Formatter& formatter)
{
    const QString name = formatter.locale().standaloneMonthName(static_cast<int>(static_cast<unsigned>(month.month())));
    return QObject::tr("%1 %2", "month and year").arg(name).arg(static_cast<int>(month.year()));
}

constexpr int months_a_year = 12;

void add_monthly(Content& content, const std::vector<Task>& tasks, const Request& request,
                 const words::Speaker& speaker)
{
    const QLocale& locale = request.formatter.locale();
    const year_month_day start(first_day_of(request));
    const year_month begins = start.year() / start.month();
    Table table{{{QObject::tr("What"), 9.0, false}, {QObject::tr("On the"), 2.4, false}}, {}};
    for (int i = 0; i < months_a_year; ++i) {
        const unsigned month = static_cast<unsigned>((begins + std::chrono::months(i)).month());
        table.columns.push_back(
            {locale.standaloneMonthName(static_cast<int>(month), QLocale::NarrowFormat), 0.8, false});
    }
    for (const Task& task : tasks) {
        if (!is_monthly(task)) {
            continue;
        }
        const year_month_day first(task.first);
        Row row{
            .cells = {title_of(task, request, speaker), request.formatter.count(static_cast<unsigned>(first.day()))}};
        for (int i = 0; i < months_a_year; ++i) {
            const bool due = begins + std::chrono::months(i) >= first.year() / first.month();
            row.cells << (due ? QStringLiteral("□") : QStringLiteral("–"));
        }
        table.rows.push_back(std::move(row));
    }
    if (!table.rows.empty()) {
        content.blocks.push_back(
            Heading{QObject::tr("Every month, from %1 on").arg(month_title(begins, request.formatter))});
        content.blocks.push_back(std::move(table));
    }
}

void add_dated(Content& content, const std::vector<Task>& tasks, const Request& request, const words::Speaker& speaker)
{
    Table table{
        {{QObject::tr("Day"), 1.3, false}, {QObject::tr("What"), 5.0, false}, {QObject::tr("Done on"), 1.5, false}},
        {}};
    const sys_days from = first_day_of(request);
    const year_month_day start(from);
    const sys_days until = from + std::chrono::days(364);
    year_month month = start.year() / start.month();
    // Begun in the middle of a month, the year ends in the middle of the thirteenth.
    for (int i = 0; i <= months_a_year; ++i, month += std::chrono::months(1)) {
        const auto entries = entries_of(tasks, month, from, until, request, speaker);
        if (entries.empty()) {
            continue;
        }
        table.rows.push_back({.cells = {month_title(month, request.formatter)}, .group = true});
        for (const Entry& entry : entries) {
            table.rows.push_back({.cells = {entry.days, entry.what, {}}, .tick = true});
        }
    }
    content.blocks.push_back(Heading{QObject::tr("On single days")});
    content.blocks.push_back(std::move(table));
}

} // namespace

Content year_content(const Request& request, const words::Speaker& speaker)
{
    Content content = begun(Sheet::year, request);
    content.pages = 2;
    add_dangers(content, request, speaker);
    content.blocks.push_back(
        Paragraph{QObject::tr("What is done every day or every week stands on the running card. Replacements go by "
                              "usual lives: sooner where a lamp fails, a meter reads too little or a bed smells. What "
                              "is done on a day that a month lacks is done on its last.")});
    const std::vector<Task> tasks = tasks_of(request);
    add_monthly(content, tasks, request, speaker);
    add_dated(content, tasks, request, speaker);
    add_unknowns(content, Sheet::year, request, speaker);
    add_cautions(content, Sheet::year);
    return content;
}

} // namespace loam::sheets
