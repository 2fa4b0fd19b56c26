#include <algorithm>

#include "core/assess/climate_stage.hpp"

namespace loam::assess {

namespace {

struct Wanted {
    Target target;
    std::string species;
};

// A young animal's band where the sheet has one and the smallest animal is young.
std::optional<Wanted> wanted_humidity(const Housed& housed, const catalog::Species& species)
{
    const catalog::HumidityNeed& need = species.humidity;
    bool young = false;
    for (const plan::Animal& animal : housed.enclosure.animals) {
        young = young || (animal.species == species.id && animal.length_m && need.juvenile_below_length_m &&
                          *animal.length_m < *need.juvenile_below_length_m);
    }
    const std::optional<catalog::Band>& band = young && need.juvenile ? need.juvenile : need.adult;
    if (!band) {
        return std::nullopt;
    }
    return Wanted{{band->min, band->max, band->source}, species.id};
}

// Water that has to be misted a day so that the likely humidity comes up to the least that is wanted: doubled until it
// does, then halved to within 5 %. Never below what is misted now.
std::optional<double> misting_for(const SolvedCase& solved, double wanted, climate::Workspace& workspace,
                                  std::stop_token stop)
{
    constexpr double most_l = 5.0; // more than anyone sprays by hand
    const auto humidity_at = [&](double misting_l) -> std::optional<double> {
        climate::Box box = solved.box;
        box.misting_l_per_day = exactly(misting_l);
        const auto result = climate::solve_steady(box, solved.room, workspace, stop);
        return result && result->converged ? std::optional(result->ground_humidity.likely) : std::nullopt;
    };
    double low_l = solved.box.misting_l_per_day.likely;
    double high_l = std::max(0.1, 2.0 * low_l);
    for (auto at_high = humidity_at(high_l); !at_high || *at_high < wanted; at_high = humidity_at(high_l)) {
        if (!at_high || high_l > most_l) {
            return std::nullopt;
        }
        low_l = high_l;
        high_l *= 2.0;
    }
    while (high_l - low_l > 0.05 * high_l) {
        const double middle_l = (low_l + high_l) / 2.0;
        const auto tried = humidity_at(middle_l);
        if (!tried) {
            return std::nullopt;
        }
        (*tried < wanted ? low_l : high_l) = middle_l;
    }
    return high_l;
}

// Too damp: first the misting goes, then a cover.
std::optional<Remedy> less_moisture(const SolvedCase& solved, Judgement judgement)
{
    if (judgement.direction != Direction::above) {
        return std::nullopt;
    }
    const double now_l = solved.box.misting_l_per_day.likely;
    if (now_l > 0.0) {
        return remedy("remedy.less-misting", {{"to", 0.0, "l/d"}, {"by", now_l, "l/d"}});
    }
    return solved.box.covers.empty()
               ? std::nullopt
               : std::optional(remedy("remedy.remove-cover", {}, {{"cover", solved.box.covers.front().id}}));
}

void report_level(Notes& notes, const Housed& housed, const SolvedCase& solved, const Wanted& wanted,
                  HumidityCase& result)
{
    const Range figure = *result.relative_humidity;
    std::vector<Input> inputs = inputs_of(figure, wanted.target, result.judgement, "1");
    inputs.push_back({"misting", solved.box.misting_l_per_day.likely, "l/d"});
    Finding& finding = report(notes, "humidity.level", result.judgement, housed.at(),
                              because("rule.moisture-balance", inputs,
                                      {{"case", solved.room.id}, {"species", wanted.species}, {"measure", "ground"}},
                                      wanted.target.source));
    if (result.misting_needed_l_per_day && result.judgement.direction == Direction::below) {
        const double to_l = result.misting_needed_l_per_day->likely;
        finding.remedy = remedy("remedy.more-misting",
                                {{"to", to_l, "l/d"}, {"by", to_l - solved.box.misting_l_per_day.likely, "l/d"}});
    } else {
        finding.remedy = less_moisture(solved, result.judgement);
    }
}

void report_condensation(Notes& notes, const Housed& housed, const SolvedCase& solved)
{
    if (solved.result.condensation) {
        report(notes, "humidity.condensation", {Verdict::tight, Direction::above}, housed.at(),
               because("rule.dew-point", {{"pane", solved.result.coldest_pane_c, "degC"}}, {{"case", solved.room.id}}));
    }
}

// Damp air everywhere and no lamp that dries a place.
void report_dry_retreat(Notes& notes, const Housed& housed, const SolvedCase& solved,
                        const std::vector<const catalog::Species*>& species)
{
    constexpr double damp = 0.8;
    const bool frogs =
        std::all_of(species.begin(), species.end(), [](const auto* one) { return one->group == catalog::Group::frog; });
    if (!frogs && solved.box.lamps.empty() && solved.result.ground_humidity.likely > damp) {
        report(notes, "humidity.no-dry-retreat", {Verdict::tight, Direction::above}, housed.at(),
               because("rule.dry-retreat", {{"likely", solved.result.ground_humidity.likely, "1"}},
                       {{"case", solved.room.id}}, {"Common practice, no source", Confidence::practice}))
            .remedy = remedy("remedy.dry-corner");
    }
}

} // namespace

std::optional<std::vector<HumidityCase>> judge_humidity(Notes& notes, const Context& context, const Housed& housed,
                                                        const std::vector<SolvedCase>& cases,
                                                        climate::Workspace& workspace, std::stop_token stop)
{
    std::vector<HumidityCase> results;
    const auto species = species_in(housed.enclosure, context.catalog);
    for (const SolvedCase& solved : cases) {
        if (solved.room.fault != climate::Fault::none) {
            continue;
        }
        HumidityCase result;
        result.id = solved.room.id;
        if (!solved.result.converged) {
            report(notes, "humidity.not-known", {Verdict::not_known, Direction::none}, housed.at(),
                   because("rule.moisture-balance", {}, {{"case", solved.room.id}}));
            results.push_back(result);
            continue;
        }
        result.relative_humidity = solved.result.ground_humidity;
        result.evaporation_l_per_day = solved.result.evaporation_l_per_day;
        result.judgement = {species.empty() ? Verdict::not_known : Verdict::fits, Direction::none};
        for (const catalog::Species* one : species) {
            const auto wanted = wanted_humidity(housed, *one);
            if (!wanted) {
                continue;
            }
            const Judgement judgement = judge(solved.result.ground_humidity, wanted->target);
            result.target = wanted->target;
            result.judgement = worse(result.judgement, judgement);
            const bool too_dry = judgement.verdict == Verdict::falls_short && judgement.direction == Direction::below;
            if (too_dry) {
                if (const auto litres = misting_for(solved, *wanted->target.min, workspace, stop)) {
                    result.misting_needed_l_per_day = exactly(*litres);
                }
            } else {
                result.misting_needed_l_per_day = solved.box.misting_l_per_day;
            }
            const bool told = solved.room.id != "heat-wave" && judgement.verdict != Verdict::fits;
            if (told && judgement.verdict != Verdict::not_known) {
                HumidityCase own = result;
                own.judgement = judgement;
                report_level(notes, housed, solved, *wanted, own);
            }
        }
        report_condensation(notes, housed, solved);
        report_dry_retreat(notes, housed, solved, species);
        results.push_back(result);
        if (stop.stop_requested()) {
            return std::nullopt;
        }
    }
    return results;
}

} // namespace loam::assess
