#include "app/report/comparison.hpp"

#include <array>

#include "app/report/json_parts.hpp"
#include "app/report/json_values.hpp"
#include "core/assess/cost_lines.hpp"

namespace loam::report {

namespace {

using assess::Sides;

// "[first, second]" of whatever `one` makes of a side.
template <typename T, typename One> json::Node both(const Sides<T>& sides, const One& one)
{
    json::Node list = json::Node::array();
    for (const T& side : sides) {
        list.add(one(side));
    }
    return list;
}

std::string figure_id(assess::Compared what)
{
    static constexpr std::array ids{"floor_m2",       "usable_floor_m2", "required_floor_m2", "connected_w", "year_kwh",
                                    "winter_day_kwh", "summer_day_kwh",  "water_l_per_day",   "mass_kg"};
    return ids[static_cast<std::size_t>(what)];
}

std::string payback_id(assess::Payback kind)
{
    static constexpr std::array ids{"at-once", "after", "never", "trade", "not-known"};
    return ids[static_cast<std::size_t>(kind)];
}

json::Node verdict_node(const Judgement& judgement)
{
    return text(verdict_id(judgement.verdict));
}

json::Node zones_node(const std::vector<assess::ComparedZone>& zones)
{
    json::Node list = json::Node::array();
    for (const assess::ComparedZone& zone : zones) {
        const auto part = [&](auto of) {
            return both(zone.sides, [&](const auto& side) { return side ? of(*side) : json::Node(); });
        };
        json::Node node = json::Node::object();
        node.add("case", text(zone.case_id)).add("zone", text(zone_id(zone.zone)));
        node.add("measure", text(measure_id(zone.measure)));
        node.add("temperature_c", part([](const assess::ZoneResult& side) { return range(side.temperature_c); }));
        node.add("target_c", part([](const assess::ZoneResult& side) { return bounds(side.target_c); }));
        node.add("verdict", part([](const assess::ZoneResult& side) { return verdict_node(side.judgement); }));
        list.add(std::move(node));
    }
    return list;
}

json::Node humidity_node(const std::vector<assess::ComparedHumidity>& cases)
{
    json::Node list = json::Node::array();
    for (const assess::ComparedHumidity& each : cases) {
        const auto part = [&](auto of) {
            return both(each.sides, [&](const auto& side) { return side ? of(*side) : json::Node(); });
        };
        json::Node node = json::Node::object();
        node.add("case", text(each.case_id));
        node.add("relative_humidity",
                 part([](const assess::HumidityCase& side) { return range(side.relative_humidity); }));
        node.add("target", part([](const assess::HumidityCase& side) { return bounds(side.target); }));
        node.add("verdict", part([](const assess::HumidityCase& side) { return verdict_node(side.judgement); }));
        list.add(std::move(node));
    }
    return list;
}

json::Node enclosures_node(const std::vector<assess::ComparedEnclosure>& enclosures)
{
    json::Node list = json::Node::array();
    for (const assess::ComparedEnclosure& enclosure : enclosures) {
        json::Node figures = json::Node::object();
        for (const assess::ComparedFigure& figure : enclosure.figures) {
            figures.add(figure_id(figure.what), both(figure.values, [](const auto& side) { return range(side); }));
        }
        json::Node node = json::Node::object();
        node.add("ids", both(enclosure.ids, text_or_null)).add("names", both(enclosure.names, text_or_null));
        node.add("verdict", both(enclosure.overall, verdict_node));
        node.add("space_verdict", both(enclosure.space, verdict_node)).add("figures", std::move(figures));
        node.add("zones", zones_node(enclosure.zones)).add("humidity", humidity_node(enclosure.humidity));
        list.add(std::move(node));
    }
    return list;
}

json::Node shopping_node(const std::vector<assess::ComparedPurchase>& purchases)
{
    json::Node list = json::Node::array();
    for (const assess::ComparedPurchase& purchase : purchases) {
        json::Node node = json::Node::object();
        node.add("need", text(purchase.need)).add("item", text_or_null(purchase.item));
        node.add("name", text_or_null(purchase.item_name)).add("pack", text_or_null(purchase.pack));
        node.add("packs", both(purchase.packs, integer));
        node.add("line_total", both(purchase.totals, [](const auto& side) { return money(side); }));
        list.add(std::move(node));
    }
    return list;
}

json::Node costs_node(const TwoPlans& plans)
{
    const auto part = [&](auto of) {
        return both(plans.sides, [&](const assess::Assessment* side) { return of(side->costs); });
    };
    const auto costed = [&](MoneyRange assess::Costs::*sum) {
        return part([sum](const assess::Costs& costs) {
            return costs.prices_match_currency ? money(costs.*sum) : json::Node();
        });
    };
    json::Node node = json::Node::object();
    node.add("currency", part([](const assess::Costs& costs) { return text(costs.currency.code); }));
    node.add("startup", costed(&assess::Costs::startup));
    node.add("running_per_year", costed(&assess::Costs::running_per_year));
    node.add("electricity_per_year", part([](const assess::Costs& costs) {
                 return costs.electricity_per_year ? money(costs.electricity_per_year->typical) : json::Node();
             }));
    node.add("electricity_per_year_range",
             part([](const assess::Costs& costs) { return money(costs.electricity_per_year); }));
    node.add("net_present_cost", part([](const assess::Costs& costs) { return money(costs.net_present_cost); }));
    node.add("equivalent_annual_cost",
             part([](const assess::Costs& costs) { return money(costs.equivalent_annual_cost); }));
    node.add("unpriced", part([](const assess::Costs& costs) { return texts(costs.unpriced); }));
    node.add("not_included", part([](const assess::Costs& costs) { return texts(assess::not_included(costs)); }));
    const assess::PaybackResult& payback = plans.comparison.payback;
    node.add("payback", text(payback_id(payback.kind))).add("payback_years", number(payback.years));
    return node;
}

} // namespace

std::string comparison_json(const TwoPlans& plans)
{
    json::Node node = json::Node::object();
    node.add("format", text("loamstead-comparison")).add("version", integer(1));
    node.add("plans", both(plans.sides, [](const assess::Assessment* side) { return text(side->plan_title); }));
    node.add("date", date(plans.sides[0]->date));
    node.add("enclosures", enclosures_node(plans.comparison.enclosures));
    node.add("shopping", shopping_node(plans.comparison.purchases)).add("costs", costs_node(plans));
    return json::write(node);
}

} // namespace loam::report
