#include "app/report/suggestions.hpp"

#include <cmath>

#include "app/report/json_parts.hpp"
#include "app/report/json_values.hpp"
#include "core/plan/file.hpp"

namespace loam::report {

namespace {

json::Node merits_node(const std::vector<suggest::Merit>& merits)
{
    json::Node list = json::Node::array();
    for (const suggest::Merit merit : merits) {
        list.add(text(merit_id(merit)));
    }
    return list;
}

json::Node suggestion_node(const suggest::Suggestion& one, const QString& file, const catalog::Catalog& catalog,
                           const words::Formatter& formatter)
{
    const words::Speaker speaker(formatter, one.plan, catalog);
    json::Node node = json::Node::object();
    node.add("merits", merits_node(one.merits)).add("meets", json::Node::of(one.meets));
    node.add("margin_k", std::isfinite(one.margin_k) ? number(one.margin_k) : json::Node());
    node.add("missed_k", number(one.missed_k));
    node.add("file", text_or_null(file.toStdString()));
    node.add("costs", costs_node(one.assessment.costs));
    node.add("obstacles", findings_node(suggest::obstacles(one.assessment), speaker));
    node.add("besides", findings_node(suggest::besides(one.assessment), speaker));
    json::Node enclosures = json::Node::array();
    for (const assess::EnclosureResult& enclosure : one.assessment.enclosures) {
        enclosures.add(enclosure_node(enclosure));
    }
    node.add("enclosures", std::move(enclosures)).add("plan", plan::node_of(one.plan));
    return node;
}

} // namespace

const char* merit_id(suggest::Merit merit)
{
    switch (merit) {
    case suggest::Merit::cheapest_to_buy:
        return "cheapest-to-buy";
    case suggest::Merit::cheapest_over_years:
        return "cheapest-over-years";
    case suggest::Merit::widest_margin:
        return "widest-margin";
    }
    return "";
}

std::string suggestions_json(const Suggestions& suggestions, const catalog::Catalog& catalog,
                             const words::Formatter& formatter)
{
    const suggest::Result& result = suggestions.result;
    json::Node list = json::Node::array();
    for (std::size_t i = 0; i < result.suggestions.size(); ++i) {
        const QString file = suggestions.files.value(static_cast<qsizetype>(i));
        list.add(suggestion_node(result.suggestions[i], file, catalog, formatter));
    }
    json::Node node = json::Node::object();
    node.add("format", text("loamstead-suggestions")).add("version", integer(1));
    node.add("tried", integer(static_cast<std::int64_t>(result.tried)));
    node.add("new_boxes", texts(result.new_boxes)).add("no_box", texts(result.no_box));
    node.add("deeper_beds", texts(result.deeper_beds));
    node.add("unknown", texts(result.unknown)).add("least_to_begin", money(result.least_to_begin));
    node.add("suggestions", std::move(list));
    return json::write(node);
}

} // namespace loam::report
