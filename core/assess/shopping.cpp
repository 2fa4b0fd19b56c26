#include "core/assess/shopping.hpp"

#include <algorithm>

namespace loam::assess {

namespace {

template <class Priced> std::optional<MoneyRange> price_of(const Priced& pack, const Currency& currency)
{
    const auto low = Money::from(pack.low, currency);
    const auto typical = Money::from(pack.typical, currency);
    const auto high = Money::from(pack.high, currency);
    return low && typical && high ? std::optional(MoneyRange{*low, *typical, *high}) : std::nullopt;
}

// The first word of a kind of need says what shelf it stands on.
catalog::Category category_of(const std::string& kind)
{
    const auto begins = [&](std::string_view stem) { return kind.rfind(stem, 0) == 0; };
    if (begins("shell.") || kind == "stand") {
        return catalog::Category::enclosure;
    }
    if (begins("heater.")) {
        return catalog::Category::heat;
    }
    if (begins("lamp.") || begins("fixture.")) {
        return catalog::Category::light;
    }
    if (begins("control.")) {
        return catalog::Category::control;
    }
    if (begins("substrate.")) {
        return catalog::Category::substrate;
    }
    if (begins("fitting.") || begins("cover.")) {
        return catalog::Category::furniture;
    }
    return begins("food.") ? catalog::Category::food : catalog::Category::other;
}

ShoppingLine common_part(const buying::Line& line)
{
    ShoppingLine row;
    row.need = line.need;
    row.unit = line.unit;
    row.category = category_of(line.need);
    row.amount_needed = line.needed;
    row.amount_owned = line.owned;
    row.left_over = line.left_over;
    row.enclosures = line.enclosures;
    row.why = line.why;
    row.where = line.where;
    return row;
}

} // namespace

Currency currency_of(const plan::Plan& plan)
{
    return Currency::find(plan.currency).value_or(Currency{plan.currency, 2}); // the loader has refused unknown ones
}

bool prices_match(const plan::Plan& plan, const catalog::Catalog& catalog)
{
    return plan.currency == catalog.prices.currency;
}

std::vector<buying::Owned> owned_of(const plan::Plan& plan)
{
    std::vector<buying::Owned> owned;
    for (const plan::OwnedItem& item : plan.owned) {
        owned.push_back({item.item, item.quantity});
    }
    return owned;
}

buying::Level level_of(const plan::Plan& plan)
{
    switch (plan.budget.price_level.value_or(plan::PriceLevel::typical)) {
    case plan::PriceLevel::low:
        return buying::Level::low;
    case plan::PriceLevel::typical:
        return buying::Level::typical;
    case plan::PriceLevel::high:
        return buying::Level::high;
    }
    return buying::Level::typical;
}

buying::Aim aim_of(const plan::Plan& plan)
{
    switch (plan.budget.pack_aim.value_or(plan::PackAim::cheapest)) {
    case plan::PackAim::cheapest:
        return buying::Aim::cheapest;
    case plan::PackAim::fewest_packs:
        return buying::Aim::fewest_packs;
    case plan::PackAim::least_left_over:
        return buying::Aim::least_left_over;
    }
    return buying::Aim::cheapest;
}

std::optional<std::string> only_channel(const plan::Plan& plan, const catalog::PriceList& prices)
{
    const std::vector<catalog::Seller> sellers = catalog::sellers_of(prices);
    const bool known = std::any_of(sellers.begin(), sellers.end(), [&plan](const catalog::Seller& seller) {
        return seller.channel == plan.budget.channel;
    });
    return known ? plan.budget.channel : std::nullopt;
}

std::vector<buying::ItemOffer> offers_of(const catalog::PriceList& prices, const Currency& currency,
                                         const std::optional<std::string>& only)
{
    const bool comparable = prices.currency == currency.code;
    std::vector<buying::ItemOffer> offers;
    for (const catalog::Item& item : prices.items) {
        buying::ItemOffer offer{item.id, item.name, item.serves, item.unit, item.fits_from, item.fits_to, {}};
        for (const catalog::Pack& pack : item.packs) {
            const std::string& seller = pack.seller.empty() ? prices.channel : pack.seller;
            if (!only || seller == *only) {
                offer.packs.push_back({pack.name, pack.amount, comparable ? price_of(pack, currency) : std::nullopt,
                                       pack.in_stock, seller});
            }
        }
        offers.push_back(std::move(offer));
    }
    return offers;
}

std::vector<buying::Terms> terms_of(const catalog::PriceList& prices, const Currency& currency)
{
    if (prices.currency != currency.code) {
        return {};
    }
    std::vector<buying::Terms> all;
    for (const catalog::Seller& seller : catalog::sellers_of(prices)) {
        buying::Terms terms;
        terms.seller = seller.channel;
        const auto price = seller.delivery ? price_of(*seller.delivery, currency) : std::nullopt;
        terms.delivery = price.value_or(MoneyRange::zero(currency));
        terms.free_from = seller.delivery && seller.delivery->free_from
                              ? Money::from(*seller.delivery->free_from, currency)
                              : std::nullopt;
        terms.tax_share = seller.tax_share.value_or(0.0);
        terms.minimum = seller.minimum_order ? Money::from(*seller.minimum_order, currency) : std::nullopt;
        all.push_back(std::move(terms));
    }
    return all;
}

std::vector<DeliveryCost> delivery_costs(const buying::Purchase& purchase)
{
    std::vector<DeliveryCost> all;
    for (const buying::Delivered& one : purchase.deliveries) {
        all.push_back({one.seller, one.goods, one.delivery, one.tax, one.below_minimum});
    }
    return all;
}

std::vector<ShoppingLine> shopping_lines(const buying::Order& order, const catalog::PriceList& prices)
{
    std::vector<ShoppingLine> rows;
    for (const buying::Line& line : order.lines) {
        if (line.bought.empty()) { // nothing left to buy, or nothing that could be
            ShoppingLine row = common_part(line);
            if (const catalog::Item* item = catalog::find_item(prices, line.owned_item)) {
                row.item = item->id;
                row.item_name = item->name;
                row.category = item->category;
            }
            rows.push_back(std::move(row));
        }
        for (std::size_t i = 0; i < line.bought.size(); ++i) {
            const buying::Bought& bought = line.bought[i];
            ShoppingLine row = common_part(line);
            row.amount_needed = bought.covers;
            row.amount_owned = i == 0 ? line.owned : 0.0; // told once
            row.left_over = bought.left_over;
            row.item = bought.item;
            row.item_name = bought.item_name;
            row.pack = bought.pack;
            row.packs = bought.packs;
            row.pack_price = bought.pack_price;
            row.line_total = bought.total;
            row.channel = bought.seller;
            row.instead_of = i == 0 ? line.instead_of : std::string(); // told once
            if (const catalog::Item* item = catalog::find_item(prices, bought.item)) {
                row.category = item->category;
            }
            rows.push_back(std::move(row));
        }
    }
    return rows;
}

} // namespace loam::assess
