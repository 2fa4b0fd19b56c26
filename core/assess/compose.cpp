#include "core/assess/compose.hpp"

#include <algorithm>

#include "core/assess/cautions.hpp"
#include "core/assess/costs.hpp"
#include "core/assess/needs.hpp"
#include "core/assess/proving.hpp"
#include "core/assess/shopping.hpp"
#include "core/assess/wishes.hpp"

namespace loam::assess {

namespace {

// The day on which the UV falls below the target, by how long its lamps burn a day.
void date_uv(const Context& context, const PowerResult& power, UvResult& uv)
{
    double most_uvi = -1.0;
    double hours_per_day = 0.0;
    for (const UvLampResult& lamp : uv.lamps) {
        for (const DevicePower& device : power.devices) {
            if (device.id == lamp.id && lamp.uvi_at_basking && lamp.uvi_at_basking->likely > most_uvi) {
                most_uvi = lamp.uvi_at_basking->likely;
                hours_per_day = device.hours_per_day;
            }
        }
    }
    const auto day_after = [&](const std::optional<double>& hours) -> std::optional<std::chrono::year_month_day> {
        if (!hours || !(hours_per_day > 0.0)) {
            return std::nullopt;
        }
        return std::chrono::sys_days(context.today) + std::chrono::days(static_cast<int>(*hours / hours_per_day));
    };
    uv.falls_out_on = day_after(uv.left.likely_h);
    uv.falls_out_earliest = day_after(uv.left.earliest_h);
}

EnclosureResult result_of(const Context& context, const Part& part, const Supplies& supplies)
{
    EnclosureResult result;
    result.id = part.housed.enclosure.id;
    result.name = part.housed.enclosure.name;
    result.space = part.instant->space.result;
    result.substrate = part.instant->substrate.results;
    result.mass = part.instant->mass.result;
    result.uv = part.instant->uv.result;
    result.photoperiod = part.instant->photoperiod.result;
    result.power = supplies.power.result;
    result.water = supplies.water.result;
    result.light_year = supplies.year.light;
    result.light_with_the_sky = supplies.year.with_the_sky;
    result.hemisphere_known = supplies.year.hemisphere_known;
    result.cool_seasons = supplies.year.cool_seasons;
    result.records = supplies.records.results;
    date_uv(context, result.power, result.uv);
    if (part.climate != nullptr) {
        result.heat = part.climate->heat;
        result.humidity = part.climate->humidity;
        result.calibration = part.climate->calibration;
    }
    if (part.courses != nullptr) {
        result.days = part.courses->days;
        result.drills = part.courses->drills;
        result.warm_up = part.courses->warm_up;
        result.dry_spells = part.courses->dry_spells;
    }
    return result;
}

void append_notes(Notes& notes, const Part& part, const Supplies& supplies)
{
    append(notes, part.instant->space.notes);
    append(notes, part.instant->substrate.notes);
    append(notes, part.instant->mass.notes);
    append(notes, part.instant->uv.notes);
    append(notes, part.instant->photoperiod.notes);
    append(notes, part.instant->other);
    append(notes, supplies.year.notes);
    append(notes, supplies.records.notes);
    append(notes, supplies.power.notes);
    append(notes, supplies.water.notes);
    if (part.climate != nullptr) {
        append(notes, part.climate->notes);
    }
    if (part.courses != nullptr) {
        append(notes, part.courses->notes);
    }
}

void add_shared_loads(const Context& context, const std::vector<Part>& parts, const std::vector<Supplies>& supplies,
                      Assessment& assessment, Notes& notes)
{
    std::vector<MassStage> masses;
    std::vector<power::Device> devices;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        masses.push_back(parts[i].instant->mass);
        devices.insert(devices.end(), supplies[i].power.devices.begin(), supplies[i].power.devices.end());
    }
    StandStage stands = assess_stands(context, masses);
    CircuitStage circuits = assess_circuits(context, devices);
    assessment.stands = std::move(stands.results);
    assessment.circuits = std::move(circuits.circuits);
    assessment.strips = std::move(circuits.strips);
    append(notes, std::move(stands.notes));
    append(notes, std::move(circuits.notes));
}

void add_money(const Context& context, const std::vector<Part>& parts, const std::vector<Supplies>& supplies,
               Assessment& assessment, Notes& notes)
{
    const std::vector<buying::Need> drawn_up = all_needs(context, parts, supplies);
    const std::vector<buying::Need> needs = as_wished(drawn_up, context.plan.wishes);
    const Currency currency = currency_of(context.plan);
    const catalog::PriceList& prices = context.catalog.prices;
    buying::Purchase bought = buying::purchase(
        {{needs, owned_of(context.plan)}}, offers_of(prices, currency, only_channel(context.plan, prices)),
        terms_of(prices, currency), currency, aim_of(context.plan), level_of(context.plan));
    add_own_lines(bought.order, context.plan, currency);
    append(notes, judge_wishes(context, drawn_up));
    std::vector<RunningInputs> running;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (is_replaced(context.plan, parts[i].housed.enclosure.id)) {
            continue;
        }
        running.push_back({parts[i].housed, &supplies[i].power, &supplies[i].water, &parts[i].instant->uv.result});
    }
    CostStage costs = assess_costs(context, needs, bought, running);
    assessment.shopping = shopping_lines(bought.order, prices);
    assessment.costs = std::move(costs.costs);
    append(notes, std::move(costs.notes));
}

