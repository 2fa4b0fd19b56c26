#include <QCoreApplication>
#include <QCryptographicHash>
#include <QObject>
#include <algorithm>
#include <map>
#include <optional>
#include <utility>

#include "app/sheets/contents.hpp"
#include "app/words/capitals.hpp"
#include "core/plan/file.hpp"

namespace loam::sheets {

namespace {

// Which state of the plan it is: two prints of the same plan bear the same mark.
QString version_of(const plan::Plan& plan)
{
    constexpr qsizetype shown = 8;
    const std::string text = plan::write(plan);
    const QByteArrayView bytes(text.data(), static_cast<qsizetype>(text.size()));
    return QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().first(shown));
}

QString shortened(const QString& text, qsizetype longest)
{
    return text.size() <= longest ? text : text.first(longest - 1) + QChar(0x2026);
}

QString footer_of(const Request& request)
{
    constexpr qsizetype longest_title = 60; // the footer has two lines
    const assess::Costs& costs = request.assessment.costs;
    const QString title = shortened(QString::fromStdString(request.plan.title).simplified(), longest_title);
    QString text = QObject::tr("Loamstead %1 · plan “%2”, version %3 · worked out on %4")
                       .arg(QCoreApplication::applicationVersion(), title, version_of(request.plan),
                            request.formatter.date(request.assessment.date));
    if (costs.price_date.empty()) {
        return text;
    }
    return text + QStringLiteral(" · ") + QObject::tr("prices of %1").arg(request.formatter.iso_date(costs.price_date));
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

std::optional<Issuer> issuer_of(const PrintedBy& by)
{
    constexpr qsizetype most_lines = 4; // the page is for the sheet
    QStringList lines = by.contact.split(QLatin1Char('\n'), Qt::SkipEmptyParts).mid(0, most_lines);
    if (by.name.trimmed().isEmpty() && lines.isEmpty()) {
        return std::nullopt;
    }
    for (QString& line : lines) {
        line = shortened(line, 120);
    }
    const QString name = shortened(by.name.simplified(), 120);
    return Issuer{name.isEmpty() ? lines.takeFirst() : name, lines.join(QLatin1Char('\n'))};
}

Sheet sheet_of_unknowns(const Request& request)
{
    const auto found = std::find(request.sheets.begin(), request.sheets.end(), Sheet::shopping);
    return found != request.sheets.end() ? *found : request.sheets.front();
}

// Two inputs in a row, those of one box under its name.
Table table_of_unknowns(const Request& request, const words::Speaker& speaker)
{
    const Column what{QObject::tr("What"), 3.9, false};
    const Column taken{QObject::tr("Taken as"), 1.3, false};
    const Column mine{QObject::tr("It is"), 1.1, false};
    Table table{{what, taken, mine, what, taken, mine}, {}, true, true};
    std::map<QString, QStringList> cells; // by box; what belongs to none comes first
    for (const assess::Assumed& assumed : request.assessment.assumed) {
        const words::Speaker::Unstated one = speaker.unstated(assumed);
        cells[one.box] << words::capitalised(one.what) << (one.taken.isEmpty() ? QStringLiteral("–") : one.taken)
                       << QString();
    }
    for (const auto& [box, of_box] : cells) {
        if (!box.isEmpty()) {
            table.rows.push_back({.cells = {box}, .group = true});
        }
        for (qsizetype i = 0; i < of_box.size(); i += std::ssize(table.columns)) {
            table.rows.push_back({.cells = of_box.mid(i, std::ssize(table.columns))});
        }
    }
    return table;
}

// A caution, and the sheets whose reader is about to do what it warns of.
struct CautionOn {
    QString text;
    std::vector<Sheet> sheets;
};

std::vector<CautionOn> cautions()
{
    using enum Sheet;
    return {
        {QObject::tr(
             "Predictions: run the finished enclosure empty for at least a week and read several thermometers before "
             "an animal moves in."),
         {shopping}},
        {QObject::tr("Safety is not where to save: guards, heat-rated holders, thermostats, a residual-current device "
                     "and a smoke alarm stay on the list."),
         {budget}},
        {QObject::tr(
             "Fire: keep lamps and heaters clear of what burns, guarded, in heat-rated holders. Fit a smoke alarm."),
         {shopping, running}},
        {QObject::tr(
             "Mains: use a residual-current device and drip loops, keep strips above the water, never chain them. "
             "Electrical work is for a licensed electrician; local codes decide."),
         {shopping, running, year}},
        {QObject::tr("Weight: stand and floor have to be rated for the load. This is no structural approval."),
         {shopping}},
        {QObject::tr(
             "Health: ask a reptile vet about illness and before any cool season. Wash hands after handling: reptiles "
             "and amphibians can carry Salmonella."),
         {shopping, running, year, winter_rest}},
        {QObject::tr("Law: keeping or passing on a species may need papers. Ask your local authority."),
         {shopping, budget}}};
}

} // namespace

Content begun(Sheet sheet, const Request& request)
{
    Content content;
    content.name = title_of(sheet);
    content.footer = footer_of(request);
    if (auto issuer = issuer_of(request.printed_by)) {
        content.blocks.push_back(*std::move(issuer));
    }
    content.blocks.push_back(Title{title_of(sheet), subtitle_of(request)});
    return content;
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
    const Sheet there = sheet_of_unknowns(request);
    if (there != here) {
        const std::size_t count = request.assessment.assumed.size();
        content.blocks.push_back(Paragraph{
            count == 1 ? QObject::tr("Not stated yet: one input, listed on “%1”.").arg(title_of(there))
                       : QObject::tr("Not stated yet: %1 inputs, listed on “%2”.").arg(count).arg(title_of(there))});
        return;
    }
    content.blocks.push_back(Heading{QObject::tr("Not stated yet: please fill in")});
    content.blocks.push_back(table_of_unknowns(request, speaker));
}

void add_cautions(Content& content, Sheet here)
{
    Together together{QObject::tr("Cautions"), {}};
    for (const CautionOn& caution : cautions()) {
        if (std::find(caution.sheets.begin(), caution.sheets.end(), here) != caution.sheets.end()) {
            together.cautions.push_back({caution.text});
        }
    }
    content.blocks.push_back(std::move(together));
}

void add_cells(Content& content, const QStringList& labels, std::size_t rows)
{
    constexpr double hand_pt = 24.0;
    Table table{{}, std::vector<Row>(rows, Row{.cells = {}, .least_pt = hand_pt}), true};
    for (const QString& label : labels) {
        table.columns.push_back({label, 1.0, false});
    }
    content.blocks.push_back(std::move(table));
}

void add_sign_off(Content& content)
{
    add_cells(content,
              {QObject::tr("Paid: amount, date, by"), QObject::tr("Sign-off: name, date"), QObject::tr("Signature")});
}

QString cell_blank()
{
    return QStringLiteral("________");
}

} // namespace loam::sheets
