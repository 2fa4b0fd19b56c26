#include <algorithm>

#include "core/assess/climate_stage.hpp"
#include "core/climate/condensation.hpp"
#include "core/climate/damp_hide.hpp"
#include "core/plan/measured.hpp"

namespace loam::assess {

namespace {

constexpr Judgement unknown{Verdict::not_known, Direction::none};

void report_level(Notes& notes, const Housed& housed, const SolvedCase& solved, const Target& target,
                  Judgement judgement, const std::string& species)
{
    std::vector<Input> inputs = inputs_of(solved.result.ground_humidity, target, judgement, "1");
    inputs.push_back({"misting", solved.box.misting_l_per_day.likely, "l/d"});
    report(notes, "humidity.level", judgement, housed.at(),
           because("rule.moisture-balance", inputs,
                   {{"case", solved.room.id}, {"species", species}, {"measure", "ground"}}, target.source));
}

void report_condensation(Notes& notes, const Housed& housed, const SolvedCase& solved)
{
    if (solved.result.condensation) {
        report(notes, "humidity.condensation", {Verdict::tight, Direction::above}, housed.at(),
               because("rule.dew-point", {{"pane", solved.result.coldest_pane_c, "degC"}}, {{"case", solved.room.id}}));
    }
}

// Where a hygrometer on the ground reads least.
double driest_place(const climate::CaseResult& result)
{
    return std::min({result.basking.humidity.likely, result.warm.humidity.likely, result.cool.humidity.likely});
}

// Ground that stays damper than the sheet allows by day and by night, at its driest place too. Of species that are at
// home in such air only their own bound counts.
void report_dry_retreat(Notes& notes, const Housed& housed, const std::vector<SolvedCase>& cases,
                        const catalog::Species& species)
{
    constexpr double damp = 0.8; // where the sheet has no bound
    const double most = wanted_humidity(housed, species).max.value_or(damp);
    if (species.group == catalog::Group::frog) {
        return;
    }
    for (const std::string season : {"winter", "summer"}) {
        const SolvedCase* day = solved_as(cases, season + "-day");
        const SolvedCase* night = solved_as(cases, season + "-night");
        if (day == nullptr || night == nullptr) {
            continue;
        }
        const double driest = std::min(driest_place(day->result), driest_place(night->result));
        if (driest > most) {
            report(notes, "humidity.no-dry-retreat", {Verdict::falls_short, Direction::above}, housed.at(),
                   because("rule.dry-retreat", {{"likely", driest, "1"}, {"max", most, "1"}},
                           {{"season", season}, {"species", species.id}},
                           {"Common practice, no source: air that stays damp with no dry place to rest leads to mould "
                            "and to disease of shell, skin and lungs",
                            Confidence::practice}))
                .remedy = remedy("remedy.dry-corner");
        }
    }
}

std::vector<DampHideResult> damp_hides(const catalog::Catalog& catalog, const Housed& housed,
                                       const climate::CaseResult& result)
{
    const auto entrance = spread_of(catalog, "hide.entrance_m2");
    const auto film = spread_of(catalog, "hide.film_w_m2k");
    const auto ratio = climate::lower_humidity_ratio(result);
    std::vector<DampHideResult> hides;
    for (const plan::Fitting& fitting : housed.enclosure.fittings) {
        if (fitting.kind != plan::FittingKind::humid_hide || !entrance || !film || !ratio) {
            continue;
        }
        const double x_m = fitting.x_m + fitting.length_m / 2.0;
        const double y_m = fitting.y_m + fitting.width_m / 2.0;
        const auto humidity = climate::damp_hide_humidity({.floor_m2 = fitting.length_m * fitting.width_m,
                                                           .entrance_m2 = *entrance,
                                                           .film_w_m2k = *film,
                                                           .inside_c = result.floor.ground_at(x_m, y_m),
                                                           .humidity_ratio = *ratio});
        if (humidity) {
            hides.push_back({fitting.id, *humidity});
        }
    }
    return hides;
}

HumidityCase judge_one(Notes& notes, const Context& context, const Housed& housed, const SolvedCase& solved,
                       const std::vector<const catalog::Species*>& species)
{
    HumidityCase result;
    result.id = solved.room.id;
    if (!solved.result.converged) {
        report(notes, "humidity.not-known", unknown, housed.at(),
               because("rule.moisture-balance", {}, {{"case", solved.room.id}}));
        return result;
    }
    result.relative_humidity = solved.result.ground_humidity;
    result.warm_side = solved.result.warm.humidity;
    result.air = solved.result.air_humidity;
    result.hides = damp_hides(context.catalog, housed, solved.result);
    result.evaporation_l_per_day = solved.result.evaporation_l_per_day;
    result.judgement = {species.empty() ? Verdict::not_known : Verdict::fits, Direction::none};
    for (const catalog::Species* one : species) {
        const Target target = wanted_humidity(housed, *one);
        const Judgement judgement = judge(solved.result.ground_humidity, target);
        if (one == species.front() || gravity(judgement.verdict) > gravity(result.judgement.verdict)) {
            result.target = target;
            result.judgement = judgement;
        }
        const bool misses = judgement.verdict == Verdict::falls_short || judgement.verdict == Verdict::tight;
        if (misses && solved.room.id != "heat-wave") {
            report_level(notes, housed, solved, target, judgement, one->id);
        }
    }
    const bool dry = result.judgement.direction == Direction::below && result.judgement.verdict == Verdict::falls_short;
    if (!dry) {
        result.misting_needed_l_per_day = solved.box.misting_l_per_day;
    }
    report_condensation(notes, housed, solved);
    return result;
}

} // namespace

Target wanted_humidity(const Housed& housed, const catalog::Species& species)
{
    const catalog::HumidityNeed& need = species.humidity;
    bool young = false;
    for (const plan::Animal& animal : housed.enclosure.animals) {
        const auto length = plan::length_now_m(animal);
        young = young || (animal.species == species.id && length && need.juvenile_below_length_m &&
                          *length < *need.juvenile_below_length_m);
    }
    const std::optional<catalog::Band>& band = young && need.juvenile ? need.juvenile : need.adult;
    return band ? Target{band->min, band->max, band->source} : Target{};
}

std::vector<HumidityCase> judge_humidity(Notes& notes, const Context& context, const Housed& housed,
                                         const std::vector<SolvedCase>& cases)
{
    std::vector<HumidityCase> results;
    const auto species = species_in(housed.enclosure, context.catalog);
    for (const catalog::Species* one : species) {
        const Target target = wanted_humidity(housed, *one);
        if (!target.min && !target.max) {
            report(notes, "humidity.target-not-known", unknown, housed.at(),
                   because("rule.species-sheet", {}, {{"species", one->id}}, one->humidity.source));
        }
        report_dry_retreat(notes, housed, cases, *one);
    }
    for (const SolvedCase& solved : cases) {
        if (solved.room.fault == climate::Fault::none) {
            results.push_back(judge_one(notes, context, housed, solved, species));
        }
    }
    return results;
}

} // namespace loam::assess
