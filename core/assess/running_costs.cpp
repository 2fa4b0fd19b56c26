#include <algorithm>

#include "core/assess/costs.hpp"
#include "core/assess/upkeep.hpp"
#include "core/assess/wishes.hpp"
#include "core/independent.hpp"

namespace loam::assess {

namespace {

// Consumption of one kind of good, priced by the list's best pack. Nothing where the list has none: the need itself
// says so in the shopping list.
void add_consumption(const Context& context, std::vector<cost::Consumption>& all, cost::Kind kind,
                     const std::string& serves, const Range& per_year)
{
    if (per_year.high <= 0.0 || left_out(context.plan.wishes, serves)) {
        return;
    }
    const auto price = cheapest_by_unit(context.catalog.prices, serves);
    if (!price) {
        return;
    }
    all.push_back({.kind = kind,
                   .item = price->item->id,
                   .name = price->item->name,
                   .per_year = per_year,
                   .price_per = price->pack->amount.likely,
                   .price_low = price->pack->low,
                   .price_typical = price->pack->typical,
                   .price_high = price->pack->high});
}

void add_electricity(const Context& context, const std::vector<RunningInputs>& enclosures,
                     std::vector<cost::Consumption>& all)
{
    const auto& tariff = context.plan.site.electricity_price_per_kwh;
    if (!tariff) {
        return; // a finding, never a made-up tariff
    }
    Range kwh;
    for (const RunningInputs& one : enclosures) {
        kwh = {kwh.low + one.power->kwh_per_year.low, kwh.likely + one.power->kwh_per_year.likely,
               kwh.high + one.power->kwh_per_year.high};
    }
    all.push_back({.kind = cost::Kind::electricity,
                   .item = "electricity",
                   .name = "electricity",
                   .per_year = kwh,
                   .price_per = 1.0,
                   .price_low = *tariff,
                   .price_typical = *tariff,
                   .price_high = *tariff});
}

void add_mains_water(const Context& context, const std::vector<RunningInputs>& enclosures,
                     std::vector<cost::Consumption>& all)
{
    constexpr double m3_a_year = 365.0 / 1000.0; // of a litre a day
    const auto& price = context.plan.site.water.price_per_m3;
    Range m3;
    for (const RunningInputs& one : enclosures) {
        const auto& drawn = one.water->result.drawn_l_per_day;
        if (!price || !drawn) {
            return; // a price is never made up
        }
        m3 = {m3.low + drawn->low * m3_a_year, m3.likely + drawn->likely * m3_a_year,
              m3.high + drawn->high * m3_a_year};
    }
    if (m3.high <= 0.0) {
        return;
    }
    all.push_back({.kind = cost::Kind::water,
                   .item = "mains-water",
                   .name = "water",
                   .per_year = m3,
                   .price_per = 1.0,
                   .price_low = *price,
                   .price_typical = *price,
                   .price_high = *price});
}

void add_animals(const Context& context, const Housed& housed, std::vector<cost::Consumption>& all)
{
    constexpr double months_a_year = 12.0;
    for (const Upkeep& one : upkeep_of(context, housed.enclosure)) {
        if (one.food_per_month) {
            add_consumption(context, all, cost::Kind::food, one.food_item, scaled(*one.food_per_month, months_a_year));
        }
        if (one.calcium_g_per_month) {
            add_consumption(context, all, cost::Kind::food, "care.calcium",
                            scaled(*one.calcium_g_per_month, months_a_year));
        }
        if (one.vet_visits_per_year) {
            add_consumption(context, all, cost::Kind::health, "health.vet-visit", *one.vet_visits_per_year);
        }
    }
}

} // namespace

std::optional<UnitPrice> cheapest_by_unit(const catalog::PriceList& prices, const std::string& kind)
{
    std::optional<UnitPrice> best;
    double best_price = 0.0;
    for (const catalog::Item& item : prices.items) {
        for (const catalog::Pack& pack : item.packs) {
            const bool usable = item.serves == kind && pack.in_stock && pack.amount.likely > 0.0;
            const double price = usable ? pack.typical.value() / pack.amount.likely : 0.0;
            if (usable && (!best || price < best_price)) {
                best = UnitPrice{&item, &pack};
                best_price = price;
            }
        }
    }
    return best;
}

std::vector<cost::Consumption> consumptions(const Context& context, const std::vector<RunningInputs>& enclosures)
{
    std::vector<cost::Consumption> all;
    add_electricity(context, enclosures, all);
    add_mains_water(context, enclosures, all);
    if (!prices_match(context.plan, context.catalog)) {
        return all; // the tariff is in the plan's currency, the list is not
    }
    bool animals = false;
    for (const RunningInputs& one : enclosures) {
        if (one.water->result.conditioner_ml_per_day) {
            add_consumption(context, all, cost::Kind::water, "water.conditioner",
                            scaled(*one.water->result.conditioner_ml_per_day, 365.0));
        }
        if (one.water->result.cartridges_per_year) {
            add_consumption(context, all, cost::Kind::water, "water.filter-cartridge",
                            *one.water->result.cartridges_per_year);
        }
        add_animals(context, one.housed, all);
        animals = animals || animal_count(one.housed.enclosure) > 0;
    }
    if (const auto litres = spread_of(context.catalog, "hygiene.disinfectant_l_per_year"); litres && animals) {
        add_consumption(context, all, cost::Kind::other, "hygiene.disinfectant", *litres);
    }
    if (const auto gloves = spread_of(context.catalog, "hygiene.gloves_per_year"); gloves && animals) {
        add_consumption(context, all, cost::Kind::other, "hygiene.gloves", *gloves);
    }
    if (animals) {
        add_consumption(context, all, cost::Kind::health, "health.sick-reserve", exactly(1.0));
    }
    return all;
}

} // namespace loam::assess
