#include <QCryptographicHash>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "app/batch/folder.hpp"
#include "app/report/json_values.hpp"
#include "core/catalog/catalog.hpp"
#include "core/plan/file.hpp"

namespace loam::batch {

namespace {

QString hash_of(const std::string& text)
{
    return QString::fromLatin1(
        QCryptographicHash::hash(QByteArray::fromStdString(text), QCryptographicHash::Sha256).toHex());
}

QString lent_hash(const std::vector<plan::OwnedItem>& lent)
{
    plan::Plan holder;
    holder.owned = lent;
    return hash_of(plan::write(holder));
}

QJsonArray sheets_of(const Job& job)
{
    QJsonArray numbers;
    for (const sheets::Sheet sheet : job.sheets.value_or(std::vector<sheets::Sheet>{})) {
        numbers.append(static_cast<int>(sheet));
    }
    return numbers;
}

} // namespace

QByteArray manifest_of(const Job& job)
{
    const QJsonObject object{
        {QStringLiteral("format"), QStringLiteral("loamstead-batch")},
        {QStringLiteral("version"), 1},
        {QStringLiteral("program"), job.program},
        {QStringLiteral("template"), hash_of(plan::write(job.plan))},
        {QStringLiteral("prices"), hash_of(catalog::write(job.catalogs.at(job.language).prices))},
        {QStringLiteral("lent"), lent_hash(job.lent)},
        {QStringLiteral("guidance"), QString::fromLatin1(job.guidance)},
        {QStringLiteral("date"), QString::fromStdString(report::date(job.date).text)},
        {QStringLiteral("sheets"), sheets_of(job)},
        {QStringLiteral("paper"), job.paper == sheets::Paper::letter ? QStringLiteral("letter") : QStringLiteral("a4")},
        {QStringLiteral("club"), job.printed_by.name},
        {QStringLiteral("contact"), job.printed_by.contact},
        {QStringLiteral("language"), job.language},
        {QStringLiteral("units"), job.units == words::UnitSystem::us     ? QStringLiteral("us")
                                  : job.units == words::UnitSystem::both ? QStringLiteral("both")
                                                                         : QStringLiteral("metric")}};
    return QJsonDocument(object).toJson(QJsonDocument::Indented);
}

} // namespace loam::batch
