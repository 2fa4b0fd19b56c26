#include "app/report/assessment_json.hpp"

#include "app/report/json_parts.hpp"
#include "app/report/json_values.hpp"
#include "app/report/shopping.hpp"
#include "app/words/speaker.hpp"

namespace loam::report {

namespace {

json::Node assumed_node(const std::vector<assess::Assumed>& assumed)
{
    json::Node list = json::Node::array();
    for (const assess::Assumed& each : assumed) {
        json::Node bracket;
        if (each.bracket) {
            bracket = json::Node::object();
            bracket.add("low", number(each.bracket->low)).add("likely", number(each.bracket->likely));
            bracket.add("high", number(each.bracket->high));
        }
        json::Node node = json::Node::object();
        node.add("where", text(each.where)).add("bracket", std::move(bracket)).add("unit", text(each.unit));
        node.add("source", text_or_null(each.source.citation));
        node.add("confidence", text(confidence_id(each.source.confidence)));
        list.add(std::move(node));
    }
    return list;
}

json::Node because_node(const Because& because)
{
    json::Node inputs = json::Node::object();
    json::Node units = json::Node::object();
    for (const Input& input : because.inputs) {
        inputs.add(input.name, number(input.value));
        units.add(input.name, text(input.unit));
    }
    json::Node labels = json::Node::object();
    for (const Label& label : because.labels) {
        labels.add(label.name, text(label.text));
    }
    json::Node node = json::Node::object();
    node.add("rule", text(because.rule)).add("inputs", std::move(inputs));
    node.add("source", text_or_null(because.source.citation));
    node.add("confidence", text(confidence_id(because.source.confidence)));
    node.add("units", std::move(units)).add("labels", std::move(labels));
    return node;
}

json::Node circuits_node(const std::vector<assess::CircuitResult>& circuits)
{
    json::Node list = json::Node::array();
    for (const assess::CircuitResult& circuit : circuits) {
        json::Node node = json::Node::object();
        node.add("id", text(circuit.id)).add("load_fraction", likely(circuit.load_fraction));
        add_judgement(node, circuit.judgement);
        node.add("load_w", number(circuit.load_w.likely)).add("load_fraction_range", range(circuit.load_fraction));
        list.add(std::move(node));
    }
    return list;
}

json::Node strips_node(const std::vector<assess::StripResult>& strips)
{
    json::Node list = json::Node::array();
    for (const assess::StripResult& strip : strips) {
        json::Node node = json::Node::object();
        node.add("id", text(strip.id)).add("load_w", number(strip.load_w.likely));
        add_judgement(node, strip.judgement);
        node.add("timed_used", integer(strip.timed_used)).add("always_on_used", integer(strip.always_on_used));
        list.add(std::move(node));
    }
    return list;
}

json::Node stands_node(const std::vector<assess::StandResult>& stands)
{
    json::Node list = json::Node::array();
    for (const assess::StandResult& stand : stands) {
        json::Node node = json::Node::object();
        node.add("id", text(stand.id)).add("load_kg", number(stand.load_kg.likely));
        add_judgement(node, stand.judgement);
        node.add("load_kg_range", range(stand.load_kg)).add("rated_kg", number(stand.rated_kg));
        list.add(std::move(node));
    }
    return list;
}

} // namespace

json::Node findings_node(const std::vector<Finding>& findings, const words::Speaker& speaker)
{
    json::Node list = json::Node::array();
    for (const Finding& finding : findings) {
        json::Node node = json::Node::object();
        node.add("code", text(finding.code));
        add_judgement(node, {finding.verdict, finding.direction});
        node.add("where", text(finding.where)).add("enclosure", text_or_null(finding.enclosure));
        node.add("text", text(speaker.finding(finding).toStdString()));
        node.add("remedy", text_or_null(speaker.remedy(finding).toStdString()));
        node.add("remedy_code", finding.remedy ? text(finding.remedy->code) : json::Node());
        node.add("because", because_node(finding.because));
        list.add(std::move(node));
    }
    return list;
}

json::Node assessment_node(const assess::Assessment& assessment, const plan::Plan& plan,
                           const catalog::Catalog& catalog)
{
    const words::Speaker speaker(words::Formatter(), plan, catalog);
    json::Node enclosures = json::Node::array();
    for (const assess::EnclosureResult& enclosure : assessment.enclosures) {
        enclosures.add(enclosure_node(enclosure));
    }
    json::Node node = json::Node::object();
    node.add("format", text("loamstead-assessment")).add("version", integer(1));
    node.add("plan", text(assessment.plan_title)).add("date", date(assessment.date));
    node.add("assumed", assumed_node(assessment.assumed)).add("enclosures", std::move(enclosures));
    node.add("circuits", circuits_node(assessment.circuits)).add("strips", strips_node(assessment.strips));
    node.add("stands", stands_node(assessment.stands)).add("shopping", shopping_node(assessment.shopping));
    node.add("costs", costs_node(assessment.costs)).add("findings", findings_node(assessment.findings, speaker));
    return node;
}

std::string assessment_json(const assess::Assessment& assessment, const plan::Plan& plan,
                            const catalog::Catalog& catalog)
{
    return json::write(assessment_node(assessment, plan, catalog));
}

} // namespace loam::report
