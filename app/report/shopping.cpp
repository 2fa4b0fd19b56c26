#include "app/report/shopping.hpp"

#include <array>

#include "app/report/csv.hpp"
#include "app/report/json_values.hpp"
#include "app/words/verdicts.hpp"

namespace loam::report {

namespace {

std::string names(const std::vector<std::string>& ids, const words::Speaker& speaker)
{
    std::string text;
    for (const std::string& id : ids) {
        text += (text.empty() ? "" : "; ") + speaker.name_of(id).toStdString();
    }
    return text;
}

std::string row(const assess::ShoppingLine& line, const words::Speaker& speaker)
{
    const auto price = [](const std::optional<MoneyRange>& range, Money MoneyRange::*part) {
        return range ? csv_cell(money((*range).*part)) : std::string();
    };
    const std::string currency = line.pack_price ? line.pack_price->typical.currency().code : std::string();
    return csv_row({csv_cell(words::category(line.category).toStdString()), csv_cell(line.item),
                    csv_cell(line.item_name.empty() ? speaker.need(line.need).toStdString() : line.item_name),
                    csv_cell(line.pack), csv_cell(integer(line.packs)), csv_cell(number(line.amount_needed)),
                    csv_cell(line.unit), currency, price(line.pack_price, &MoneyRange::low),
                    price(line.pack_price, &MoneyRange::typical), price(line.pack_price, &MoneyRange::high),
                    price(line.line_total, &MoneyRange::low), price(line.line_total, &MoneyRange::typical),
                    price(line.line_total, &MoneyRange::high), csv_cell(names(line.enclosures, speaker)),
                    csv_cell(speaker.why(line).toStdString()), csv_cell(line.channel), csv_cell(line.instead_of)});
}

} // namespace

std::string shopping_csv(const std::vector<assess::ShoppingLine>& lines, const words::Speaker& speaker)
{
    std::string csv = csv_row({"category", "item", "name", "pack", "packs", "amount_needed", "unit", "currency",
                               "pack_price_low", "pack_price_typical", "pack_price_high", "line_total_low",
                               "line_total_typical", "line_total_high", "for", "why", "channel", "instead_of"});
    for (const assess::ShoppingLine& line : lines) {
        csv += row(line, speaker);
    }
    return csv;
}

json::Node shopping_node(const std::vector<assess::ShoppingLine>& lines)
{
    static constexpr std::array category_ids{"enclosure", "heat",   "light",      "control",   "substrate",
                                             "furniture", "water",  "electrical", "measuring", "hygiene",
                                             "food",      "health", "other"};
    json::Node list = json::Node::array();
    for (const assess::ShoppingLine& line : lines) {
        json::Node node = json::Node::object();
        node.add("item", text_or_null(line.item)).add("name", text_or_null(line.item_name));
        node.add("pack", text_or_null(line.pack)).add("packs", integer(line.packs));
        node.add("pack_price", money(line.pack_price)).add("line_total", money(line.line_total));
        node.add("for", texts(line.enclosures)).add("need", text(line.need));
        node.add("category", text(category_ids[static_cast<std::size_t>(line.category)]));
        node.add("amount_needed", number(line.amount_needed)).add("amount_owned", number(line.amount_owned));
        node.add("unit", text(line.unit)).add("left_over", range(line.left_over)).add("why", text(line.why));
        node.add("channel", text_or_null(line.channel)).add("instead_of", text_or_null(line.instead_of));
        list.add(std::move(node));
    }
    return list;
}

} // namespace loam::report
