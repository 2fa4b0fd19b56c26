#include "app/report/text_report.hpp"

#include "app/report/lines.hpp"
#include "app/report/said.hpp"
#include "app/report/text_parts.hpp"
#include "app/words/verdicts.hpp"

namespace loam::report {

namespace {

using words::Speaker;

bool is_caution(const Finding& finding)
{
    return finding.code.rfind("caution.", 0) == 0;
}

QString findings(const assess::Assessment& assessment, const Speaker& speaker)
{
    QString text;
    for (const Finding& finding : assessment.findings) {
        if (finding.verdict != Verdict::fits && !is_caution(finding)) {
            text += text_finding(finding, speaker);
        }
    }
    return heading(Said::tr("Findings, the most serious first")) +
           (text.isEmpty() ? wrapped(QStringLiteral("  "), Said::tr("Nothing falls short.")) : text);
}

QString cautions(const assess::Assessment& assessment, const Speaker& speaker)
{
    QString text;
    QStringList told; // the same word of caution for two boxes is said once
    for (const Finding& finding : assessment.findings) {
        const QString sentence = is_caution(finding) ? speaker.finding(finding) : QString();
        if (!sentence.isEmpty() && !told.contains(sentence)) {
            told << sentence;
            text += wrapped(QStringLiteral("  - "), sentence);
        }
    }
    return text.isEmpty() ? text : heading(Said::tr("Bear in mind")) + text;
}

QString assumptions(const assess::Assessment& assessment, const Speaker& speaker)
{
    QString text;
    for (const assess::Assumed& assumed : assessment.assumed) {
        text += wrapped(QStringLiteral("  - "), speaker.assumed(assumed));
    }
    return text.isEmpty() ? text : heading(Said::tr("Not stated in the plan, and what was assumed")) + text;
}

} // namespace

QString text_report(const assess::Assessment& assessment, const Speaker& speaker)
{
    QString text = wrapped({}, QString::fromStdString(assessment.plan_title));
    text += wrapped({}, Said::tr("Assessed as of %1.").arg(speaker.formatter().date(assessment.date)));
    text += findings(assessment, speaker);
    for (const assess::EnclosureResult& enclosure : assessment.enclosures) {
        text += text_enclosure(enclosure, speaker);
    }
    text += text_electricity(assessment, speaker) + text_shopping(assessment.shopping, speaker);
    text += text_costs(assessment.costs, speaker) + assumptions(assessment, speaker);
    return text + cautions(assessment, speaker);
}

QString text_finding(const Finding& finding, const Speaker& speaker)
{
    const QString word = words::verdict(finding.verdict);
    const QString where =
        finding.enclosure.empty() ? QString() : speaker.name_of(finding.enclosure) + QStringLiteral(": ");
    QString text = wrapped(QStringLiteral("  %1 ").arg(word.leftJustified(12)), where + speaker.finding(finding));
    const QString remedy = speaker.remedy(finding);
    if (!remedy.isEmpty()) {
        text += wrapped(QString(15, QLatin1Char(' ')) + QStringLiteral("→ "), remedy);
    }
    return text;
}

} // namespace loam::report
