#include "app/report/json_parts.hpp"
#include "app/report/json_values.hpp"

namespace loam::report {

namespace {

json::Node day(std::chrono::sys_days on)
{
    return date(std::chrono::year_month_day(on));
}

json::Node length_bounds(const std::optional<space::LengthBounds>& bounds)
{
    if (!bounds) {
        return {};
    }
    json::Node node = json::Node::object();
    node.add("min", number(bounds->slow_m)).add("max", number(bounds->fast_m));
    return node;
}

json::Node points_node(const std::vector<assess::RecordPoint>& points)
{
    json::Node list = json::Node::array();
    for (const assess::RecordPoint& point : points) {
        json::Node node = json::Node::object();
        node.add("date", day(point.on)).add("length_m", number(point.length_m)).add("mass_kg", number(point.mass_kg));
        node.add("expected_length_m", length_bounds(point.expected));
        list.add(std::move(node));
    }
    return list;
}

json::Node record_node(const assess::RecordResult& record)
{
    json::Node node = json::Node::object();
    node.add("animal", text(record.animal)).add("species", text(record.species));
    node.add("points", points_node(record.points)).add("growth_per_year", range(record.growth_per_year));
    json::Node growth = json::Node::object();
    add_judgement(growth, record.growth);
    node.add("growth", std::move(growth));
    json::Node mass = json::Node::object();
    mass.add("lost", number(record.lost));
    mass.add("heaviest_kg", record.lost ? number(record.heaviest_kg) : json::Node());
    mass.add("heaviest_on", record.lost ? day(record.heaviest_on) : json::Node());
    add_judgement(mass, record.mass);
    node.add("mass", std::move(mass));
    json::Node ahead = json::Node::array();
    for (const assess::LengthAhead& one : record.ahead) {
        json::Node length = json::Node::object();
        length.add("date", day(one.on)).add("length_m", length_bounds(one.length));
        ahead.add(std::move(length));
    }
    node.add("ahead", std::move(ahead));
    return node;
}

} // namespace

json::Node records_node(const std::vector<assess::RecordResult>& records)
{
    json::Node list = json::Node::array();
    for (const assess::RecordResult& record : records) {
        list.add(record_node(record));
    }
    return list;
}

} // namespace loam::report
