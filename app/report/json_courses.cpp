#include "app/report/json_parts.hpp"
#include "app/report/json_values.hpp"
#include "app/words/courses.hpp"

namespace loam::report {

namespace {

using climate::CoursePoint;

json::Node point_node(const CoursePoint& point)
{
    json::Node node = json::Node::object();
    node.add("hour", number(point.hour)).add("lamps_on", json::Node::of(point.lamps_on));
    node.add("room_c", number(point.room_c)).add("basking_c", number(point.basking_c));
    node.add("warm_c", number(point.warm_c)).add("cool_c", number(point.cool_c));
    node.add("hottest_c", number(point.hottest_c)).add("coldest_c", number(point.coldest_c));
    node.add("digging_c", number(point.digging_c)).add("relative_humidity", number(point.humidity));
    node.add("power_w", number(point.power_w));
    return node;
}

json::Node limits_node(const std::vector<assess::TimeToLimit>& limits)
{
    json::Node list = json::Node::array();
    for (const assess::TimeToLimit& limit : limits) {
        json::Node node = json::Node::object();
        node.add("species", text(limit.species)).add("direction", direction(limit.direction));
        node.add("limit_c", number(limit.limit_c)).add("earliest_h", number(limit.earliest_h));
        node.add("likely_h", number(limit.likely_h)).add("source", text_or_null(limit.source.citation));
        node.add("confidence", text(confidence_id(limit.source.confidence)));
        list.add(std::move(node));
    }
    return list;
}

json::Node swing_node(const climate::Swing& swing)
{
    json::Node node = json::Node::object();
    node.add("low", number(swing.low)).add("high", number(swing.high));
    return node;
}

// Likely values over one cycle.
json::Node switching_node(const std::vector<assess::SwitchingResult>& all)
{
    json::Node list = json::Node::array();
    for (const assess::SwitchingResult& each : all) {
        json::Node node = json::Node::object();
        node.add("device", text(each.device)).add("lamps_on", json::Node::of(each.lamps_on));
        node.add("hysteresis_k", number(each.hysteresis_k)).add("assumed", json::Node::of(each.assumed));
        node.add("period_h", number(each.cycle.period_h)).add("on_share", number(each.cycle.on_share));
        node.add("times_per_day", number(each.cycle.per_day)).add("probe_c", swing_node(each.cycle.probe_c));
        node.add("warm_c", swing_node(each.cycle.warm_c)).add("basking_c", swing_node(each.cycle.basking_c));
        node.add("hottest_c", number(each.cycle.hottest_c)).add("digging_c", number(each.cycle.digging_c));
        list.add(std::move(node));
    }
    return list;
}

// What every course has, behind what names it.
void add_course(json::Node& node, const assess::CourseResult& result)
{
    json::Node spread = json::Node::object();
    spread.add("basking", range(result.basking_spread_k)).add("warm", range(result.warm_spread_k));
    spread.add("cool", range(result.cool_spread_k));
    json::Node points = json::Node::array();
    for (const CoursePoint& point : result.course.points) {
        points.add(point_node(point));
    }
    node.add("complete", json::Node::of(result.course.complete)).add("kwh", number(result.course.energy_kwh));
    node.add("spread_k", std::move(spread)).add("relative_humidity_spread", range(result.humidity_spread));
    json::Node misted = json::Node::array();
    for (const double hour : result.course.misted_h) {
        misted.add(number(hour));
    }
    node.add("misted_h", std::move(misted)).add("limits", limits_node(result.limits));
    node.add("points", std::move(points));
}

json::Node warm_up_node(const assess::CourseResult& result)
{
    json::Node settled = json::Node::object();
    settled.add("basking", number(words::settled_h(result.course, &CoursePoint::basking_c)));
    settled.add("warm", number(words::settled_h(result.course, &CoursePoint::warm_c)));
    settled.add("cool", number(words::settled_h(result.course, &CoursePoint::cool_c)));
    json::Node node = json::Node::object();
    node.add("settled_h", std::move(settled));
    add_course(node, result);
    return node;
}

json::Node dry_spell_node(const assess::DrySpellResult& spell)
{
    json::Node points = json::Node::array();
    for (const climate::DrySpellPoint& point : spell.course.points) {
        json::Node node = json::Node::object();
        node.add("days", number(point.days)).add("lost_l", number(point.lost_l));
        node.add("relative_humidity_day", number(point.day_humidity));
        node.add("relative_humidity_night", number(point.night_humidity));
        points.add(std::move(node));
    }
    json::Node node = json::Node::object();
    node.add("season", text(spell.season)).add("bed_holds_l", number(spell.course.holds_l));
    node.add("least_relative_humidity", number(spell.least_humidity));
    node.add("days_until_below", range(spell.days));
    node.add("holds_throughout", json::Node::of(spell.holds_throughout));
    node.add("may_hold_longer", json::Node::of(spell.may_hold_longer)).add("points", std::move(points));
    return node;
}

} // namespace

void add_courses(json::Node& node, const assess::EnclosureResult& enclosure)
{
    json::Node days = json::Node::array();
    for (const assess::CourseResult& result : enclosure.days) {
        json::Node day = json::Node::object();
        day.add("season", text(result.id)).add("unrest_k", number(result.course.unrest_k));
        day.add("switching", switching_node(result.switching));
        add_course(day, result);
        days.add(std::move(day));
    }
    json::Node drills = json::Node::array();
    for (const assess::CourseResult& result : enclosure.drills) {
        json::Node drill = json::Node::object();
        drill.add("case", text(result.id));
        add_course(drill, result);
        drills.add(std::move(drill));
    }
    node.add("days", std::move(days)).add("drills", std::move(drills));
    json::Node spells = json::Node::array();
    for (const assess::DrySpellResult& spell : enclosure.dry_spells) {
        spells.add(dry_spell_node(spell));
    }
    node.add("dry_spells", std::move(spells));
    node.add("warm_up", enclosure.warm_up ? warm_up_node(*enclosure.warm_up) : json::Node());
}

} // namespace loam::report
