#include "app/report/json_parts.hpp"
#include "app/report/json_values.hpp"
#include "app/words/seasons.hpp"
#include "core/assess/iso_day.hpp"

namespace loam::report {

namespace {

json::Node times_node(const std::optional<assess::LightTimes>& times)
{
    if (!times) {
        return {};
    }
    json::Node node = json::Node::object();
    node.add("hours", number(times->hours)).add("on", text(times->on)).add("off", text(times->off));
    return node;
}

json::Node months_of(const std::array<Range, 12>& months)
{
    json::Node list = json::Node::array();
    for (const Range& month : months) {
        list.add(range(month));
    }
    return list;
}

std::string stage_id(season::Stage stage)
{
    return stage == season::Stage::wind_down ? "wind-down" : stage == season::Stage::cold ? "cold" : "warm-up";
}

std::string answer_id(season::Answer answer)
{
    return answer == season::Answer::eligible  ? "eligible"
           : answer == season::Answer::refused ? "refused"
                                               : "not known";
}

json::Node weeks_node(const std::vector<season::Week>& weeks)
{
    json::Node list = json::Node::array();
    for (const season::Week& week : weeks) {
        json::Node node = json::Node::object();
        json::Node band = json::Node::object();
        band.add("min", number(week.by_its_end_c.low)).add("max", number(week.by_its_end_c.high));
        node.add("week", integer(week.number)).add("stage", text(stage_id(week.stage)));
        node.add("from", text(assess::iso_of(week.from))).add("by_its_end_c", std::move(band));
        node.add("running_share_at_end", number(week.running_share_at_end));
        list.add(std::move(node));
    }
    return list;
}

json::Node weigh_ins_node(const std::vector<season::WeighIn>& weigh_ins)
{
    json::Node list = json::Node::array();
    for (const season::WeighIn& one : weigh_ins) {
        json::Node node = json::Node::object();
        node.add("date", text(assess::iso_of(one.on))).add("ask_vet_below_kg", number(one.ask_below_kg));
        node.add("stop_below_kg", number(one.stop_below_kg));
        list.add(std::move(node));
    }
    return list;
}

void add_source(json::Node& node, const char* name, const Source& source)
{
    json::Node held = json::Node::object();
    held.add("citation", text(source.citation)).add("confidence", text(confidence_id(source.confidence)));
    node.add(name, source.citation.empty() ? json::Node() : std::move(held));
}

json::Node rest_node(const assess::CoolSeasonResult& rest)
{
    json::Node bars = json::Node::array();
    for (const QString& bar : words::bars(rest.eligibility.bars)) {
        bars.add(text(bar.toStdString()));
    }
    json::Node node = json::Node::object();
    node.add("animal", text(rest.animal)).add("species", text(rest.species));
    node.add("asked", json::Node::of(rest.asked)).add("answer", text(answer_id(rest.eligibility.answer)));
    node.add("reasons", std::move(bars));
    const auto day = [&](auto when) { return rest.rest ? text(assess::iso_of(when(*rest.rest))) : json::Node(); };
    node.add("begins", day([](const season::Rest& one) { return one.begins; }));
    node.add("cold_from", day(season::cold_from)).add("cold_until", day(season::cold_until));
    node.add("ends", day(season::ends));
    node.add("vet_checked", text_or_null(rest.vet_checked));
    node.add("vet_check_counts", rest.rest ? json::Node::of(rest.vet_check_counts) : json::Node());
    node.add("weeks", weeks_node(rest.weeks)).add("weigh_ins", weigh_ins_node(rest.weigh_ins));
    node.add("stop_loss", rest.rest ? number(rest.stop_loss) : json::Node());
    add_source(node, "why_it_rests", rest.species_source);
    add_source(node, "why_so_cold", rest.cold_source);
    add_source(node, "why_these_weights", rest.loss_source);
    return node;
}

} // namespace

json::Node light_year_node(const assess::EnclosureResult& enclosure)
{
    json::Node list = json::Node::array();
    for (const assess::LightDay& day : enclosure.light_year) {
        json::Node node = json::Node::object();
        node.add("month", integer(day.month)).add("day", integer(day.day)).add("sky_h", number(day.sky_h));
        node.add("planned", times_node(day.planned)).add("by_the_sky", times_node(day.by_the_sky));
        node.add("running_share", number(day.running_share));
        list.add(std::move(node));
    }
    return list;
}

void add_months(json::Node& power_node, const assess::EnclosureResult& enclosure)
{
    json::Node months = json::Node::array();
    for (std::size_t i = 0; i < enclosure.power.month_kwh.size(); ++i) {
        json::Node node = json::Node::object();
        node.add("month", integer(static_cast<std::int64_t>(i) + 1));
        node.add("kwh", range(enclosure.power.month_kwh[i])).add("cost", money(enclosure.power.month_cost[i]));
        months.add(std::move(node));
    }
    power_node.add("months", std::move(months)).add("year_kwh", range(enclosure.power.year_kwh));
    power_node.add("how_months", text(words::how_months(enclosure.hemisphere_known).toStdString()));
}

void add_device_year(json::Node& device_node, const assess::DevicePower& device)
{
    device_node.add("month_kwh", months_of(device.month_kwh)).add("year_kwh", range(device.year_kwh));
}

json::Node water_node(const assess::WaterResult& water)
{
    json::Node bowls = json::Node::array();
    for (const assess::BowlResult& bowl : water.bowls) {
        json::Node node = json::Node::object();
        node.add("id", text(bowl.id)).add("volume_l", range(bowl.volume_l));
        node.add("water_depth_m", range(bowl.water_depth_m)).add("target_depth_m", bounds(bowl.depth_m));
        node.add("full_kg", range(bowl.carried_kg));
        add_judgement(node, bowl.judgement);
        bowls.add(std::move(node));
    }
    json::Node node = json::Node::object();
    node.add("daily_l", number(water.daily_l.likely));
    node.add("conditioner_ml_per_day", likely(water.conditioner_ml_per_day));
    node.add("bowl_l", number(water.bowl_l.likely)).add("daily_l_range", range(water.daily_l));
    node.add("changes_per_day", range(water.changes_per_day)).add("changed_l_per_day", range(water.changed_l_per_day));
    node.add("top_up_l_per_day", range(water.top_up_l_per_day));
    node.add("top_up_by_climate", json::Node::of(water.by_climate));
    node.add("bed_l_per_day", range(water.bed_l_per_day));
    node.add("misted_l_per_day", range(water.misted_l_per_day));
    node.add("treated_l_per_day", range(water.treated_l_per_day));
    node.add("conditioner_ml_per_fill", range(water.conditioner_ml_per_fill));
    node.add("source", water.source ? text(words::water_source(*water.source).toStdString()) : json::Node());
    node.add("drawn_l_per_day", range(water.drawn_l_per_day));
    node.add("cartridges_per_year", range(water.cartridges_per_year));
    node.add("price_per_year", money(water.price_per_year)).add("bowls", std::move(bowls));
    return node;
}

json::Node cool_seasons_node(const std::vector<assess::CoolSeasonResult>& rests)
{
    json::Node list = json::Node::array();
    for (const assess::CoolSeasonResult& rest : rests) {
        list.add(rest_node(rest));
    }
    return list;
}

} // namespace loam::report
