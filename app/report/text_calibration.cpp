#include "app/report/lines.hpp"
#include "app/report/said.hpp"
#include "app/report/text_parts.hpp"
#include "app/words/verdicts.hpp"

namespace loam::report {

namespace {

using words::Quantity;

QString expected(const std::optional<Range>& range, const words::Formatter& format)
{
    return range ? format.span(*range, Quantity::temperature) : Said::tr("not known");
}

QString reading_row(const assess::ReadingResult& reading, const words::Formatter& format)
{
    return row(2, {{QString::fromStdString(reading.id), 8},
                   {words::measure(reading.measure), 13},
                   {format.value(reading.value_c, Quantity::temperature), 8, true},
                   {expected(reading.before_c, format), 14},
                   {expected(reading.after_c, format), 14},
                   {reading.residual_k ? format.number(*reading.residual_in_deviations, 1) : QString(), 5, true}});
}

} // namespace

QString text_calibration(const assess::CalibrationResult& calibration, const words::Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    QString text = row(2, {{Said::tr("Readings"), 8},
                           {Said::tr("measured"), 13},
                           {Said::tr("read"), 8, true},
                           {Said::tr("before"), 14},
                           {Said::tr("after"), 14},
                           {Said::tr("off"), 5, true}});
    for (const assess::ReadingResult& reading : calibration.readings) {
        text += reading_row(reading, format);
        if (reading.use != assess::ReadingUse::used) {
            text += row(12, {{words::reading_use(reading.use), 0}});
        }
    }
    for (const climate::UpdatedInput& input : calibration.moved) {
        text += wrapped(QStringLiteral("  "), speaker.moved(input));
    }
    QStringList cases;
    for (const std::string& id : calibration.cases) {
        cases << words::case_name(id);
    }
    if (!cases.isEmpty()) {
        text += wrapped(QStringLiteral("  "), Said::tr("They narrow: %1.").arg(cases.join(QStringLiteral(", "))));
    }
    return text;
}

} // namespace loam::report
