#include "app/desk/views/reading_rows.hpp"

#include <QObject>

#include "app/words/verdicts.hpp"

namespace loam::desk {

using words::Quantity;

namespace {

Judgement judgement_of(const assess::ReadingResult& reading)
{
    if (reading.use == assess::ReadingUse::used) {
        return {Verdict::fits, Direction::none};
    }
    return {Verdict::not_known, Direction::none};
}

FigureRow reading_row(const assess::ReadingResult& reading, const words::Formatter& formatter)
{
    FigureRow row{.name =
                      QStringLiteral("%1, %2").arg(QString::fromStdString(reading.id), words::measure(reading.measure)),
                  .likely = QObject::tr("not known"),
                  .range = {},
                  .target = QObject::tr("read %1").arg(formatter.value(reading.value_c, Quantity::temperature)),
                  .why = {}};
    row.why.judgement = judgement_of(reading);
    row.why.verdict_words = words::reading_use(reading.use);
    row.why.title = row.name + QStringLiteral(": ") + row.target;
    row.why.how =
        QObject::tr("Every uncertain input is moved within its spread until the readings are met as well as their "
                    "accuracy and the model's own error make probable.");
    if (reading.after_c) {
        row.likely = formatter.value(reading.after_c->likely, Quantity::temperature);
        row.range = formatter.span(*reading.after_c, Quantity::temperature);
        row.why.inputs =
            QObject::tr("Expected %1 before any reading, %2 with them. Read less expected: %3 standard deviations "
                        "of thermometer and model.")
                .arg(formatter.range(*reading.before_c, Quantity::temperature),
                     formatter.range(*reading.after_c, Quantity::temperature),
                     formatter.number(*reading.residual_in_deviations, 1));
    }
    return row;
}

} // namespace

FigureGroup reading_group(const assess::CalibrationResult& calibration, const words::Speaker& speaker)
{
    FigureGroup group{QObject::tr("Readings"), {}};
    for (const assess::ReadingResult& reading : calibration.readings) {
        group.rows.push_back(reading_row(reading, speaker.formatter()));
    }
    for (const climate::UpdatedInput& input : calibration.moved) {
        FigureRow row{.name = speaker.uncertainty(input.name), .likely = {}, .range = {}, .target = {}, .why = {}};
        row.why.title = row.name;
        row.why.verdict_words = QObject::tr("moved by readings");
        row.why.how = speaker.moved(input);
        group.rows.push_back(row);
    }
    return group;
}

} // namespace loam::desk
