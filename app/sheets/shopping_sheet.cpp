#include <QObject>
#include <map>

#include "app/sheets/contents.hpp"
#include "app/words/verdicts.hpp"

namespace loam::sheets {

namespace {

QString for_whom(const assess::ShoppingLine& line, const words::Speaker& speaker)
{
    QStringList names;
    for (const std::string& id : line.enclosures) {
        names << speaker.name_of(id);
    }
    return names.join(QStringLiteral(", "));
}

Row row_of(const assess::ShoppingLine& line, const Request& request, const words::Speaker& speaker)
{
    const words::Formatter& formatter = request.formatter;
    QString item = line.item_name.empty() ? speaker.need(line.need) : QString::fromStdString(line.item_name);
    if (!line.pack.empty()) {
        item += QStringLiteral("\n") + QString::fromStdString(line.pack);
    }
    // What has no price is a blank to fill in, never a zero.
    const QString blank = QStringLiteral("________");
    return {.cells = {item,
                      line.packs > 0 ? formatter.count(line.packs) : QStringLiteral("___"),
                      line.pack_price ? formatter.money_bare(line.pack_price->typical) : blank,
                      line.line_total ? formatter.money_bare(line.line_total->typical) : blank,
                      for_whom(line, speaker),
                      {}},
            .tick = true,
            .total = false};
}

} // namespace

Content shopping_content(const Request& request, const words::Speaker& speaker)
{
    const assess::Assessment& assessment = request.assessment;
    const words::Formatter& formatter = request.formatter;
    const QString currency = QString::fromStdString(assessment.costs.currency.code);
    Content content;
    content.footer = footer_of(request);
    content.blocks.push_back(Title{QObject::tr("Shopping sheet"), subtitle_of(request)});
    add_dangers(content, request, speaker);
    if (assessment.costs.price_illustrative) {
        content.blocks.push_back(Caution{QObject::tr("The prices are invented for illustration. Write in your own.")});
    }
    const std::vector<Column> columns{{QObject::tr("Item and pack"), 3.4, false},
                                      {QObject::tr("Packs"), 0.8, true},
                                      {QObject::tr("Each, %1").arg(currency), 1.15, true},
                                      {QObject::tr("Total, %1").arg(currency), 1.25, true},
                                      {QObject::tr("For"), 1.5, false},
                                      {QObject::tr("Paid"), 0.9, true}};
    std::map<catalog::Category, Table> tables;
    for (const assess::ShoppingLine& line : assessment.shopping) {
        Table& table = tables[line.category];
        table.columns = columns;
        table.rows.push_back(row_of(line, request, speaker));
    }
    for (const auto& [category, table] : tables) {
        content.blocks.push_back(Heading{words::category(category)});
        content.blocks.push_back(table);
    }
    const MoneyRange& startup = assessment.costs.startup;
    content.blocks.push_back(Heading{QObject::tr("All together")});
    content.blocks.push_back(Paragraph{
        QObject::tr("Typical %1; at low prices %2, at high prices %3. Lines without a price are not in it.")
            .arg(formatter.money(startup.typical), formatter.money(startup.low), formatter.money(startup.high))});
    add_unknowns(content, request, speaker);
    add_cautions(content);
    return content;
}

} // namespace loam::sheets
