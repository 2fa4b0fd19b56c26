#include "core/suggest/suggest.hpp"

#include <algorithm>
#include <limits>

#include "core/assess/shopping.hpp"
#include "core/assess/side_by_side.hpp"
#include "core/assess/space.hpp"
#include "core/suggest/deeper_bed.hpp"
#include "core/suggest/search.hpp"
#include "core/suggest/uv_lamp.hpp"

namespace loam::suggest {

namespace {

using Day = std::chrono::year_month_day;

// Of every zone and of the humidity, in and out of season; the heat wave apart, which no equipment cools.
template <class Take> void for_each_reading(const assess::Assessment& assessment, const Take& take)
{
    for (const assess::EnclosureResult& enclosure : assessment.enclosures) {
        for (const assess::HeatCase& heat : enclosure.heat) {
            for (const assess::ZoneResult& zone : heat.zones) {
                if (heat.id != "heat-wave" && heat.known) {
                    take(zone.temperature_c, zone.target_c, 1.0);
                }
            }
        }
        for (const assess::HumidityCase& humidity : enclosure.humidity) {
            if (humidity.relative_humidity && humidity.id != "heat-wave") {
                take(*humidity.relative_humidity, humidity.target, humidity_k);
            }
        }
    }
}

double margin_k(const assess::Assessment& assessment)
{
    double least = std::numeric_limits<double>::infinity();
    for_each_reading(assessment, [&](const Range& reading, const Target& target, double scale) {
        least = std::min(least, inside(reading, target, scale).least());
    });
    return least;
}

double missed_k(const assess::Assessment& assessment)
{
    double sum = 0.0;
    for_each_reading(assessment, [&](const Range& reading, const Target& target, double scale) {
        sum += std::max(0.0, -inside(exactly(reading.likely), target, scale).least());
    });
    return sum;
}

// A guess for the ranking only: what is bought, and the kilowatt-hours of the years to look at.
double over_years(const Found& found, double to_begin, const plan::Plan& plan)
{
    constexpr double days_a_year = 365.0;
    constexpr double lit_h = 12.0;
    constexpr double usual_years = 5.0;
    const double years = plan.budget.horizon_years ? static_cast<double>(*plan.budget.horizon_years) : usual_years;
    const auto& tariff = plan.site.electricity_price_per_kwh;
    const double kwh = days_a_year * (lit_h * found.mean_day_w + (24.0 - lit_h) * found.mean_night_w) / 1000.0;
    return to_begin + years * kwh * (tariff ? tariff->value() : 0.0);
}

struct Ranked {
    const Found* found = nullptr;
    double to_begin = 0.0;
    double over_years = 0.0;
};

double merit_of(const Ranked& one, Merit merit)
{
    switch (merit) {
    case Merit::cheapest_to_buy:
        return one.to_begin;
    case Merit::cheapest_over_years:
        return one.over_years;
    case Merit::widest_margin:
        return -one.found->margin_k;
    }
    return 0.0;
}

// Those worth an assessment: of what misses about as little as the best, the one that strains least and the first of
// every merit.
std::vector<const Found*> worth_assessing(const std::vector<Found>& found, const catalog::Catalog& catalog, Day today)
{
    constexpr std::size_t most = 5;
    constexpr double as_good_k = 0.1;
    double least_k = std::numeric_limits<double>::infinity();
    for (const Found& one : found) {
        least_k = std::min(least_k, one.missed_k);
    }
    std::vector<Ranked> ranked;
    for (const Found& one : found) {
        if (one.missed_k <= least_k + as_good_k) {
            ranked.push_back({&one, 0.0, 0.0});
        }
    }
    assess::side_by_side(ranked.size(), [&](std::size_t i) {
        Ranked& one = ranked[i];
        assess::Workspace workspace;
        const auto first = assess::assess(one.found->plan, catalog, today, workspace, {}, {}, assess::Until::at_once);
        one.to_begin = first->costs.startup.typical.decimal().value();
        one.over_years = over_years(*one.found, one.to_begin, one.found->plan);
    });
    std::vector<const Found*> chosen;
    const auto choose_first = [&](const auto& before) {
        std::stable_sort(ranked.begin(), ranked.end(), before);
        for (const Ranked& one : ranked) {
            if (chosen.size() < most && std::find(chosen.begin(), chosen.end(), one.found) == chosen.end()) {
                chosen.push_back(one.found);
                return;
            }
        }
    };
    choose_first([](const Ranked& a, const Ranked& b) { return a.found->strain < b.found->strain; });
    for (const Merit merit : merits) {
        choose_first([merit](const Ranked& a, const Ranked& b) { return merit_of(a, merit) < merit_of(b, merit); });
    }
    return chosen;
}

// nullopt: stopped.
std::optional<std::vector<Suggestion>> assessed(const std::vector<plan::Plan>& plans, const catalog::Catalog& catalog,
                                                Day today, const std::stop_token& stop)
{
    std::vector<std::optional<Suggestion>> all(plans.size());
    assess::side_by_side(plans.size(), [&](std::size_t i) {
        assess::Workspace workspace;
        if (auto assessment = assess::assess(plans[i], catalog, today, workspace, stop, {}, assess::Until::courses)) {
            const double margin = margin_k(*assessment);
            const double missed = missed_k(*assessment);
            const bool meets = missed == 0.0 && obstacles(*assessment).empty();
            all[i] = Suggestion{{}, plans[i], std::move(*assessment), margin, missed, meets};
        }
    });
    std::vector<Suggestion> done;
    for (std::optional<Suggestion>& one : all) {
        if (!one) {
            return std::nullopt;
        }
        done.push_back(std::move(*one));
    }
    return done;
}

double merit_of(const Suggestion& one, Merit merit)
{
    const assess::Costs& costs = one.assessment.costs;
    switch (merit) {
    case Merit::cheapest_to_buy:
        return costs.startup.typical.decimal().value();
    case Merit::cheapest_over_years:
        return costs.net_present_cost ? costs.net_present_cost->decimal().value()
                                      : costs.startup.typical.decimal().value();
    case Merit::widest_margin:
        return -one.margin_k;
    }
    return 0.0;
}

// Nought where it meets everything; a danger outweighs whatever is missed.
double trouble(const Suggestion& one)
{
    double sum = one.missed_k;
    for (const Finding& finding : obstacles(one.assessment)) {
        constexpr double danger = 100.0;
        sum += finding.verdict == Verdict::danger ? danger : 1.0;
    }
    return sum;
}

// The best of each merit among those that meet everything, else among those with about the least trouble.
std::vector<Suggestion> best_of(std::vector<Suggestion> all)
{
    if (all.empty()) {
        return all;
    }
    const auto mildest = std::min_element(
        all.begin(), all.end(), [](const Suggestion& a, const Suggestion& b) { return trouble(a) < trouble(b); });
    constexpr double as_good = 0.5;
    const double least = trouble(*mildest);
    const double allowed = least == 0.0 ? 0.0 : least + as_good;
    std::erase_if(all, [allowed](const Suggestion& one) { return trouble(one) > allowed; });
    for (const Merit merit : merits) {
        std::min_element(all.begin(), all.end(), [merit](const Suggestion& a, const Suggestion& b) {
            return merit_of(a, merit) < merit_of(b, merit);
        })->merits.push_back(merit);
    }
    std::erase_if(all, [](const Suggestion& one) { return one.merits.empty(); });
    std::stable_sort(all.begin(), all.end(),
                     [](const Suggestion& a, const Suggestion& b) { return a.merits.front() < b.merits.front(); });
    return all;
}

plan::Plan alone(const plan::Plan& plan, std::size_t place)
{
    plan::Plan one = plan;
    one.enclosures = {plan.enclosures.at(place)};
    return one;
}

// The plan that the search starts from: boxes large enough, beds deep enough, a lamp for UV where one is missing.
plan::Plan prepared(plan::Plan plan, const catalog::Catalog& catalog, Day today, const Asked& asked, Result& result)
{
    for (std::size_t i = 0; i < plan.enclosures.size(); ++i) {
        plan::Enclosure& enclosure = plan.enclosures[i];
        const assess::Context context{plan, catalog, today};
        const bool small =
            assess::assess_space(context, {enclosure, i}).result.judgement.verdict == Verdict::falls_short;
        const auto size = small && !asked.keep_box ? smallest_box(plan, catalog, today, i) : std::nullopt;
        if (size) {
            resize(enclosure, size->length_m, size->width_m, size->height_m);
            result.new_boxes.push_back(enclosure.id);
        } else if (small) {
            result.no_box.push_back(enclosure.id);
        }
        if (deepen_bed(plan, catalog, i)) {
            result.deeper_beds.push_back(enclosure.id);
        }
        add_uv_lamp(plan, catalog, i);
    }
    return plan;
}

bool too_dear(const Suggestion& one, const std::optional<Money>& most)
{
    const Money& costs = one.assessment.costs.startup.typical;
    return most && most->currency() == costs.currency() && costs.minor_units() > most->minor_units();
}

// Leaves what may be spent; tells the least of the rest where nothing is left.
void keep_within(const std::optional<Money>& most, std::vector<Suggestion>& all, Result& result)
{
    std::optional<Money> least;
    for (const Suggestion& one : all) {
        const Money& costs = one.assessment.costs.startup.typical;
        if (one.meets && (!least || costs.minor_units() < least->minor_units())) {
            least = costs;
        }
    }
    std::vector<Suggestion> within;
    for (Suggestion& one : all) {
        if (!too_dear(one, most)) {
            within.push_back(one);
        }
    }
    const bool any = std::any_of(within.begin(), within.end(), [](const Suggestion& one) { return one.meets; });
    if (!any && least && most) {
        result.least_to_begin = least;
    } else {
        all = std::move(within);
    }
}

// The best outfit of each merit for the enclosure by itself. nullopt: stopped.
std::optional<std::vector<Outfit>> best_alone(const std::vector<const Found*>& worth, const catalog::Catalog& catalog,
                                              Day today, std::size_t place, const std::stop_token& stop)
{
    std::vector<plan::Plan> singles;
    singles.reserve(worth.size());
    for (const Found* one : worth) {
        singles.push_back(alone(one->plan, place));
    }
    const auto each = assessed(singles, catalog, today, stop);
    if (!each) {
        return std::nullopt;
    }
    std::vector<Outfit> outfits;
    for (const Suggestion& best : best_of(*each)) {
        const auto at = std::find(singles.begin(), singles.end(), best.plan) - singles.begin();
        outfits.push_back(worth[static_cast<std::size_t>(at)]->outfit);
    }
    return outfits;
}

// Every plan so far with every outfit in the enclosure, up to a few.
std::vector<plan::Plan> grown(const std::vector<plan::Plan>& so_far, const catalog::Catalog& catalog, std::size_t place,
                              const std::vector<Outfit>& outfits)
{
    constexpr std::size_t most_plans = 6;
    std::vector<plan::Plan> plans;
    for (const Outfit& outfit : outfits) {
        for (const plan::Plan& plan : so_far) {
            auto next = plans.size() < most_plans ? dressed(plan, catalog, place, outfit) : std::nullopt;
            if (next) {
                hang_uv_lamp(*next, catalog, place);
                plans.push_back(std::move(*next));
            }
        }
    }
    return plans.empty() ? so_far : plans;
}

std::vector<plan::Plan> plans_of(const std::vector<const Found*>& worth)
{
    std::vector<plan::Plan> plans;
    plans.reserve(worth.size());
    for (const Found* one : worth) {
        plans.push_back(one->plan);
    }
    return plans;
}

} // namespace

std::optional<Result> suggest(const plan::Plan& plan, const catalog::Catalog& catalog, Day today, const Asked& asked,
                              std::stop_token stop)
{
    Result result;
    const plan::Plan start = prepared(plan, catalog, today, asked, result);
    std::vector<plan::Plan> plans{start}; // as they grow, enclosure by enclosure
    for (std::size_t place = 0; place < start.enclosures.size(); ++place) {
        const auto found = search(start, catalog, place, stop);
        if (!found) {
            return std::nullopt;
        }
        result.tried += found->size();
        if (found->empty()) {
            result.unknown.push_back(start.enclosures[place].id);
            continue;
        }
        const auto worth = worth_assessing(*found, catalog, today);
        if (start.enclosures.size() == 1) {
            plans = plans_of(worth);
            continue;
        }
        const auto outfits = best_alone(worth, catalog, today, place, stop);
        if (!outfits) {
            return std::nullopt;
        }
        plans = grown(plans, catalog, place, *outfits);
    }
    auto all = assessed(plans, catalog, today, stop);
    if (!all) {
        return std::nullopt;
    }
    keep_within(asked.most_to_begin, *all, result);
    result.suggestions = best_of(std::move(*all));
    return result;
}

} // namespace loam::suggest
