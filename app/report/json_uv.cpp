// UV of one enclosure. The map is rows of cells from the front left corner, so that a program can draw it.
#include <cmath>

#include "app/report/json_parts.hpp"
#include "app/report/json_values.hpp"

namespace loam::report {

namespace {

json::Node source_node(const Source& source)
{
    json::Node node = json::Node::object();
    node.add("citation", text_or_null(source.citation));
    node.add("confidence", source.citation.empty() ? json::Node() : text(confidence_id(source.confidence)));
    return node;
}

json::Node place_node(const std::optional<assess::UvPlace>& place)
{
    if (!place) {
        return {};
    }
    json::Node node = json::Node::object();
    node.add("x_m", number(place->back.x_m)).add("y_m", number(place->back.y_m)).add("z_m", number(place->back.z_m));
    node.add("standing_on", text(place->standing.empty() ? "bed" : place->standing)).add("uvi", range(place->uvi));
    return node;
}

json::Node lamps_node(const std::vector<assess::UvLampResult>& lamps)
{
    json::Node list = json::Node::array();
    for (const assess::UvLampResult& lamp : lamps) {
        json::Node node = json::Node::object();
        node.add("id", text(lamp.id)).add("uvi_at_basking", range(lamp.uvi_at_basking));
        node.add("nearest_m", number(lamp.nearest_m)).add("nearest", place_node(lamp.nearest));
        node.add("safe_distance_m", number(lamp.safe_distance_m));
        node.add("readings_from_m", lamp.reach ? number(lamp.reach->nearest_m) : json::Node());
        node.add("readings_to_m", lamp.reach ? number(lamp.reach->farthest_m) : json::Node());
        node.add("life_left_h", range(lamp.life_left_h));
        list.add(std::move(node));
    }
    return list;
}

json::Node heights_node(const std::optional<assess::UvHeights>& heights)
{
    if (!heights) {
        return {};
    }
    json::Node node = json::Node::object();
    node.add("lamp", text(heights->lamp)).add("from_m", number(heights->from_m)).add("to_m", number(heights->to_m));
    node.add("whole_range", json::Node::of(heights->whole_range));
    return node;
}

json::Node hours_node(const assess::UvHours& hours)
{
    json::Node node = json::Node::object();
    node.add("earliest", number(hours.earliest_h)).add("likely", number(hours.likely_h));
    node.add("latest", number(hours.latest_h));
    return node;
}

json::Node row_node(const light::UvMap& map, std::size_t row, double Range::*end)
{
    constexpr double hundred = 100.0;
    json::Node list = json::Node::array();
    for (std::size_t column = 0; column < map.grid.nx; ++column) {
        const std::optional<Range>& uvi = map.uvi[row * map.grid.nx + column];
        list.add(uvi ? number(std::round((*uvi).*end * hundred) / hundred) : json::Node());
    }
    return list;
}

json::Node map_node(const light::UvMap& map)
{
    if (map.uvi.empty()) {
        return {};
    }
    json::Node node = json::Node::object();
    node.add("x_m", number(0.0)).add("y_m", number(0.0)).add("dx_m", number(map.grid.dx_m));
    node.add("dy_m", number(map.grid.dy_m)).add("columns", integer(static_cast<std::int64_t>(map.grid.nx)));
    node.add("rows", integer(static_cast<std::int64_t>(map.grid.ny)));
    const struct {
        const char* name;
        double Range::*end;
    } ends[] = {{"low", &Range::low}, {"likely", &Range::likely}, {"high", &Range::high}};
    for (const auto& [name, end] : ends) {
        json::Node rows = json::Node::array();
        for (std::size_t row = 0; row < map.grid.ny; ++row) {
            rows.add(row_node(map, row, end));
        }
        node.add(name, std::move(rows));
    }
    return node;
}

json::Node dark_node(const std::optional<light::FloorShare>& dark)
{
    if (!dark) {
        return {};
    }
    json::Node node = json::Node::object();
    node.add("surely", number(dark->surely)).add("at_most", number(dark->at_most));
    return node;
}

json::Node day(const std::optional<std::chrono::year_month_day>& given)
{
    return given ? date(*given) : json::Node();
}

} // namespace

json::Node uv_node(const assess::UvResult& uv)
{
    json::Node node = json::Node::object();
    node.add("needed", json::Node::of(uv.needed)).add("uvi_at_basking", range(uv.uvi_at_basking));
    node.add("ferguson_zone", uv.ferguson_zone > 0 ? integer(uv.ferguson_zone) : json::Node());
    node.add("target_uvi", bounds(uv.target_uvi));
    add_judgement(node, uv.judgement);
    node.add("replace_after_hours", number(uv.replace_after_hours));
    node.add("species", text_or_null(uv.species)).add("zone_source", source_node(uv.target_uvi.source));
    node.add("sheet_source", source_node(uv.sheet));
    node.add("basking", uv.lamps.empty() ? json::Node() : place_node(uv.basking));
    node.add("strongest", place_node(uv.strongest)).add("floor_share_without_uv", dark_node(uv.dark));
    node.add("lamps", lamps_node(uv.lamps)).add("heights", heights_node(uv.heights));
    node.add("hours_in_target", hours_node(uv.left)).add("hours_in_target_from_new", hours_node(uv.from_new));
    node.add("falls_short_on", day(uv.falls_out_on)).add("falls_short_earliest", day(uv.falls_out_earliest));
    node.add("map", map_node(uv.map));
    return node;
}

} // namespace loam::report
