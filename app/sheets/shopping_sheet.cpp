#include <QObject>
#include <algorithm>
#include <map>

#include "app/sheets/contents.hpp"
#include "app/words/verdicts.hpp"

namespace loam::sheets {

namespace {

// Boxes by their numbers in the plan: names would make most rows two lines high.
QString for_whom(const assess::ShoppingLine& line, const Request& request)
{
    const std::vector<plan::Enclosure>& boxes = request.plan.enclosures;
    if (line.enclosures.size() >= boxes.size()) {
        return QObject::tr("all");
    }
    QStringList numbers;
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        if (std::find(line.enclosures.begin(), line.enclosures.end(), boxes[i].id) != line.enclosures.end()) {
            numbers << request.formatter.count(static_cast<std::int64_t>(i) + 1);
        }
    }
    return numbers.join(QStringLiteral(", "));
}

QString key_to_boxes(const Request& request, const words::Speaker& speaker)
{
    QStringList names;
    for (const plan::Enclosure& box : request.plan.enclosures) {
        names << QObject::tr("%1 is “%2”").arg(names.size() + 1).arg(speaker.name_of(box.id));
    }
    return QObject::tr("In the column “For”, %1.").arg(names.join(QStringLiteral(", ")));
}

Row row_of(const assess::ShoppingLine& line, const Request& request, const words::Speaker& speaker, bool name_boxes)
{
    const words::Formatter& formatter = request.formatter;
    // What has no price is a blank to fill in, never a zero; what is on the shelf needs none.
    const bool owned = line.amount_needed <= 0.0;
    const QString blank = owned ? QString() : cell_blank();
    const QString packs = owned ? QObject::tr("owned") : QStringLiteral("___");
    Row row{.cells = {speaker.item(line), line.packs > 0 ? formatter.count(line.packs) : packs,
                      line.pack_price && !owned ? formatter.money_bare(line.pack_price->typical) : blank,
                      line.line_total && !owned ? formatter.money_bare(line.line_total->typical) : blank},
            .tick = !owned};
    if (name_boxes) {
        row.cells << for_whom(line, request);
    }
    row.cells << QString();
    return row;
}

Table order_table(const Request& request, const words::Speaker& speaker)
{
    const bool name_boxes = request.plan.enclosures.size() > 1;
    Table table;
    table.columns = {{QObject::tr("Item"), 5.0, false},
                     {QObject::tr("Packs"), 0.8, true},
                     {QObject::tr("Each"), 1.0, true},
                     {QObject::tr("Total"), 1.3, true}};
    if (name_boxes) {
        table.columns.push_back({QObject::tr("For"), 0.7, false});
    }
    table.columns.push_back({QObject::tr("Paid"), 0.9, true});
    std::map<catalog::Category, std::vector<Row>> groups;
    for (const assess::ShoppingLine& line : request.assessment.shopping) {
        groups[line.category].push_back(row_of(line, request, speaker, name_boxes));
    }
    for (const auto& [category, rows] : groups) {
        table.rows.push_back({.cells = {words::category(category)}, .group = true});
        table.rows.insert(table.rows.end(), rows.begin(), rows.end());
    }
    return table;
}

} // namespace

Content shopping_content(const Request& request, const words::Speaker& speaker)
{
    const assess::Assessment& assessment = request.assessment;
    const words::Formatter& formatter = request.formatter;
    const QString currency = QString::fromStdString(assessment.costs.currency.code);
    Content content = begun(Sheet::shopping, request);
    content.pages = 2;
    add_dangers(content, request, speaker);
    if (assessment.costs.price_illustrative) {
        content.blocks.push_back(Caution{QObject::tr("The prices are invented for illustration. Write in your own.")});
    }
    content.blocks.push_back(Paragraph{QObject::tr("Prices in %1, typical, as of %2.")
                                           .arg(currency, formatter.iso_date(assessment.costs.price_date))});
    if (request.plan.enclosures.size() > 1) {
        content.blocks.push_back(Paragraph{key_to_boxes(request, speaker)});
    }
    const MoneyRange& startup = assessment.costs.startup;
    Table order = order_table(request, speaker);
    order.rows.push_back(
        {.cells = {QObject::tr("All together"), {}, {}, formatter.money_bare(startup.typical)}, .total = true});
    content.blocks.push_back(std::move(order));
    if (!request.lent.isEmpty()) {
        content.blocks.push_back(Paragraph{QObject::tr("On loan, to be given back, and so not to be bought: %1.")
                                               .arg(request.lent.join(QStringLiteral(", ")))});
    }
    content.blocks.push_back(Paragraph{
        QObject::tr("At low prices %1, at high prices %2, with delivery, tax and what is set aside. Lines without a "
                    "price are not in it.")
            .arg(formatter.money(startup.low), formatter.money(startup.high))});
    add_sign_off(content);
    add_unknowns(content, Sheet::shopping, request, speaker);
    add_cautions(content, Sheet::shopping);
    return content;
}

} // namespace loam::sheets
