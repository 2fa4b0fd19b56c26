// Moisture of one enclosure. Each case has its map: rows of cells from the front left corner, so that a program can
// draw it.
#include <algorithm>
#include <cmath>

#include "app/report/json_parts.hpp"
#include "app/report/json_values.hpp"
#include "core/climate/condensation.hpp"

namespace loam::report {

namespace {

const assess::HeatCase* solved(const assess::EnclosureResult& enclosure, const std::string& id)
{
    const auto found = std::find_if(enclosure.heat.begin(), enclosure.heat.end(),
                                    [&](const assess::HeatCase& heat) { return heat.id == id; });
    return found != enclosure.heat.end() && found->known ? &*found : nullptr;
}

// To a thousandth, which is more than it is worth. null: not known.
json::Node map_node(const climate::CaseResult& detail)
{
    constexpr double thousand = 1000.0;
    const climate::FloorField& floor = detail.floor;
    if (floor.humidity.empty()) {
        return {};
    }
    json::Node node = json::Node::object();
    node.add("x_m", number(0.0)).add("y_m", number(0.0)).add("dx_m", number(floor.dx_m));
    node.add("dy_m", number(floor.dy_m)).add("columns", integer(static_cast<std::int64_t>(floor.nx)));
    node.add("rows", integer(static_cast<std::int64_t>(floor.ny)));
    json::Node rows = json::Node::array();
    for (std::size_t row = 0; row < floor.ny; ++row) {
        json::Node cells = json::Node::array();
        for (std::size_t column = 0; column < floor.nx; ++column) {
            cells.add(number(std::round(thousand * floor.humidity[row * floor.nx + column]) / thousand));
        }
        rows.add(std::move(cells));
    }
    node.add("likely", std::move(rows));
    return node;
}

json::Node hides_node(const std::vector<assess::DampHideResult>& hides)
{
    json::Node list = json::Node::array();
    for (const assess::DampHideResult& hide : hides) {
        json::Node node = json::Node::object();
        node.add("fitting", text(hide.id)).add("relative_humidity", range(hide.relative_humidity));
        list.add(std::move(node));
    }
    return list;
}

// What decides whether panes run wet. null: not known.
void add_condensation(json::Node& node, const climate::CaseResult* detail)
{
    node.add("dew_point_c", detail != nullptr ? number(climate::lower_dew_point_c(*detail)) : json::Node());
    node.add("coldest_pane_c", detail != nullptr ? number(detail->coldest_pane_c) : json::Node());
    node.add("condensation", detail != nullptr ? json::Node::of(detail->condensation) : json::Node());
}

} // namespace

json::Node humidity_node(const assess::EnclosureResult& enclosure)
{
    json::Node list = json::Node::array();
    for (const assess::HumidityCase& humidity : enclosure.humidity) {
        const bool known = humidity.relative_humidity.has_value();
        const assess::HeatCase* heat = solved(enclosure, humidity.id);
        json::Node node = json::Node::object();
        node.add("case", text(humidity.id)).add("relative_humidity", range(humidity.relative_humidity));
        node.add("relative_humidity_warm_side", range(humidity.warm_side));
        node.add("relative_humidity_air", range(humidity.air)).add("humid_hides", hides_node(humidity.hides));
        node.add("target", bounds(humidity.target));
        node.add("evaporation_l_per_day", known ? number(humidity.evaporation_l_per_day.likely) : json::Node());
        node.add("misting_needed_l_per_day", likely(humidity.misting_needed_l_per_day));
        add_judgement(node, humidity.judgement);
        add_condensation(node, heat != nullptr ? &heat->detail : nullptr);
        node.add("map", heat != nullptr ? map_node(heat->detail) : json::Node());
        list.add(std::move(node));
    }
    return list;
}

} // namespace loam::report
