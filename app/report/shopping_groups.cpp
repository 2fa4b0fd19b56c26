#include "app/report/shopping_groups.hpp"

#include <algorithm>
#include <map>
#include <utility>

#include "app/report/said.hpp"
#include "app/words/capitals.hpp"
#include "app/words/verdicts.hpp"

namespace loam::report {

namespace {

QString place_name(const std::vector<std::string>& enclosures, std::size_t all, const words::Speaker& speaker)
{
    if (enclosures.empty()) {
        return Said::tr("Whole site");
    }
    if (enclosures.size() > 1 && enclosures.size() >= all) {
        return Said::tr("All enclosures");
    }
    QStringList names;
    for (const std::string& id : enclosures) {
        names << speaker.name_of(id);
    }
    return names.join(QStringLiteral(" · "));
}

// Those of one box by the box, then those of several, then those of none.
std::size_t rank(const std::vector<std::string>& enclosures, const assess::Assessment& assessment)
{
    const std::size_t all = assessment.enclosures.size();
    if (enclosures.size() != 1) {
        return enclosures.empty() ? all + 1 : all;
    }
    const auto found = std::find_if(assessment.enclosures.begin(), assessment.enclosures.end(),
                                    [&](const assess::EnclosureResult& each) { return each.id == enclosures.front(); });
    return static_cast<std::size_t>(found - assessment.enclosures.begin());
}

void add_price(std::optional<MoneyRange>& total, const std::optional<MoneyRange>& price)
{
    if (price) {
        total = total ? *total : MoneyRange::zero(price->typical.currency());
        *total += *price;
    }
}

PastedCell text(const QString& text)
{
    return {text, false};
}

PastedCell figure(const QString& text)
{
    return {text, true};
}

std::vector<PastedCell> pasted_row(const assess::ShoppingLine& line, const QString& place,
                                   const words::Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    const QString none = line.amount_needed <= 0.0 ? Said::tr("owned") : Said::tr("no price");
    const auto price = [&](const std::optional<MoneyRange>& range) {
        return figure(range ? format.money_bare(range->typical) : none);
    };
    return {text(place),
            text(words::capitalised(words::category(line.category))),
            text(speaker.item(line)),
            figure(line.packs > 0 ? format.count(line.packs) : QString()),
            price(line.pack_price),
            price(line.line_total),
            text(line.left_over.likely > 0.0 ? format.figure(line.left_over.likely, line.unit) : QString()),
            text(speaker.why(line))};
}

} // namespace

std::vector<ShoppingPlace> shopping_places(const assess::Assessment& assessment, const words::Speaker& speaker)
{
    std::map<std::pair<std::size_t, std::vector<std::string>>,
             std::map<catalog::Category, std::vector<const assess::ShoppingLine*>>>
        sorted;
    for (const assess::ShoppingLine& line : assessment.shopping) {
        sorted[{rank(line.enclosures, assessment), line.enclosures}][line.category].push_back(&line);
    }
    std::vector<ShoppingPlace> places;
    for (const auto& [where, categories] : sorted) {
        ShoppingPlace place{place_name(where.second, assessment.enclosures.size(), speaker), {}, {}};
        for (const auto& [category, lines] : categories) {
            place.groups.push_back({category, lines});
            for (const assess::ShoppingLine* line : lines) {
                add_price(place.total, line->line_total);
            }
        }
        places.push_back(std::move(place));
    }
    return places;
}

PastedTable shopping_table(const assess::Assessment& assessment, const words::Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    const QString currency = QString::fromStdString(assessment.costs.currency.code);
    PastedTable table;
    table.title = Said::tr("Shopping list: %1").arg(QString::fromStdString(assessment.plan_title));
    table.heads = {text(Said::tr("For")),
                   text(Said::tr("Kind")),
                   text(Said::tr("Item")),
                   figure(Said::tr("Packs")),
                   figure(Said::tr("Each, %1").arg(currency)),
                   figure(Said::tr("Total, %1").arg(currency)),
                   text(Said::tr("Left over")),
                   text(Said::tr("Needed because"))};
    std::optional<MoneyRange> total;
    for (const ShoppingPlace& place : shopping_places(assessment, speaker)) {
        for (const ShoppingGroup& group : place.groups) {
            for (const assess::ShoppingLine* line : group.lines) {
                table.rows.push_back(pasted_row(*line, place.title, speaker));
                add_price(total, line->line_total);
            }
        }
    }
    if (total) {
        table.rows.push_back({text(Said::tr("Total of these lines")),
                              {},
                              {},
                              {},
                              {},
                              figure(format.money_bare(total->typical)),
                              {},
                              {}});
    }
    table.notes << Said::tr("Typical prices as of %1.").arg(format.iso_date(assessment.costs.price_date));
    if (assessment.costs.price_illustrative) {
        table.notes << Said::tr("The prices are invented examples.");
    }
    return table;
}

} // namespace loam::report
