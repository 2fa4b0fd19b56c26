// The price lists' reports for programs and spreadsheets.
#include <array>

#include "app/report/csv.hpp"
#include "app/report/json_values.hpp"
#include "app/report/price_lists.hpp"

namespace loam::report {

namespace {

std::string difference_id(catalog::Difference kind)
{
    static constexpr std::array ids{"added", "removed", "changed"};
    return ids[static_cast<std::size_t>(kind)];
}

json::Node decimal(const std::optional<Decimal>& value)
{
    return value ? json::Node::literal(value->text()) : json::Node();
}

json::Node list_node(const catalog::PriceList& prices)
{
    json::Node node = json::Node::object();
    node.add("title", text(prices.title)).add("date", text(prices.date)).add("place", text(prices.place));
    return std::move(node.add("currency", text(prices.currency)));
}

json::Node pack_node(const std::optional<catalog::Pack>& pack)
{
    if (!pack) {
        return {};
    }
    json::Node price = json::Node::object();
    price.add("low", decimal(pack->low)).add("typical", decimal(pack->typical)).add("high", decimal(pack->high));
    json::Node node = json::Node::object();
    node.add("name", text(pack->name)).add("amount", range(pack->amount)).add("price", std::move(price));
    return std::move(node.add("in_stock", json::Node::of(pack->in_stock)));
}

// What of a changed pack is not the same.
json::Node changes(const catalog::PackDifference& pack)
{
    std::vector<std::string> names;
    for (const auto& [differs, name] :
         {std::pair{pack.price, "price"}, {pack.amount, "amount"}, {pack.stock, "stock"}}) {
        if (differs) {
            names.emplace_back(name);
        }
    }
    return texts(names);
}

} // namespace

std::string price_list_json(const PriceListShown& list)
{
    json::Node node = list_node(list.prices);
    node.add("illustrative", json::Node::of(list.prices.illustrative));
    node.add("as_of", date(list.date)).add("age_months", number(list.state.age_months));
    node.add("old", json::Node::of(list.state.old));
    node.add("items", integer(static_cast<std::int64_t>(list.prices.items.size())));
    node.add("out_of_stock", texts(list.state.out_of_stock)).add("no_price_for", texts(list.state.unserved));
    return json::write(node);
}

std::string price_difference_json(const TwoPriceLists& lists)
{
    json::Node items = json::Node::array();
    for (const catalog::ItemDifference& item : lists.difference.items) {
        json::Node node = json::Node::object();
        node.add("item", text(item.id)).add("name", text(item.name)).add("difference", text(difference_id(item.kind)));
        items.add(std::move(node));
    }
    json::Node packs = json::Node::array();
    for (const catalog::PackDifference& pack : lists.difference.packs) {
        json::Node node = json::Node::object();
        node.add("item", text(pack.item)).add("pack", text((pack.after ? pack.after : pack.before)->id));
        node.add("difference", text(difference_id(pack.kind))).add("changes", changes(pack));
        node.add("first", pack_node(pack.before)).add("second", pack_node(pack.after));
        node.add("rise", decimal(pack.rise)).add("rise_share", number(pack.rise_share));
        packs.add(std::move(node));
    }
    json::Node sides = json::Node::array();
    sides.add(list_node(lists.first)).add(list_node(lists.second));
    json::Node node = json::Node::object();
    node.add("lists", std::move(sides)).add("prices_compared", json::Node::of(lists.difference.prices_compared));
    node.add("items", std::move(items)).add("packs", std::move(packs));
    return json::write(node);
}

std::string price_difference_csv(const TwoPriceLists& lists)
{
    std::string csv = csv_row({"difference", "item_id", "item_name", "pack_id", "pack_name", "first_currency",
                               "first_price_low", "first_price_typical", "first_price_high", "first_amount_likely",
                               "first_in_stock", "second_currency", "second_price_low", "second_price_typical",
                               "second_price_high", "second_amount_likely", "second_in_stock", "rise", "rise_share"});
    for (const catalog::PackDifference& pack : lists.difference.packs) {
        const catalog::Pack& known = pack.after ? *pack.after : *pack.before;
        std::vector<std::string> cells{difference_id(pack.kind), csv_cell(pack.item), csv_cell(pack.item_name),
                                       csv_cell(known.id), csv_cell(known.name)};
        const auto add_side = [&](const std::optional<catalog::Pack>& side, const std::string& currency) {
            if (!side) {
                cells.insert(cells.end(), 6, std::string());
                return;
            }
            for (const std::string& cell :
                 {csv_cell(currency), side->low.text(), side->typical.text(), side->high.text(),
                  csv_cell(number(side->amount.likely)), std::string(side->in_stock ? "true" : "false")}) {
                cells.push_back(cell);
            }
        };
        add_side(pack.before, lists.first.currency);
        add_side(pack.after, lists.second.currency);
        cells.push_back(csv_cell(decimal(pack.rise)));
        cells.push_back(csv_cell(number(pack.rise_share)));
        csv += csv_row(cells);
    }
    return csv;
}

} // namespace loam::report
