#include <array>

#include "app/report/json_parts.hpp"
#include "app/report/json_values.hpp"
#include "app/words/verdicts.hpp"

namespace loam::report {

std::string zone_id(assess::Zone zone)
{
    static constexpr std::array ids{"basking", "warm", "cool"};
    return ids[static_cast<std::size_t>(zone)];
}

std::string measure_id(climate::Measure measure)
{
    static constexpr std::array ids{"surface", "ground", "operative"};
    return ids[static_cast<std::size_t>(measure)];
}

namespace {

std::string rule_kind_id(catalog::RuleKind kind)
{
    static constexpr std::array ids{"statutory", "welfare", "veterinary", "laboratory"};
    return ids[static_cast<std::size_t>(kind)];
}

json::Node rule_node(const assess::RuleResult& rule)
{
    json::Node node = json::Node::object();
    node.add("id", text(rule.id)).add("title", text(rule.title)).add("species", text_or_null(rule.species));
    node.add("required_m2", number(rule.required_m2)).add("required_grown_m2", number(rule.required_grown_m2));
    node.add("kind", text(rule_kind_id(rule.kind))).add("jurisdiction", text(rule.jurisdiction));
    node.add("source", text(rule.source.citation)).add("confidence", text(confidence_id(rule.source.confidence)));
    add_judgement(node, rule.judgement);
    node.add("verdict_grown", text(verdict_id(rule.judgement_grown.verdict)));
    return node;
}

json::Node space_node(const assess::SpaceResult& space)
{
    json::Node rules = json::Node::array();
    for (const assess::RuleResult& rule : space.rules) {
        rules.add(rule_node(rule));
    }
    json::Node node = json::Node::object();
    node.add("floor_m2", number(space.floor_m2)).add("usable_floor_m2", number(space.usable_floor_m2));
    node.add("required_floor_m2", number(space.required_floor_m2));
    node.add("governing_rule", text_or_null(space.governing_rule));
    add_judgement(node, space.judgement);
    node.add("outgrown_in_years", number(space.outgrown_in_years)).add("rules", std::move(rules));
    return node;
}

json::Node substrate_node(const std::vector<assess::SubstrateResult>& layers)
{
    json::Node list = json::Node::array();
    for (const assess::SubstrateResult& layer : layers) {
        json::Node node = json::Node::object();
        node.add("id", text(layer.layer)).add("material", text(layer.material));
        node.add("expanded_l", number(layer.expanded_l.likely)).add("dry_kg", number(layer.dry_kg.likely));
        node.add("settled_l", number(layer.settled_l)).add("expanded_l_range", range(layer.expanded_l));
        node.add("damp_kg_range", range(layer.damp_kg));
        list.add(std::move(node));
    }
    return list;
}

json::Node mass_node(const assess::MassResult& mass)
{
    json::Node node = json::Node::object();
    node.add("total_kg", number(mass.total_kg.likely)).add("total_kg_range", range(mass.total_kg));
    node.add("shell_kg", number(mass.shell_kg)).add("substrate_kg", number(mass.substrate_kg.likely));
    node.add("water_kg", number(mass.water_kg)).add("fittings_kg", number(mass.fittings_kg));
    node.add("animals_kg", number(mass.animals_kg)).add("pressure_kpa", number(mass.pressure_kpa.likely));
    return node;
}

json::Node zone_node(const assess::ZoneResult& zone, bool known)
{
    json::Node node = json::Node::object();
    node.add("zone", text(zone_id(zone.zone))).add("measure", text(measure_id(zone.measure)));
    node.add("instrument", text(words::instrument(zone.measure).toStdString()));
    node.add("temperature_c", known ? range(zone.temperature_c) : json::Node());
    node.add("target_c", bounds(zone.target_c));
    add_judgement(node, known ? zone.judgement : Judgement());
    node.add("species", text_or_null(zone.species)).add("limited_by", text_or_null(zone.limited_by));
    node.add("limited_share", zone.limited_by.empty() ? json::Node() : number(zone.limited_share));
    return node;
}

// A range and where it is. null: not known, or nothing there to be hot.
json::Node peak_node(const std::optional<climate::PanelPeak>& peak)
{
    if (!peak) {
        return {};
    }
    json::Node node = range(peak->temperature_c);
    node.add("x_m", number(peak->at.x_m)).add("y_m", number(peak->at.y_m)).add("z_m", number(peak->at.z_m));
    return node;
}

json::Node heat_node(const std::vector<assess::HeatCase>& cases)
{
    json::Node list = json::Node::array();
    for (const assess::HeatCase& heat : cases) {
        json::Node zones = json::Node::array();
        for (const assess::ZoneResult& zone : heat.zones) {
            zones.add(zone_node(zone, heat.known));
        }
        json::Node node = json::Node::object();
        node.add("case", text(heat.id)).add("power_w", heat.known ? number(heat.power_w) : json::Node());
        node.add("room_c", heat.known ? range(heat.detail.room_c) : json::Node());
        node.add("loss_w", heat.known ? number(heat.loss_w) : json::Node()).add("zones", std::move(zones));
        node.add("floor_share_in_band", range(heat.floor_share_in_band));
        node.add("gradient_k", heat.known ? range(heat.detail.gradient_k) : json::Node());
        node.add("hottest_surface_c", heat.known ? range(heat.detail.hottest_surface_c) : json::Node());
        node.add("hottest_wall_c", peak_node(heat.detail.hottest_wall));
        node.add("hottest_top_c", peak_node(heat.detail.hottest_top));
        list.add(std::move(node));
    }
    return list;
}

json::Node power_node(const assess::EnclosureResult& enclosure)
{
    const assess::PowerResult& power = enclosure.power;
    json::Node outlets = json::Node::object();
    outlets.add("timed", integer(power.timed_outlets)).add("always_on", integer(power.always_on_outlets));
    json::Node devices = json::Node::array();
    for (const assess::DevicePower& device : power.devices) {
        json::Node node = json::Node::object();
        node.add("id", text(device.id)).add("connected_w", number(device.connected_w.likely));
        node.add("daily_kwh_winter", range(device.daily_kwh_winter));
        node.add("daily_kwh_summer", range(device.daily_kwh_summer));
        node.add("hours_per_day", number(device.hours_per_day));
        add_device_year(node, device);
        devices.add(std::move(node));
    }
    json::Node node = json::Node::object();
    node.add("connected_w", number(power.connected_w.likely)).add("daily_kwh", number(power.daily_kwh.likely));
    node.add("outlets", std::move(outlets)).add("daily_kwh_range", range(power.daily_kwh));
    node.add("devices", std::move(devices));
    add_months(node, enclosure);
    return node;
}

json::Node photoperiod_node(const assess::EnclosureResult& enclosure)
{
    const assess::PhotoperiodResult& photoperiod = enclosure.photoperiod;
    json::Node node = json::Node::object();
    node.add("hours", number(photoperiod.hours)).add("target_h", bounds(photoperiod.target_h));
    add_judgement(node, photoperiod.judgement);
    node.add("day_length_midsummer_h", number(photoperiod.day_length_midsummer_h));
    node.add("day_length_midwinter_h", number(photoperiod.day_length_midwinter_h));
    node.add("with_the_sky", json::Node::of(enclosure.light_with_the_sky)).add("year", light_year_node(enclosure));
    return node;
}

} // namespace

json::Node enclosure_node(const assess::EnclosureResult& enclosure)
{
    json::Node node = json::Node::object();
    node.add("id", text(enclosure.id)).add("name", text(enclosure.name));
    add_judgement(node, enclosure.overall);
    node.add("space", space_node(enclosure.space)).add("substrate", substrate_node(enclosure.substrate));
    node.add("mass", mass_node(enclosure.mass)).add("heat", heat_node(enclosure.heat));
    node.add("humidity", humidity_node(enclosure)).add("uv", uv_node(enclosure.uv));
    node.add("calibration", calibration_node(enclosure.calibration));
    node.add("power", power_node(enclosure)).add("water", water_node(enclosure.water));
    node.add("photoperiod", photoperiod_node(enclosure));
    node.add("cool_seasons", cool_seasons_node(enclosure.cool_seasons));
    node.add("records", records_node(enclosure.records));
    add_courses(node, enclosure);
    return node;
}

} // namespace loam::report
