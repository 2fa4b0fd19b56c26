#include "core/assess/cool_season.hpp"

#include <algorithm>
#include <cmath>

#include "core/assess/iso_day.hpp"
#include "core/plan/measured.hpp"

namespace loam::assess {

namespace {

constexpr Judgement unknown{Verdict::not_known, Direction::none};

bool has_both(const std::optional<catalog::Band>& band)
{
    return band && band->min && band->max;
}

bool cold_is_known(const catalog::Species& species)
{
    return species.cool_season && has_both(species.cool_season->cold_c) && has_both(species.cool_season->cold_weeks) &&
           has_both(species.temperatures.cool_c);
}

season::Candidate candidate(const Context& context, const plan::Animal& animal, const catalog::Species& species,
                            std::chrono::sys_days begins)
{
    constexpr double days_a_year = 365.25;
    season::Candidate one;
    one.rests_in_nature = species.brumates;
    one.cold_known = cold_is_known(species);
    if (animal.condition) {
        one.health = *animal.condition == plan::Condition::well  ? season::Health::well
                     : *animal.condition == plan::Condition::ill ? season::Health::ill
                                                                 : season::Health::underweight;
    }
    if (animal.age_years) {
        const auto until_d = static_cast<double>((begins - std::chrono::sys_days(context.today)).count());
        one.age_at_rest_years = *animal.age_years + std::max(0.0, until_d) / days_a_year;
    }
    one.length_m = plan::length_now_m(animal);
    one.mass_kg = plan::mass_now_kg(animal);
    one.adult_from_m = species.adult_length_m.min;
    one.adult_from_kg = species.adult_mass_kg ? species.adult_mass_kg->min : std::nullopt;
    return one;
}

std::optional<season::Rest> rest_of(const Context& context, const Housed& housed, std::size_t index,
                                    const catalog::Species& species, std::chrono::sys_days begins, Notes& notes)
{
    const plan::CoolSeason& asked = *housed.enclosure.animals[index].cool_season;
    const auto wind_down = spread_of(context.catalog, "cool-season.wind_down_weeks");
    const auto warm_up = spread_of(context.catalog, "cool-season.warm_up_weeks");
    if (!wind_down || !warm_up) {
        return std::nullopt;
    }
    const catalog::Band& sheet = species.cool_season->cold_weeks;
    if (!asked.cold_weeks) { // the shortest counts until the keeper says
        assume(notes, {housed.pointer("/animals/" + std::to_string(index) + "/cool_season/cold_weeks"), "weeks",
                       Range{*sheet.min, *sheet.min, *sheet.max}, sheet.source});
    }
    season::Rest rest;
    rest.begins = begins;
    rest.wind_down_weeks = static_cast<int>(std::lround(wind_down->likely));
    rest.cold_weeks = static_cast<int>(asked.cold_weeks.value_or(std::lround(std::ceil(*sheet.min))));
    rest.warm_up_weeks = static_cast<int>(std::lround(warm_up->likely));
    rest.usual_c = {*species.temperatures.cool_c->min, *species.temperatures.cool_c->max};
    rest.cold_c = {*species.cool_season->cold_c.min, *species.cool_season->cold_c.max};
    return rest;
}

void judge_vet_check(const Context& context, const Housed& housed, std::size_t index, CoolSeasonResult& result,
                     Notes& notes)
{
    const plan::Animal& animal = housed.enclosure.animals[index];
    const auto counts_for = spread_of(context.catalog, "cool-season.vet_check_weeks");
    const double within_d = counts_for ? 7.0 * counts_for->high : 0.0;
    result.vet_checked = animal.cool_season->vet_checked.value_or("");
    const auto checked = day_of(result.vet_checked);
    if (checked && *checked <= result.rest->begins) {
        result.vet_check_counts = static_cast<double>((result.rest->begins - *checked).count()) <= within_d;
    }
    if (result.vet_check_counts) {
        return;
    }
    const bool stated = !result.vet_checked.empty();
    report(notes, "cool-season.vet-check", {stated ? Verdict::falls_short : Verdict::not_known, Direction::none},
           housed.at(animal.id),
           because("rule.cool-season", {{"days", within_d, "d"}},
                   {{"animal", animal.id}, {"species", animal.species}, {"answer", stated ? "no" : "absent"}},
                   {"Common practice, no source", Confidence::practice}))
        .remedy = remedy("remedy.vet-check", {}, {{"animal", animal.id}});
}

void judge_length(const Housed& housed, const plan::Animal& animal, const catalog::Species& species,
                  const season::Rest& rest, Notes& notes)
{
    const catalog::Band& sheet = species.cool_season->cold_weeks;
    if (rest.cold_weeks > *sheet.max) {
        report(notes, "cool-season.too-long", {Verdict::falls_short, Direction::above}, housed.at(animal.id),
               because("rule.cool-season",
                       {{"weeks", static_cast<double>(rest.cold_weeks), "weeks"},
                        {"max", *sheet.max, "weeks"},
                        {"over_by", rest.cold_weeks - *sheet.max, "weeks"}},
                       {{"animal", animal.id}, {"species", species.id}}, sheet.source))
            .remedy = remedy("remedy.shorter-rest", {{"to", *sheet.max, "weeks"}}, {{"animal", animal.id}});
    }
}

void tell_plan(const Context& context, const Housed& housed, const plan::Animal& animal, const CoolSeasonResult& result,
               Notes& notes)
{
    const season::Rest& rest = *result.rest;
    const Judgement note{Verdict::fits, Direction::none};
    report(
        notes, "caution.cool-season-plan", note, housed.at(animal.id),
        because("rule.cool-season",
                {{"min", rest.cold_c.low, "degC"}, {"max", rest.cold_c.high, "degC"}, {"stop", result.stop_loss, "1"}},
                {{"animal", animal.id},
                 {"species", animal.species},
                 {"begins", iso_of(rest.begins)},
                 {"cold_from", iso_of(season::cold_from(rest))},
                 {"cold_until", iso_of(season::cold_until(rest))},
                 {"ends", iso_of(season::ends(rest))}},
                result.loss_source));
    std::vector<Input> inputs{{"min", rest.cold_c.low, "degC"}, {"max", rest.cold_c.high, "degC"}};
    if (const auto& room_c = context.plan.site.room.winter.day_c) {
        inputs.push_back({"room", *room_c, "degC"});
    }
    report(
        notes, "caution.cool-season-place", note, housed.at(animal.id),
        because("rule.cool-season", inputs, {{"animal", animal.id}, {"species", animal.species}}, result.cold_source));
}

// True where nothing stands against the rest.
bool judge_eligibility(const Housed& housed, const plan::Animal& animal, const CoolSeasonResult& result, Notes& notes)
{
    for (const season::Bar bar : result.eligibility.bars) {
        const bool refused = result.eligibility.answer == season::Answer::refused;
        const auto why =
            because("rule.cool-season", {},
                    {{"animal", animal.id}, {"species", animal.species}, {"reason", std::string(season::name_of(bar))}},
                    result.species_source);
        if (refused) {
            report(notes, "danger.cool-season", {Verdict::danger, Direction::none}, housed.at(animal.id), why).remedy =
                remedy("remedy.no-cool-season", {}, {{"animal", animal.id}});
        } else {
            report(notes, "cool-season.not-known", unknown, housed.at(animal.id), why);
        }
    }
    return result.eligibility.answer == season::Answer::eligible;
}

void no_date(const Housed& housed, const plan::Animal& animal, const char* reason, Notes& notes)
{
    report(notes, "cool-season.not-known", unknown, housed.at(animal.id),
           because("rule.cool-season", {}, {{"animal", animal.id}, {"species", animal.species}, {"reason", reason}}));
}

void plan_rest(const Context& context, const Housed& housed, std::size_t index, const catalog::Species& species,
               std::chrono::sys_days begins, CoolSeasonStage& stage, CoolSeasonResult& result)
{
    const plan::Animal& animal = housed.enclosure.animals[index];
    auto rest = rest_of(context, housed, index, species, begins, stage.notes);
    if (!rest) {
        return;
    }
    if (season::ends(*rest) <= std::chrono::sys_days(context.today)) {
        no_date(housed, animal, "over", stage.notes);
        return;
    }
    result.rest = rest;
    result.weeks = season::weeks(*rest);
    result.mass_kg = *plan::mass_now_kg(animal);
    const auto stop = spread_of(context.catalog, "cool-season.stop_loss");
    const auto monthly = spread_of(context.catalog, "cool-season.monthly_loss");
    if (stop && monthly) {
        result.stop_loss = stop->low; // the careful end
        result.monthly_loss = monthly->low;
        result.loss_source = context.catalog.find_assumption("cool-season.stop_loss")->spread.source;
        result.weigh_ins =
            season::weigh_ins(*rest, result.mass_kg, {.stop = result.stop_loss, .monthly = result.monthly_loss});
    }
    judge_vet_check(context, housed, index, result, stage.notes);
    judge_length(housed, animal, species, *rest, stage.notes);
    tell_plan(context, housed, animal, result, stage.notes);
}

} // namespace

CoolSeasonStage assess_cool_seasons(const Context& context, const Housed& housed)
{
    CoolSeasonStage stage;
    for (std::size_t i = 0; i < housed.enclosure.animals.size(); ++i) {
        const plan::Animal& animal = housed.enclosure.animals[i];
        const catalog::Species* species = context.catalog.find_species(animal.species);
        if (species == nullptr) {
            continue;
        }
        CoolSeasonResult result;
        result.animal = animal.id;
        result.species = species->id;
        result.asked = animal.cool_season.has_value();
        result.species_source = species->brumation_source;
        if (species->cool_season) {
            result.cold_source = species->cool_season->cold_c.source;
        }
        const auto begins = result.asked ? day_of(animal.cool_season->begins) : std::nullopt;
        result.eligibility = season::eligibility(
            candidate(context, animal, *species, begins.value_or(std::chrono::sys_days(context.today))));
        if (result.asked && judge_eligibility(housed, animal, result, stage.notes)) {
            if (begins) {
                plan_rest(context, housed, i, *species, *begins, stage, result);
            } else {
                no_date(housed, animal, "date-not-a-day", stage.notes);
            }
        }
        stage.results.push_back(std::move(result));
    }
    return stage;
}

} // namespace loam::assess
