#include "core/assess/dry_spells.hpp"

#include <algorithm>
#include <cmath>
#include <string>

#include "core/assess/photoperiod.hpp"
#include "core/assess/side_by_side.hpp"

namespace loam::assess {

namespace {

// The damper of what the species ask for: it is missed first.
std::optional<double> least_humidity(const Housed& housed, const std::vector<const catalog::Species*>& species)
{
    std::optional<double> least;
    for (const catalog::Species* one : species) {
        if (const auto min = wanted_humidity(housed, *one).min) {
            least = std::max(least.value_or(0.0), *min);
        }
    }
    return least;
}

double relative_spread(const Range& range)
{
    return range.likely > 0.0 ? 0.5 * (range.high - range.low) / range.likely : 0.0;
}

// Of what the bed can lose: the water it is kept at less the water it keeps.
double storage_spread(const climate::Box& box)
{
    if (box.bed.empty()) {
        return 0.0;
    }
    const climate::BedLayer& top = box.bed.back();
    const double likely = top.water_damp.likely - top.water_dry.likely;
    const double damp = 0.5 * (top.water_damp.high - top.water_damp.low);
    const double dry = 0.5 * (top.water_dry.high - top.water_dry.low);
    return likely > 0.0 ? std::hypot(damp, dry) / likely : 0.0;
}

// How long it holds: the likely course shifted by the range of the humidity, and quicker or slower by the spreads of
// what evaporates and of what the bed holds.
void set_days(DrySpellResult& result, const SolvedCase& day, double least)
{
    const Range& humidity = day.result.ground_humidity;
    const double pace =
        std::exp(std::hypot(relative_spread(day.result.evaporation_l_per_day), storage_spread(day.box)));
    const auto at = [&](double shift) { return days_until_below(result.course, least, shift); };
    const auto low = at(humidity.low - humidity.likely);
    const auto likely = at(0.0);
    const auto high = at(humidity.high - humidity.likely);
    const double end = result.course.points.back().days;
    result.least_humidity = least;
    result.holds_throughout = !likely;
    const double likely_d = likely.value_or(end);
    const double low_d = low ? *low / pace : likely_d; // not even at its lower end
    result.days = Range{std::min(low_d, likely_d), likely_d, std::min(end, high.value_or(end) * pace)};
    result.may_hold_longer = !high || *high * pace >= end;
}

bool is_damp(const climate::Box& box)
{
    return !box.bed.empty() && box.bed.back().wetness.likely > 0.0;
}

} // namespace

std::optional<double> days_until_below(const climate::DrySpell& spell, double least, double shift)
{
    for (std::size_t i = 0; i < spell.points.size(); ++i) {
        const double here = spell.points[i].day_humidity + shift;
        if (here >= least) {
            continue;
        }
        if (i == 0) {
            return 0.0;
        }
        const climate::DrySpellPoint& before = spell.points[i - 1];
        const double then = before.day_humidity + shift;
        return std::lerp(before.days, spell.points[i].days, (then - least) / (then - here));
    }
    return std::nullopt;
}

std::optional<std::vector<DrySpellResult>> dry_spells(const Context& context, const Housed& housed,
                                                      const std::vector<SolvedCase>& solved,
                                                      const climate::Workspace& workspace, std::stop_token stop)
{
    const std::string seasons[] = {"winter", "summer"};
    Notes known; // what the hours hang on is said where light is judged
    const auto lit_h = timed_hours(context, housed, known);
    const auto least = least_humidity(housed, species_in(housed.enclosure, context.catalog));
    std::optional<climate::DrySpell> spells[2];
    side_by_side(2, [&](std::size_t i) {
        const SolvedCase* day = solved_as(solved, seasons[i] + "-day");
        const SolvedCase* night = solved_as(solved, seasons[i] + "-night");
        if (!lit_h || day == nullptr || night == nullptr || !is_damp(day->box)) {
            return;
        }
        climate::Box box = day->box;
        box.misting_l_per_day = exactly(0.0);
        climate::Workspace own = workspace;
        climate::DrySpellPlan plan;
        plan.day = day->room;
        plan.night = night->room;
        plan.lit_h = std::clamp(lit_h->likely, 0.0, 24.0);
        spells[i] = climate::dry_spell(box, plan, own, stop);
    });
    if (stop.stop_requested()) {
        return std::nullopt;
    }
    std::vector<DrySpellResult> results;
    for (std::size_t i = 0; i < 2; ++i) {
        if (!spells[i] || !spells[i]->complete) {
            continue;
        }
        DrySpellResult result;
        result.season = seasons[i];
        result.course = *std::move(spells[i]);
        if (least) {
            set_days(result, *solved_as(solved, seasons[i] + "-day"), *least);
        }
        results.push_back(std::move(result));
    }
    return results;
}

} // namespace loam::assess
