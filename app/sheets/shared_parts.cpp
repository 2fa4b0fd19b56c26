#include <QCoreApplication>
#include <QObject>
#include <utility>

#include "app/sheets/contents.hpp"

namespace loam::sheets {

QString footer_of(const Request& request)
{
    const assess::Costs& costs = request.assessment.costs;
    QString text = QObject::tr("Loamstead %1 · plan “%2” · worked out on %3")
                       .arg(QCoreApplication::applicationVersion(), QString::fromStdString(request.plan.title),
                            request.formatter.date(request.assessment.date));
    if (!costs.price_date.empty()) {
        text += QStringLiteral(" · ") + QObject::tr("prices of %1").arg(request.formatter.iso_date(costs.price_date));
    }
    return text;
}

QString subtitle_of(const Request& request)
{
    QStringList names;
    for (const plan::Enclosure& enclosure : request.plan.enclosures) {
        names << QString::fromStdString(enclosure.name);
    }
    return QString::fromStdString(request.plan.title) + QStringLiteral("\n") +
           QObject::tr("For: %1").arg(names.join(QStringLiteral(" · ")));
}

void add_dangers(Content& content, const Request& request, const words::Speaker& speaker)
{
    bool headed = false;
    for (const Finding& finding : request.assessment.findings) {
        if (finding.verdict != Verdict::danger) {
            continue;
        }
        if (!headed) {
            content.blocks.push_back(Heading{QObject::tr("Danger: mend this before anything is switched on")});
            headed = true;
        }
        const QString remedy = speaker.remedy(finding);
        content.blocks.push_back(
            Caution{speaker.finding(finding) + (remedy.isEmpty() ? QString() : QStringLiteral(" ") + remedy)});
    }
}

void add_unknowns(Content& content, Sheet here, const Request& request, const words::Speaker& speaker)
{
    if (request.assessment.assumed.empty()) {
        return;
    }
    if (request.sheets.front() != here) {
        const std::size_t count = request.assessment.assumed.size();
        content.blocks.push_back(
            Paragraph{count == 1 ? QObject::tr("Not stated yet: one input, listed on the first sheet.")
                                 : QObject::tr("Not stated yet: %1 inputs, listed on the first sheet.").arg(count)});
        return;
    }
    content.blocks.push_back(Heading{QObject::tr("Not stated yet: please fill in")});
    for (const assess::Assumed& assumed : request.assessment.assumed) {
        content.blocks.push_back(Blank{speaker.assumed(assumed)});
    }
}

void add_cautions(Content& content)
{
    Together together{QObject::tr("Cautions"), {}};
    const QStringList cautions{
        QObject::tr(
            "Predictions: run the finished enclosure empty for at least a week and read several thermometers before "
            "an animal moves in."),
        QObject::tr(
            "Fire: keep lamps and heaters clear of what burns, guarded, in heat-rated holders. Fit a smoke alarm."),
        QObject::tr(
            "Mains: use a residual-current device and drip loops, keep strips above the water, never chain them. "
            "Electrical work is for a licensed electrician; local codes decide."),
        QObject::tr("Weight: stand and floor have to be rated for the load. This is no structural approval."),
        QObject::tr(
            "Health: ask a reptile vet about illness and before any cool season. Wash hands after handling: reptiles "
            "and amphibians can carry Salmonella."),
        QObject::tr("Law: keeping or passing on a species may need papers. Ask your local authority.")};
    for (const QString& caution : cautions) {
        together.cautions.push_back({caution});
    }
    content.blocks.push_back(std::move(together));
}

} // namespace loam::sheets
