#include "core/assess/bowls.hpp"

#include <algorithm>

#include "core/assess/fittings.hpp"
#include "core/independent.hpp"
#include "core/plan/measured.hpp"
#include "core/water/bowl.hpp"

namespace loam::assess {

namespace {

bool is_chelonian(const catalog::Species& species)
{
    return species.group == catalog::Group::land_turtle || species.group == catalog::Group::tortoise;
}

bool needs_a_bowl(const catalog::Species& species)
{
    return is_chelonian(species) || species.group == catalog::Group::snake;
}

// One group of animals with its size, low to high.
struct Drinker {
    const catalog::Species* species = nullptr;
    Range length_m;
    std::optional<Range> mass_kg;
};

std::vector<Drinker> drinkers(const Context& context, const Housed& housed, Notes& notes)
{
    std::vector<Drinker> all;
    for (std::size_t i = 0; i < housed.enclosure.animals.size(); ++i) {
        const plan::Animal& animal = housed.enclosure.animals[i];
        const catalog::Species* species = context.catalog.find_species(animal.species);
        const auto length = species != nullptr ? body_length(context, housed, i, notes) : std::nullopt;
        if (!length) {
            continue;
        }
        Drinker one{species, *length, std::nullopt};
        const auto& sheet = species->adult_mass_kg;
        if (const auto mass = plan::mass_now_kg(animal)) {
            one.mass_kg = exactly(*mass);
        } else if (!plan::length_now_m(animal) && sheet && sheet->min && sheet->max) { // both of an adult by the sheet
            one.mass_kg = Range{*sheet->min, (*sheet->min + *sheet->max) / 2.0, *sheet->max};
        }
        all.push_back(one);
    }
    return all;
}

// The least sides a bowl should have, for a body between small and large.
struct LeastSides {
    water::Sides low, likely, high;
    Source source;
};

std::optional<LeastSides> least_sides(const Context& context, const Drinker& drinker)
{
    LeastSides least;
    const Range& length_m = drinker.length_m;
    if (is_chelonian(*drinker.species)) {
        const catalog::Assumption* longer = context.catalog.find_assumption("bowl.length_ratio");
        const catalog::Assumption* turning = context.catalog.find_assumption("bowl.turning_ratio");
        if (longer == nullptr || turning == nullptr) {
            return std::nullopt;
        }
        const double by = longer->spread.range().likely;
        const double across = turning->spread.range().likely;
        least = {{by * length_m.low, across * length_m.low},
                 {by * length_m.likely, across * length_m.likely},
                 {by * length_m.high, across * length_m.high},
                 longer->spread.source};
        return least;
    }
    if (drinker.species->group != catalog::Group::snake || !drinker.mass_kg) {
        return std::nullopt;
    }
    const auto low = water::coil_diameter_m(length_m.low, drinker.mass_kg->low);
    const auto likely = water::coil_diameter_m(length_m.likely, drinker.mass_kg->likely);
    const auto high = water::coil_diameter_m(length_m.high, drinker.mass_kg->high);
    if (!low || !likely || !high) {
        return std::nullopt;
    }
    least = {{*low, *low}, {*likely, *likely}, {*high, *high}, {}};
    least.source = {
        "A UK pet guide, n.d.: big enough for the full coil; its width by a flat spiral of the body's volume",
        Confidence::derived};
    return least;
}

double worst(const water::Sides& missing)
{
    return std::max(missing.long_m, missing.short_m);
}

// Judges the bowl that comes nearest to what the drinker needs: one is enough.
void judge_size(const Context& context, const Housed& housed, const Drinker& drinker,
                const std::vector<water::Bowl>& bowls, std::vector<BowlResult>& results, Notes& notes)
{
    const auto least = least_sides(context, drinker);
    if (!least || bowls.empty()) {
        return;
    }
    const auto misses = [&](std::size_t i, const water::Sides& sides) {
        return water::missing({bowls[i].length_m, bowls[i].width_m}, sides);
    };
    std::size_t best = 0;
    for (std::size_t i = 1; i < bowls.size(); ++i) {
        best = worst(misses(i, least->high)) < worst(misses(best, least->high)) ? i : best;
    }
    const bool falls_short = worst(misses(best, least->likely)) > 0.0;
    const bool tight = worst(misses(best, least->high)) > 0.0;
    const Judgement judgement{falls_short ? Verdict::falls_short
                              : tight     ? Verdict::tight
                                          : Verdict::fits,
                              tight ? Direction::below : Direction::none};
    results[best].judgement = worse(results[best].judgement, judgement);
    if (!tight) {
        return;
    }
    const water::Sides& wanted = falls_short ? least->likely : least->high;
    const water::Sides miss = misses(best, wanted);
    const bool long_side = miss.long_m >= miss.short_m;
    const double min_m = long_side ? wanted.long_m : wanted.short_m;
    report(notes, "water.bowl-small", judgement, housed.at(bowls[best].id),
           because("rule.bowl-size",
                   {{"side", min_m - worst(miss), "m"}, {"min", min_m, "m"}, {"short_by", worst(miss), "m"}},
                   {{"fitting", bowls[best].id},
                    {"species", drinker.species->id},
                    {"side_name", long_side ? "long" : "short"}},
                   least->source))
        .remedy =
        remedy("remedy.bigger-bowl", {{"by", worst(miss), "m"}, {"to", min_m, "m"}}, {{"fitting", bowls[best].id}});
}

// Water over the back of a land animal: it drowns where it can't get out.
bool judge_drowning(const Housed& housed, const Drinker& drinker, const water::Bowl& bowl, bool stated, Notes& notes)
{
    const double back_m = drinker.length_m.low * drinker.species->back_height_ratio;
    if (!is_chelonian(*drinker.species) || bowl.depth_m.high <= back_m) {
        return false;
    }
    const Judgement judgement{stated ? Verdict::danger : Verdict::not_known,
                              stated ? Direction::above : Direction::none};
    report(notes, "danger.drowning", judgement, housed.at(bowl.id),
           because("rule.water-depth", inputs_over(bowl.depth_m, back_m, "m"),
                   {{"fitting", bowl.id}, {"species", drinker.species->id}}, drinker.species->back_height_source))
        .remedy = remedy("remedy.shallower-water", {{"to", back_m, "m"}}, {{"fitting", bowl.id}});
    return true;
}

void judge_depth(const Housed& housed, const Drinker& drinker, const water::Bowl& bowl, bool stated, BowlResult& result,
                 Notes& notes)
{
    const catalog::Band& ratio = drinker.species->bowl_water_depth_ratio;
    if (!ratio.min && !ratio.max) {
        return;
    }
    const auto of_body = [&](const std::optional<double>& share) {
        return share ? std::optional(*share * drinker.length_m.likely) : std::nullopt;
    };
    const Target target{of_body(ratio.min), of_body(ratio.max), ratio.source};
    const Judgement judgement = judge(bowl.depth_m, target);
    if (gravity(judgement.verdict) >= gravity(result.judgement.verdict) ||
        result.judgement.verdict == Verdict::not_known) {
        result.depth_m = target;
    }
    result.judgement = worse(result.judgement, judgement);
    if (judge_drowning(housed, drinker, bowl, stated, notes)) {
        result.judgement = worse(result.judgement, {stated ? Verdict::danger : Verdict::not_known, Direction::above});
        return;
    }
    if (judgement.verdict != Verdict::falls_short) {
        return;
    }
    const std::vector<Label> labels{{"fitting", bowl.id}, {"species", drinker.species->id}};
    if (judgement.direction == Direction::above) {
        report(notes, "water.bowl-deep", judgement, housed.at(bowl.id),
               because("rule.water-depth",
                       {{"low", bowl.depth_m.low, "m"},
                        {"likely", bowl.depth_m.likely, "m"},
                        {"high", bowl.depth_m.high, "m"},
                        {"max", *target.max, "m"},
                        {"over_by", bowl.depth_m.likely - *target.max, "m"}},
                       labels, ratio.source))
            .remedy = remedy("remedy.shallower-water", {{"to", *target.max, "m"}}, {{"fitting", bowl.id}});
    } else {
        report(notes, "water.bowl-shallow", judgement, housed.at(bowl.id),
               because("rule.water-depth",
                       {{"low", bowl.depth_m.low, "m"},
                        {"likely", bowl.depth_m.likely, "m"},
                        {"high", bowl.depth_m.high, "m"},
                        {"min", *target.min, "m"},
                        {"short_by", *target.min - bowl.depth_m.likely, "m"}},
                       labels, ratio.source))
            .remedy = remedy("remedy.deeper-water", {{"to", *target.min, "m"}}, {{"fitting", bowl.id}});
    }
}

const plan::Fitting* fitting_of(const plan::Enclosure& enclosure, const std::string& id)
{
    const auto found = std::find_if(enclosure.fittings.begin(), enclosure.fittings.end(),
                                    [&](const plan::Fitting& fitting) { return fitting.id == id; });
    return found == enclosure.fittings.end() ? nullptr : &*found;
}

BowlResult measured(const Housed& housed, const water::Bowl& bowl)
{
    BowlResult result;
    result.id = bowl.id;
    result.volume_l = water::bowl_l(bowl);
    result.water_depth_m = bowl.depth_m;
    const plan::Fitting* fitting = fitting_of(housed.enclosure, bowl.id);
    const double own_kg = fitting != nullptr ? fitting->mass_kg.value_or(0.0) : 0.0;
    result.carried_kg = sum_of_independent({result.volume_l, exactly(own_kg)}); // a litre weighs a kilogram
    result.judgement = {Verdict::fits, Direction::none};
    return result;
}

} // namespace

std::vector<BowlResult> judge_bowls(const Context& context, const Housed& housed, const std::vector<water::Bowl>& bowls,
                                    Notes& notes)
{
    std::vector<BowlResult> results;
    results.reserve(bowls.size());
    for (const water::Bowl& bowl : bowls) {
        results.push_back(measured(housed, bowl));
    }
    const std::vector<Drinker> all = drinkers(context, housed, notes);
    for (const Drinker& drinker : all) {
        judge_size(context, housed, drinker, bowls, results, notes);
        for (std::size_t i = 0; i < bowls.size(); ++i) {
            const plan::Fitting* fitting = fitting_of(housed.enclosure, bowls[i].id);
            judge_depth(housed, drinker, bowls[i], fitting != nullptr && fitting->water_depth_m, results[i], notes);
        }
        if (bowls.empty() && needs_a_bowl(*drinker.species)) {
            report(notes, "water.no-bowl", {Verdict::falls_short, Direction::none}, housed.at(),
                   because("rule.bowl-size", {}, {{"species", drinker.species->id}},
                           drinker.species->water_changes_per_day.source))
                .remedy = remedy("remedy.add-bowl");
        }
    }
    for (BowlResult& result : results) {
        const bool asked = result.depth_m.min || result.depth_m.max;
        const bool sized = std::any_of(
            all.begin(), all.end(), [&](const Drinker& drinker) { return least_sides(context, drinker).has_value(); });
        if (!asked && !sized) {
            result.judgement = {Verdict::not_known, Direction::none};
        }
    }
    return results;
}

} // namespace loam::assess
