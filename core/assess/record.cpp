#include "core/assess/record.hpp"

#include <algorithm>
#include <cmath>

#include "core/assess/iso_day.hpp"
#include "core/assess/space_parts.hpp"

namespace loam::assess {

namespace {

using std::chrono::sys_days;

constexpr double days_a_year = 365.25;
constexpr double least_years = 0.25;     // between two lengths, so that their difference is more than their errors
constexpr std::chrono::days window{366}; // in which the greatest weight counts
constexpr int years_ahead = 5;

double years_between(sys_days from, sys_days to)
{
    return static_cast<double>((to - from).count()) / days_a_year;
}

// Measurements of days that there are and that have come, by day.
std::vector<RecordPoint> points_of(const plan::Animal& animal, sys_days today)
{
    std::vector<RecordPoint> points;
    for (const plan::Measurement& one : animal.measurements) {
        const auto day = day_of(one.date);
        if (day && *day <= today) {
            points.push_back({*day, one.length_m, one.mass_kg, {}});
        }
    }
    std::stable_sort(points.begin(), points.end(),
                     [](const RecordPoint& one, const RecordPoint& other) { return one.on < other.on; });
    return points;
}

const RecordPoint* first_length(const std::vector<RecordPoint>& points)
{
    const auto found =
        std::find_if(points.begin(), points.end(), [](const RecordPoint& point) { return point.length_m.has_value(); });
    return found == points.end() ? nullptr : &*found;
}

const RecordPoint* last_length(const std::vector<RecordPoint>& points)
{
    const auto found = std::find_if(points.rbegin(), points.rend(),
                                    [](const RecordPoint& point) { return point.length_m.has_value(); });
    return found == points.rend() ? nullptr : &*found;
}

// How much two lengths differ a year, as a share of the first; `errors` are those of one length.
Range yearly(const RecordPoint& first, const RecordPoint& last, const Range& errors)
{
    const double years = years_between(first.on, last.on);
    const auto rate = [&](double first_m, double last_m) { return std::pow(last_m / first_m, 1.0 / years) - 1.0; };
    return {rate(*first.length_m * (1.0 + errors.high), *last.length_m * (1.0 + errors.low)),
            rate(*first.length_m, *last.length_m),
            rate(*first.length_m * (1.0 + errors.low), *last.length_m * (1.0 + errors.high))};
}

// The animal as it was on a day, to be followed from there.
space::GrowingGroup group_on(const Context& context, const plan::Animal& animal, const catalog::Species& species,
                             const RecordPoint& point)
{
    space::GrowingGroup group{.count = static_cast<int>(animal.count),
                              .body_m = point.length_m,
                              .age_years = {},
                              .rates = rates_of(species),
                              .adult_min_m = species.adult_length_m.min,
                              .adult_max_m = species.adult_length_m.max};
    if (animal.age_years) {
        const double age = *animal.age_years - years_between(point.on, sys_days(context.today));
        group.age_years = age >= 0.0 ? std::optional(age) : std::nullopt;
    }
    return group;
}

struct Told {
    const Context& context;
    const Housed& housed;
    const plan::Animal& animal;
    const catalog::Species& species;
    std::string where; // pointer to the measurements
};

void judge_growth(const Told& told, const Range& errors, RecordResult& result, Notes& notes)
{
    const RecordPoint* first = first_length(result.points);
    const RecordPoint* last = last_length(result.points);
    if (first == nullptr || first == last || !last->expected) {
        return;
    }
    if (years_between(first->on, last->on) >= least_years) {
        result.growth_per_year = yearly(*first, *last, errors);
    }
    const double length_m = *last->length_m;
    const space::LengthBounds& expected = *last->expected;
    const bool published = !told.species.growth.empty() && expected.fast_from_rates;
    Judgement judgement{published ? Verdict::fits : Verdict::not_known, Direction::none};
    if (length_m < expected.slow_m * (1.0 + errors.low)) {
        judgement = {Verdict::falls_short, Direction::below};
    } else if (length_m < expected.slow_m) {
        judgement = {published ? Verdict::tight : Verdict::not_known, Direction::below};
    } else if (published && length_m > *expected.fast_m * (1.0 + errors.high)) {
        judgement = {Verdict::tight,
                     Direction::above}; // sooner outgrown, and perhaps fed too well: no danger by itself
    }
    result.growth = judgement;
    if (judgement.direction == Direction::none) {
        return;
    }
    std::vector<Input> inputs{{"length", length_m, "m"}, {"min", expected.slow_m, "m"}};
    if (expected.fast_m) {
        inputs.push_back({"max", *expected.fast_m, "m"});
    }
    const Source source =
        told.species.growth.empty() ? told.species.adult_length_m.source : told.species.growth.front().source;
    report(notes, "record.growth", judgement, told.housed.at(told.where),
           because("rule.growth-record", inputs, {{"animal", told.animal.id}, {"species", told.species.id}}, source))
        .remedy =
        judgement.direction == Direction::below ? std::optional(remedy("remedy.measure-again")) : std::nullopt;
}

void judge_weight(const Told& told, RecordResult& result, Notes& notes)
{
    const auto limits = spread_of(told.context.catalog, "health.weight_loss");
    const auto newest = std::find_if(result.points.rbegin(), result.points.rend(),
                                     [](const RecordPoint& point) { return point.mass_kg.has_value(); });
    if (!limits || newest == result.points.rend()) {
        return;
    }
    const RecordPoint* heaviest = nullptr;
    for (const RecordPoint& point : result.points) {
        const bool before = point.mass_kg && point.on < newest->on && newest->on - point.on <= window;
        if (before && (heaviest == nullptr || *point.mass_kg > *heaviest->mass_kg)) {
            heaviest = &point;
        }
    }
    if (heaviest == nullptr) {
        return;
    }
    result.heaviest_on = heaviest->on;
    result.heaviest_kg = *heaviest->mass_kg;
    result.lost = std::max(0.0, 1.0 - *newest->mass_kg / *heaviest->mass_kg);
    const Verdict verdict = *result.lost >= limits->likely ? Verdict::falls_short
                            : *result.lost >= limits->low  ? Verdict::tight
                                                           : Verdict::fits;
    result.mass = {verdict, verdict == Verdict::fits ? Direction::none : Direction::below};
    if (verdict == Verdict::fits) {
        return;
    }
    report(notes, "record.weight-loss", result.mass, told.housed.at(told.where),
           because("rule.weight-loss",
                   {{"lost", *result.lost, "1"},
                    {"from", result.heaviest_kg, "kg"},
                    {"to", *newest->mass_kg, "kg"},
                    {"days", static_cast<double>((newest->on - heaviest->on).count()), "d"},
                    {"max", limits->likely, "1"}},
                   {{"animal", told.animal.id}, {"date", iso_of(heaviest->on)}},
                   told.context.catalog.find_assumption("health.weight_loss")->spread.source))
        .remedy = remedy("remedy.see-vet");
}

void tell_unused(const Told& told, Notes& notes)
{
    for (const plan::Measurement& one : told.animal.measurements) {
        const auto day = day_of(one.date);
        if (!day || *day > sys_days(told.context.today)) {
            report(notes, "record.not-used", {Verdict::not_known, Direction::none}, told.housed.at(told.where),
                   because("rule.stated-by-keeper", {},
                           {{"animal", told.animal.id},
                            {"day", one.date},
                            {"reason", day ? "date-to-come" : "date-not-a-day"}}));
        }
    }
}

void look_ahead(const Told& told, RecordResult& result)
{
    const RecordPoint* last = last_length(result.points);
    if (last == nullptr) {
        return;
    }
    const space::GrowingGroup group = group_on(told.context, told.animal, told.species, *last);
    for (int year = 0; year <= years_ahead; ++year) {
        const auto days = std::chrono::days(static_cast<int>(std::lround(year * days_a_year)));
        if (const auto bounds = space::length_after(group, years_between(last->on, last->on + days))) {
            result.ahead.push_back({last->on + days, *bounds});
        }
    }
}

RecordResult record_of(const Told& told, Notes& notes)
{
    RecordResult result;
    result.animal = told.animal.id;
    result.species = told.species.id;
    result.points = points_of(told.animal, sys_days(told.context.today));
    if (const RecordPoint* first = first_length(result.points)) {
        const space::GrowingGroup group = group_on(told.context, told.animal, told.species, *first);
        const sys_days begun = first->on;
        for (RecordPoint& point : result.points) {
            if (point.on >= begun) {
                point.expected = space::length_after(group, years_between(begun, point.on));
            }
        }
    }
    if (const auto errors = spread_of(told.context.catalog, "measured.length_share")) {
        judge_growth(told, *errors, result, notes);
    }
    judge_weight(told, result, notes);
    look_ahead(told, result);
    tell_unused(told, notes);
    return result;
}

} // namespace

std::optional<space::GrowthRate> measured_rate(const Context& context, const plan::Animal& animal)
{
    const std::vector<RecordPoint> points = points_of(animal, sys_days(context.today));
    const RecordPoint* first = first_length(points);
    const RecordPoint* last = last_length(points);
    const auto errors = spread_of(context.catalog, "measured.length_share");
    if (first == last || !errors || years_between(first->on, last->on) < least_years) {
        return std::nullopt;
    }
    return space::GrowthRate{0.0, {}, 0.0, std::max(0.0, yearly(*first, *last, *errors).high)};
}

RecordStage assess_records(const Context& context, const Housed& housed)
{
    RecordStage stage;
    for (std::size_t i = 0; i < housed.enclosure.animals.size(); ++i) {
        const plan::Animal& animal = housed.enclosure.animals[i];
        const catalog::Species* species = context.catalog.find_species(animal.species);
        if (animal.measurements.empty() || species == nullptr) {
            continue;
        }
        const Told told{context, housed, animal, *species,
                        housed.pointer("/animals/" + std::to_string(i) + "/measurements")};
        stage.results.push_back(record_of(told, stage.notes));
    }
    return stage;
}

} // namespace loam::assess
