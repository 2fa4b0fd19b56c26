#include "app/batch/record.hpp"

#include <QJsonDocument>
#include <QJsonObject>

#include <array>

#include "app/report/json_values.hpp"
#include "core/assess/notes.hpp"

namespace loam::batch {

namespace {

struct TextField {
    const char* key;
    QString Record::*member;
};

constexpr std::array texts{TextField{"fingerprint", &Record::fingerprint},
                           TextField{"file", &Record::file},
                           TextField{"sha256", &Record::sha256},
                           TextField{"verdict", &Record::verdict},
                           TextField{"currency", &Record::currency},
                           TextField{"startup_low", &Record::startup_low},
                           TextField{"startup_typical", &Record::startup_typical},
                           TextField{"startup_high", &Record::startup_high},
                           TextField{"running_per_year", &Record::running_per_year}};

} // namespace

Record record_of(const assess::Assessment& assessment)
{
    Record record;
    using assess::worse;
    Judgement worst{Verdict::fits, Direction::none};
    for (const Finding& finding : assessment.findings) {
        worst = worse(worst, {finding.verdict, finding.direction});
    }
    record.verdict = QString::fromStdString(report::verdict_id(worst.verdict));
    const assess::Costs& costs = assessment.costs;
    if (costs.prices_match_currency) {
        record.currency = QString::fromStdString(costs.currency.code);
        record.startup_low = QString::fromStdString(costs.startup.low.text());
        record.startup_typical = QString::fromStdString(costs.startup.typical.text());
        record.startup_high = QString::fromStdString(costs.startup.high.text());
        record.running_per_year = QString::fromStdString(costs.running_per_year.typical.text());
    }
    record.unpriced = static_cast<int>(costs.unpriced.size());
    record.not_stated = static_cast<int>(assessment.assumed.size());
    return record;
}

QByteArray line_of(const Record& record)
{
    QJsonObject object{{QStringLiteral("row"), static_cast<qint64>(record.row)},
                       {QStringLiteral("unpriced"), record.unpriced},
                       {QStringLiteral("not_stated"), record.not_stated}};
    for (const TextField& field : texts) {
        object.insert(QLatin1String(field.key), record.*field.member);
    }
    return QJsonDocument(object).toJson(QJsonDocument::Compact) + '\n';
}

std::optional<Record> record_in(const QByteArray& line)
{
    const QJsonObject object = QJsonDocument::fromJson(line).object();
    Record record;
    record.row = static_cast<std::size_t>(object.value(QStringLiteral("row")).toInteger(0));
    record.unpriced = object.value(QStringLiteral("unpriced")).toInt();
    record.not_stated = object.value(QStringLiteral("not_stated")).toInt();
    for (const TextField& field : texts) {
        record.*field.member = object.value(QLatin1String(field.key)).toString();
    }
    const bool whole = record.row > 1 && !record.file.isEmpty() && !record.sha256.isEmpty();
    return whole && line_of(record) == line ? std::optional(record) : std::nullopt;
}

} // namespace loam::batch
