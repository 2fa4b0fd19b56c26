#include <algorithm>
#include <limits>

#include "core/assess/costs.hpp"
#include "core/assess/shelf.hpp"
#include "core/assess/wishes.hpp"
#include "core/independent.hpp"

namespace loam::assess {

namespace {

double hours_of(const std::vector<RunningInputs>& enclosures, const std::string& device)
{
    for (const RunningInputs& one : enclosures) {
        for (const DevicePower& power : one.power->result.devices) {
            if (power.id == device) {
                return power.hours_per_day;
            }
        }
    }
    return 24.0;
}

std::optional<Range> range_of(const std::optional<catalog::Spread>& spread)
{
    return spread ? std::optional(spread->range()) : std::nullopt;
}

// Of the thing that meets the need: of one on the shelf whose age nobody stated, anything up to its longest life.
Range age_of(const std::optional<Taken>& taken, const Range& life_months, Notes& notes)
{
    if (!taken) {
        return exactly(0.0);
    }
    if (taken->age_months) {
        return exactly(*taken->age_months);
    }
    const Range age{0.0, 0.5 * life_months.likely, life_months.high};
    assume(notes, {"/owned/" + std::to_string(taken->entry) + "/age_months", "mo", age, {}});
    return age;
}

Range at_least(const Range& age_months, double months)
{
    return {std::max(age_months.low, months), std::max(age_months.likely, months), std::max(age_months.high, months)};
}

// A lamp burnt for some hours already has that much less to go.
double burnt_months(const std::vector<RunningInputs>& enclosures, const std::string& device, double hours_per_day)
{
    for (const RunningInputs& one : enclosures) {
        for (const plan::Device& known : one.housed.enclosure.equipment) {
            if (known.id == device && known.age_hours && hours_per_day > 0.0) {
                return *known.age_hours / hours_per_day / cost::days_per_year * cost::months_per_year;
            }
        }
    }
    return 0.0;
}

// Whichever ends first. How long it keeps its UV may be known at some ends only.
Range sooner(const Range& worn_out, const Range& faded)
{
    const double likely = std::min(worn_out.likely, faded.likely);
    return {std::min(std::min(worn_out.low, faded.low), likely), likely,
            std::max(std::min(worn_out.high, faded.high), likely)};
}

const catalog::Material* bed_of(const Context& context, const buying::Need& need)
{
    constexpr std::string_view stem = "substrate.";
    return need.kind.rfind(stem, 0) == 0 ? context.catalog.find_material(need.kind.substr(stem.size())) : nullptr;
}

} // namespace

std::optional<Range> uv_life_months(const std::vector<RunningInputs>& enclosures, const std::string& device)
{
    for (const RunningInputs& one : enclosures) {
        const UvHours& hours = one.uv->from_new;
        for (const UvLampResult& lamp : one.uv->lamps) {
            const double hours_per_day = hours_of(enclosures, device);
            if (lamp.id != device || !hours.likely_h || !(*hours.likely_h > 0.0) || !(hours_per_day > 0.0)) {
                continue;
            }
            // Where the low end misses the zone from the start, the shortest life is no guide: the likely one stands.
            const double short_h = hours.earliest_h.value_or(0.0) > 0.0 ? *hours.earliest_h : *hours.likely_h;
            const double months_per_h = cost::months_per_year / cost::days_per_year / hours_per_day;
            return scaled({short_h, *hours.likely_h, hours.latest_h.value_or(std::numeric_limits<double>::infinity())},
                          months_per_h);
        }
    }
    return std::nullopt;
}

// What is worn out is bought again as it would be bought alone: whole packs for that one need.
std::vector<cost::Renewal> renewals(const Context& context, const std::vector<buying::Need>& needs,
                                    const std::vector<RunningInputs>& enclosures, Notes& notes)
{
    std::vector<cost::Renewal> all;
    const Currency currency = currency_of(context.plan);
    for (const cost::Renewal& own : own_renewals(context.plan, currency)) {
        all.push_back(own);
    }
    const auto offers = offers_of(context.catalog.prices, currency, only_channel(context.plan, context.catalog.prices));
    Shelf shelf(context.plan.owned, offers);
    for (const buying::Need& need : needs) {
        if (need.why == "need.spare-lamp") {
            continue; // it waits for the first change, and is renewed with it
        }
        const catalog::Material* bed = bed_of(context, need);
        const auto taken = bed == nullptr ? shelf.take(need) : std::nullopt; // a bag on the shelf is not yet in use
        const buying::Order alone =
            buying::order({{{need}, {}}}, offers, currency, buying::Aim::cheapest, level_of(context.plan));
        if (alone.lines.empty() || !alone.lines.front().total || alone.lines.front().bought.empty()) {
            continue; // its price is not known: listed as unpriced
        }
        const catalog::Item* item = catalog::find_item(context.catalog.prices, alone.lines.front().bought.front().item);
        const double hours = hours_of(enclosures, need.where);
        auto life = bed != nullptr ? range_of(bed->replace_months)
                                   : cost::life_months(range_of(item->life_hours), hours, range_of(item->life_months));
        const bool is_lamp_itself = need.why == "need.device"; // its guard and fixture don't fade
        if (const auto faded = uv_life_months(enclosures, need.where); is_lamp_itself && life && faded) {
            life = sooner(*life, *faded);
        }
        const bool durable = need.unit == "each" || bed != nullptr || need.unit == "m2";
        if (!life || !durable || need.kind.rfind("food.", 0) == 0) {
            continue;
        }
        all.push_back({.kind = bed != nullptr ? cost::Kind::substrate : cost::Kind::replacement,
                       .item = item->id,
                       .name = item->name,
                       .where = need.where,
                       .price = *alone.lines.front().total,
                       .life_months = *life,
                       .age_months = at_least(age_of(taken, *life, notes),
                                              is_lamp_itself ? burnt_months(enclosures, need.where, hours) : 0.0)});
    }
    return all;
}

} // namespace loam::assess
