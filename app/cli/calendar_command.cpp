#include <QDate>
#include <QFile>
#include <QFileInfo>

#include "app/cli/inputs.hpp"
#include "app/cli/say.hpp"
#include "app/files/bytes.hpp"
#include "app/report/calendar_ics.hpp"
#include "core/calendar/care_tasks.hpp"

namespace loam::cli {

namespace {

// Dates are four digits of the Gregorian calendar, and a calendar of care is of our time.
constexpr int first_year = 1970;
constexpr int last_year = 2199;

std::optional<std::chrono::sys_days> start_of(const Arguments& arguments)
{
    const auto given = arguments.value("--start");
    if (!given) {
        tell(say("“calendar” needs --start with the first day of care, as YYYY-MM-DD."));
        return std::nullopt;
    }
    const QDate date = QDate::fromString(*given, Qt::ISODate);
    if (!date.isValid() || given->size() != 10 || date.year() < first_year || date.year() > last_year) {
        tell(say("--start: “%1” is not a date from %2 to %3 written as YYYY-MM-DD.")
                 .arg(*given)
                 .arg(first_year)
                 .arg(last_year));
        return std::nullopt;
    }
    return std::chrono::sys_days(std::chrono::year(date.year()) / date.month() / date.day());
}

// A calendar saved before may be replaced; any other file may not.
bool may_write(const QString& path)
{
    QFile file(path);
    return !QFileInfo::exists(path) ||
           (QFileInfo(path).isFile() && file.open(QIODevice::ReadOnly) && report::is_own_calendar(file.read(256)));
}

Exit write_out(const QByteArray& text, const QString& path)
{
    if (path == QStringLiteral("-")) {
        return put_out(text);
    }
    if (!may_write(path)) {
        tell(say("“%1” is there already and is no calendar of Loamstead's. Name another file.")
                 .arg(files::shown_path(path)));
        return Exit::file_trouble;
    }
    const QString error = files::write_bytes(text, path);
    if (!error.isEmpty()) {
        tell(error);
        return Exit::file_trouble;
    }
    return Exit::done;
}

} // namespace

Exit run_calendar(const Arguments& arguments)
{
    const auto out = arguments.value("--out");
    if (!out) {
        tell(say("“calendar” needs --out with the name of an .ics file, or - for standard output."));
        return Exit::wrong_usage;
    }
    const auto start = start_of(arguments);
    if (!start) {
        return Exit::wrong_usage;
    }
    const auto read = read_inputs(arguments);
    if (const Exit* refused = std::get_if<Exit>(&read)) {
        return *refused;
    }
    const Inputs& inputs = std::get<Inputs>(read);
    const plan::Plan& plan = inputs.plans.front();
    const assess::Assessment assessment = assessed(inputs);
    const auto tasks = calendar::care_tasks(plan, assessment, inputs.catalog, *start);
    const words::Speaker speaker(inputs.formatter, plan, inputs.catalog);
    return write_out(report::calendar_ics(tasks, {plan.title, assessment.date}, speaker), *out);
}

} // namespace loam::cli
