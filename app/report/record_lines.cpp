#include "app/report/record_lines.hpp"

#include "app/report/said.hpp"
#include "app/words/verdicts.hpp"

namespace loam::report {

namespace {

using words::Formatter;
using words::Quantity;

QString date(std::chrono::sys_days day, const Formatter& format)
{
    return format.date(std::chrono::year_month_day(day));
}

QString growth_line(const assess::RecordResult& record, const Formatter& format)
{
    if (!record.growth_per_year) {
        return Said::tr("Growth: not known; it takes two lengths at least three months apart.");
    }
    const QString verdict = words::verdict(record.growth.verdict);
    return Said::tr("Growth: %1 of its length a year; against what is published: %2.")
        .arg(format.range(*record.growth_per_year, Quantity::fraction), verdict);
}

QString weight_line(const assess::RecordResult& record, const Formatter& format)
{
    if (!record.lost) {
        return Said::tr("Weight: not judged; it takes two weights within a year.");
    }
    if (*record.lost <= 0.0) {
        return Said::tr("Weight: nothing lost since %1.").arg(date(record.heaviest_on, format));
    }
    return Said::tr("Weight: %1 less than the %2 of %3: %4.")
        .arg(format.value(*record.lost, Quantity::fraction), format.value(record.heaviest_kg, Quantity::mass),
             date(record.heaviest_on, format), words::verdict(record.mass.verdict));
}

QString ahead_line(const assess::RecordResult& record, const Formatter& format)
{
    if (record.ahead.size() < 2) {
        return {};
    }
    const assess::LengthAhead& last = record.ahead.back();
    return last.length.fast_m ? Said::tr("Length by %1: %2 to %3.")
                                    .arg(date(last.on, format), format.value(last.length.slow_m, Quantity::length),
                                         format.value(*last.length.fast_m, Quantity::length))
                              : Said::tr("Length by %1: at least %2.")
                                    .arg(date(last.on, format), format.value(last.length.slow_m, Quantity::length));
}

} // namespace

QStringList record_lines(const assess::RecordResult& record, const words::Speaker& speaker)
{
    const Formatter& format = speaker.formatter();
    QStringList lines{growth_line(record, format), weight_line(record, format)};
    if (const QString ahead = ahead_line(record, format); !ahead.isEmpty()) {
        lines << ahead;
    }
    return lines;
}

} // namespace loam::report
