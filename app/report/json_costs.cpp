#include <array>

#include "app/report/json_parts.hpp"
#include "app/report/json_values.hpp"
#include "core/assess/cost_lines.hpp"

namespace loam::report {

namespace {

std::string cost_kind_id(assess::CostKind kind)
{
    static constexpr std::array ids{"electricity", "replacement", "substrate", "food", "water", "health", "other"};
    return ids[static_cast<std::size_t>(kind)];
}

json::Node lines_node(const std::vector<assess::CostLine>& lines)
{
    json::Node list = json::Node::array();
    for (const assess::CostLine& line : lines) {
        json::Node node = json::Node::object();
        node.add("kind", text(cost_kind_id(line.kind))).add("item", text_or_null(line.item));
        node.add("name", text(line.name)).add("per_year", money(line.per_year));
        node.add("every_months", number(line.every_months));
        list.add(std::move(node));
    }
    return list;
}

json::Node horizon_node(const std::vector<assess::HorizonYear>& years)
{
    json::Node list = json::Node::array();
    for (const assess::HorizonYear& year : years) {
        json::Node node = json::Node::object();
        node.add("year", integer(year.year)).add("typical", money(year.spent.typical));
        node.add("cumulative", money(year.cumulative.typical)).add("spent_range", money(year.spent));
        node.add("cumulative_range", money(year.cumulative));
        list.add(std::move(node));
    }
    return list;
}

json::Node replacements_node(const std::vector<assess::Replacement>& replacements)
{
    json::Node list = json::Node::array();
    for (const assess::Replacement& replacement : replacements) {
        json::Node node = json::Node::object();
        node.add("item", text_or_null(replacement.item)).add("name", text(replacement.name));
        node.add("where", text(replacement.where)).add("due", date(replacement.due));
        node.add("earliest", date(replacement.earliest));
        node.add("price", money(replacement.price));
        node.add("because", text(replacement.uv_fades ? "uv-fades" : "wears-out"));
        list.add(std::move(node));
    }
    return list;
}

json::Node months_node(const std::vector<assess::CostMonth>& months)
{
    json::Node list = json::Node::array();
    for (const assess::CostMonth& one : months) {
        json::Node node = json::Node::object();
        node.add("month", month(one.month)).add("spent", money(one.spent));
        node.add("electricity", money(one.electricity)).add("replaced", money(one.replaced));
        node.add("others", money(one.others));
        list.add(std::move(node));
    }
    return list;
}

json::Node life_node(const std::optional<assess::LifeCost>& life)
{
    if (!life) {
        return {};
    }
    json::Node node = json::Node::object();
    node.add("animal", text(life->animal)).add("years", range(life->years));
    node.add("or_longer", json::Node::of(life->or_longer)).add("cost", money(life->cost));
    return node;
}

} // namespace

json::Node deliveries_node(const std::vector<assess::DeliveryCost>& deliveries)
{
    json::Node list = json::Node::array();
    for (const assess::DeliveryCost& one : deliveries) {
        json::Node node = json::Node::object();
        node.add("channel", text(one.channel)).add("goods", money(one.goods)).add("delivery", money(one.delivery));
        node.add("tax", money(one.tax)).add("below_minimum", json::Node::of(one.below_minimum));
        list.add(std::move(node));
    }
    return list;
}

json::Node costs_node(const assess::Costs& costs)
{
    // Prices in another currency cost nothing out: what can't be costed is not known, and never zero.
    const bool known = costs.prices_match_currency;
    const auto electricity = costs.electricity_per_year;
    json::Node node = json::Node::object();
    node.add("currency", text(costs.currency.code));
    node.add("startup", known ? money(costs.startup) : json::Node());
    node.add("deliveries", deliveries_node(costs.deliveries));
    node.add("running_per_year", known ? money(costs.running_per_year) : json::Node());
    node.add("electricity_per_year", electricity ? money(electricity->typical) : json::Node());
    node.add("horizon", horizon_node(costs.horizon)).add("net_present_cost", money(costs.net_present_cost));
    node.add("equivalent_annual_cost", money(costs.equivalent_annual_cost));
    node.add("electricity_per_year_range", money(electricity)).add("lines", lines_node(costs.lines));
    node.add("replacements", replacements_node(costs.replacements)).add("unpriced", texts(costs.unpriced));
    node.add("not_included", texts(assess::not_included(costs))).add("months", months_node(costs.months));
    node.add("running_per_animal", money(costs.running_per_animal)).add("life", life_node(costs.life));
    node.add("price_date", text_or_null(costs.price_date));
    node.add("price_illustrative", json::Node::of(costs.price_illustrative));
    return node;
}

} // namespace loam::report
