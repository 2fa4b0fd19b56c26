#include "core/buying/order.hpp"

#include <algorithm>

#include "core/buying/demand.hpp"
#include "core/buying/quantity.hpp"

namespace loam::buying {

namespace {

// A pack that could be bought for a demand.
struct Available {
    const ItemOffer* item = nullptr;
    const PackOffer* pack = nullptr;
};

bool priced(const PackOffer& pack, const Currency& currency)
{
    const auto yield = millionths(pack.amount.low);
    const auto good = [&](const Money& price) {
        return price.currency() == currency && price.minor_units() >= 0 && !price.overflowed();
    };
    return yield.value_or(0) > 0 && pack.price && good(pack.price->low) && good(pack.price->typical) &&
           good(pack.price->high);
}

std::vector<Available> available(const Demand& demand, const std::vector<ItemOffer>& offers, const Currency& currency)
{
    std::vector<Available> result;
    for (const std::size_t i : demand.items) {
        for (const PackOffer& pack : offers[i].packs) {
            if (pack.in_stock && priced(pack, currency)) {
                result.push_back({&offers[i], &pack});
            }
        }
    }
    return result;
}

// Why nothing is available.
Unpriced reason(const Demand& demand, const std::vector<ItemOffer>& offers, const Currency& currency)
{
    bool of_kind = false;
    bool in_unit = false;
    for (const ItemOffer& item : offers) {
        of_kind = of_kind || item.serves == demand.first.kind;
        in_unit = in_unit || (item.serves == demand.first.kind && item.unit == demand.first.unit);
    }
    if (!in_unit) {
        return of_kind ? Unpriced::other_unit : Unpriced::no_item;
    }
    if (demand.items.empty()) {
        return demand.first.fits_value ? Unpriced::nothing_fits : Unpriced::fit_unknown;
    }
    for (const std::size_t i : demand.items) {
        for (const PackOffer& pack : offers[i].packs) {
            if (priced(pack, currency)) { // and yet not available
                return Unpriced::out_of_stock;
            }
        }
    }
    return Unpriced::no_price;
}

std::int64_t price_at(const MoneyRange& price, Level level)
{
    switch (level) {
    case Level::low:
        return price.low.minor_units();
    case Level::high:
        return price.high.minor_units();
    case Level::typical:
        break;
    }
    return price.typical.minor_units();
}

std::vector<Bought> rows(const Demand& demand, const std::vector<Available>& packs, const PackChoice& choice)
{
    std::vector<Bought> result;
    std::int64_t uncovered = demand.needed;
    for (std::size_t i = 0; i < packs.size(); ++i) {
        if (choice.counts[i] == 0) {
            continue;
        }
        const PackOffer& pack = *packs[i].pack;
        const auto yield = static_cast<double>(choice.counts[i]) * pack.amount.low;
        const std::int64_t covered = std::min(uncovered, millionths(yield).value_or(uncovered));
        uncovered -= covered;
        result.push_back({.item = packs[i].item->id,
                          .item_name = packs[i].item->name,
                          .pack = pack.name,
                          .packs = choice.counts[i],
                          .covers = units(covered),
                          .left_over = {},
                          .pack_price = *pack.price,
                          .total = pack.price->times(choice.counts[i]),
                          .seller = pack.seller});
    }
    if (!result.empty()) {
        result.back().left_over = choice.left_over;
    }
    return result;
}

bool overflowed(const MoneyRange& range)
{
    return range.low.overflowed() || range.typical.overflowed() || range.high.overflowed();
}

// What would have been bought, were everything in stock; empty where it is what is bought.
std::string missed_for_stock(const Demand& demand, const std::vector<ItemOffer>& offers, const Currency& currency,
                             Aim aim, Level level)
{
    const bool any_out = std::any_of(demand.items.begin(), demand.items.end(), [&](std::size_t i) {
        return std::any_of(offers[i].packs.begin(), offers[i].packs.end(),
                           [](const PackOffer& pack) { return !pack.in_stock; });
    });
    if (!any_out) {
        return {};
    }
    std::vector<Available> all;
    std::vector<PackCandidate> candidates;
    for (const std::size_t i : demand.items) {
        for (const PackOffer& pack : offers[i].packs) {
            if (priced(pack, currency)) {
                all.push_back({&offers[i], &pack});
                candidates.push_back({pack.amount, price_at(*pack.price, level)});
            }
        }
    }
    const auto choice = choose_packs(units(demand.needed), candidates, aim);
    for (std::size_t i = 0; choice && i < all.size(); ++i) {
        if (choice->counts[i] > 0 && !all[i].pack->in_stock) {
            return all[i].item->name + ", " + all[i].pack->name;
        }
    }
    return {};
}

void buy(Line& line, const Demand& demand, const std::vector<Available>& packs, const Currency& currency, Level level)
{
    std::vector<PackCandidate> candidates;
    candidates.reserve(packs.size());
    for (const Available& one : packs) {
        candidates.push_back({one.pack->amount, price_at(*one.pack->price, level)});
    }
    auto choice = choose_packs(units(demand.needed), candidates, line.aim);
    if (!choice && line.aim != Aim::cheapest) {
        line.aim = Aim::cheapest;
        choice = choose_packs(units(demand.needed), candidates, line.aim);
    }
    if (!choice) {
        line.unpriced = Unpriced::too_large;
        return;
    }
    MoneyRange total = MoneyRange::zero(currency);
    std::vector<Bought> bought = rows(demand, packs, *choice);
    for (const Bought& row : bought) {
        total += row.total;
    }
    if (overflowed(total)) {
        line.unpriced = Unpriced::too_large;
        return;
    }
    line.bought = std::move(bought);
    line.left_over = choice->left_over;
    line.total = total;
}

Line line_for(const Demand& demand, const std::vector<ItemOffer>& offers, const Currency& currency, Aim aim,
              Level level)
{
    Line line;
    line.need = demand.first.kind;
    line.unit = demand.first.unit;
    line.fits_value = demand.first.fits_value;
    line.needed = units(demand.needed);
    line.owned = units(demand.owned);
    line.owned_item = demand.owned_item;
    line.aim = aim;
    line.enclosures = demand.enclosures;
    line.why = demand.first.why;
    line.where = demand.first.where;
    if (!demand.countable) {
        line.unpriced = Unpriced::too_large;
        return line;
    }
    if (demand.needed == 0) {
        line.total = MoneyRange::zero(currency);
        return line;
    }
    const std::vector<Available> packs = available(demand, offers, currency);
    if (packs.empty()) {
        line.unpriced = reason(demand, offers, currency);
        return line;
    }
    buy(line, demand, packs, currency, level);
    line.instead_of = missed_for_stock(demand, offers, currency, line.aim, level);
    return line;
}

} // namespace

Order order(const std::vector<Household>& households, const std::vector<ItemOffer>& offers, const Currency& currency,
            Aim aim, Level level)
{
    Order result;
    result.total = MoneyRange::zero(currency);
    for (const Demand& demand : demands(households, offers)) {
        result.lines.push_back(line_for(demand, offers, currency, aim, level));
        if (result.lines.back().total) {
            result.total += *result.lines.back().total;
        }
    }
    return result;
}

} // namespace loam::buying