// What the enclosure hangs on besides itself: the sun in the room, its stand, its strips with what feeds them.
std::vector<std::string> shared_by(const plan::Plan& plan, const plan::Enclosure& enclosure)
{
    std::vector<std::string> shared{"/site/room/sun_reaches", enclosure.stand.value_or("")};
    for (const plan::Device& device : enclosure.equipment) {
        shared.push_back(device.strip.value_or(""));
    }
    const auto named = [&](const std::string& id) {
        return std::find(shared.begin(), shared.end(), id) != shared.end();
    };
    for (std::size_t round = 0; round <= plan.site.strips.size(); ++round) { // however long the chain is
        for (const plan::Strip& strip : plan.site.strips) {
            for (const std::string& feed : {strip.circuit, strip.fed_from.value_or("")}) {
                if (named(strip.id) && !named(feed)) {
                    shared.push_back(feed);
                }
            }
        }
    }
    return shared;
}

Judgement overall_of(const plan::Plan& plan, const plan::Enclosure& enclosure, const std::vector<Finding>& findings)
{
    const std::vector<std::string> shared = shared_by(plan, enclosure);
    Judgement overall{Verdict::fits, Direction::none};
    for (const Finding& finding : findings) {
        const bool is_shared = finding.enclosure.empty() && !finding.where.empty() &&
                               std::find(shared.begin(), shared.end(), finding.where) != shared.end();
        if (finding.enclosure == enclosure.id || is_shared) {
            overall = worse(overall, {finding.verdict, finding.direction});
        }
    }
    return overall;
}

} // namespace

Supplies supplies_of(const Context& context, const Part& part)
{
    static const std::vector<HeatCase> none;
    const std::vector<HeatCase>& heat = part.climate != nullptr ? part.climate->heat : none;
    YearStage year = assess_year(context, part.housed);
    PowerStage power = assess_power(context, part.housed, heat, year.course);
    return {std::move(power), assess_water(context, part.housed, heat), std::move(year),
            assess_records(context, part.housed)};
}

std::vector<buying::Need> all_needs(const Context& context, const std::vector<Part>& parts,
                                    const std::vector<Supplies>& supplies)
{
    std::vector<buying::Need> needs;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (is_replaced(context.plan, parts[i].housed.enclosure.id)) {
            continue;
        }
        const EnclosureNeeds known{parts[i].instant->substrate.results, supplies[i].water};
        for (buying::Need& one : enclosure_needs(context, parts[i].housed, known)) {
            needs.push_back(std::move(one));
        }
    }
    for (buying::Need& one : site_needs(context)) {
        needs.push_back(std::move(one));
    }
    return needs;
}

Assessment compose(const Context& context, const std::vector<Part>& parts)
{
    Assessment assessment;
    assessment.plan_title = context.plan.title;
    assessment.date = context.today;
    assessment.complete = true;
    Notes notes;
    std::vector<Supplies> supplies;
    std::vector<std::string> order{""};
    for (const Part& part : parts) {
        supplies.push_back(supplies_of(context, part));
        append_notes(notes, part, supplies.back());
        assessment.enclosures.push_back(result_of(context, part, supplies.back()));
        assessment.complete = assessment.complete && part.climate != nullptr;
        order.push_back(part.housed.enclosure.id);
    }
    append(notes, judge_sun(context));
    append(notes, site_cautions(context));
    add_shared_loads(context, parts, supplies, assessment, notes);
    append(notes, judge_proving(context, parts, supplies, assessment));
    add_money(context, parts, supplies, assessment, notes);
    sort(notes.findings, order);
    assessment.assumed = std::move(notes.assumed);
    assessment.findings = std::move(notes.findings);
    for (std::size_t i = 0; i < parts.size(); ++i) {
        assessment.enclosures[i].overall = overall_of(context.plan, parts[i].housed.enclosure, assessment.findings);
    }
    return assessment;
}

} // namespace loam::assess
