#include "core/buying/purchase.hpp"

#include <algorithm>
#include <bit>
#include <tuple>

namespace loam::buying {

namespace {

bool among(const std::vector<Terms>& terms, unsigned set, const std::string& seller)
{
    for (std::size_t i = 0; i < terms.size(); ++i) {
        if ((set >> i & 1U) != 0U && terms[i].seller == seller) {
            return true;
        }
    }
    return false;
}

std::vector<ItemOffer> sold_by(const std::vector<ItemOffer>& offers, const std::vector<Terms>& terms, unsigned set)
{
    std::vector<ItemOffer> sold = offers;
    for (ItemOffer& item : sold) {
        std::erase_if(item.packs, [&](const PackOffer& pack) { return !among(terms, set, pack.seller); });
    }
    return sold;
}

Money tax_on(const Money& goods, const Money& delivery, double share)
{
    return (goods + delivery).scaled(share);
}

Delivered delivered(const Terms& terms, const MoneyRange& goods)
{
    Delivered one{terms.seller, goods, terms.delivery, goods, false};
    for (Money MoneyRange::*end : {&MoneyRange::low, &MoneyRange::typical, &MoneyRange::high}) {
        if (terms.free_from && (goods.*end).minor_units() >= terms.free_from->minor_units()) {
            one.delivery.*end = Money(0, (goods.*end).currency());
        }
    }
    // What is brought for nothing at high prices may cost at low ones: the range stays a range.
    const std::int64_t least =
        std::min({one.delivery.low.minor_units(), one.delivery.typical.minor_units(), one.delivery.high.minor_units()});
    const std::int64_t most =
        std::max({one.delivery.low.minor_units(), one.delivery.typical.minor_units(), one.delivery.high.minor_units()});
    one.delivery.low = Money(least, goods.low.currency());
    one.delivery.high = Money(most, goods.low.currency());
    one.tax = {tax_on(goods.low, one.delivery.low, terms.tax_share),
               tax_on(goods.typical, one.delivery.typical, terms.tax_share),
               tax_on(goods.high, one.delivery.high, terms.tax_share)};
    one.below_minimum = terms.minimum && goods.typical.minor_units() < terms.minimum->minor_units();
    return one;
}

std::vector<Delivered> deliveries(const Order& order, const std::vector<Terms>& terms, const Currency& currency)
{
    std::vector<Delivered> all;
    for (const Terms& each : terms) {
        MoneyRange goods = MoneyRange::zero(currency);
        bool any = false;
        for (const Line& line : order.lines) {
            for (const Bought& bought : line.bought) {
                if (bought.seller == each.seller) {
                    goods += bought.total;
                    any = true;
                }
            }
        }
        if (any) {
            all.push_back(delivered(each, goods));
        }
    }
    return all;
}

std::int64_t at_level(const MoneyRange& range, Level level)
{
    return (level == Level::low ? range.low : level == Level::high ? range.high : range.typical).minor_units();
}

struct Rank {
    std::size_t unpriced = 0;
    std::size_t below_minimum = 0;
    std::int64_t total = 0;
    int sellers = 0;
    auto key() const { return std::tie(unpriced, below_minimum, total, sellers); }
};

Rank rank_of(const Purchase& purchase, Level level, unsigned set)
{
    Rank rank{0, 0, at_level(purchase.total, level), std::popcount(set)};
    for (const Line& line : purchase.order.lines) {
        rank.unpriced += line.unpriced ? 1 : 0;
    }
    for (const Delivered& one : purchase.deliveries) {
        rank.below_minimum += one.below_minimum ? 1 : 0;
    }
    return rank;
}

} // namespace

Purchase purchase(const std::vector<Household>& households, const std::vector<ItemOffer>& offers,
                  const std::vector<Terms>& terms, const Currency& currency, Aim aim, Level level)
{
    const std::vector<Terms> known(terms.begin(),
                                   terms.begin() + static_cast<std::ptrdiff_t>(std::min(terms.size(), most_sellers)));
    std::optional<Purchase> best;
    Rank best_rank;
    for (unsigned set = 1; set < 1U << known.size(); ++set) {
        Purchase tried;
        tried.order = order(households, known.size() == 1 ? offers : sold_by(offers, known, set), currency, aim, level);
        tried.deliveries = deliveries(tried.order, known, currency);
        tried.total = tried.order.total;
        for (const Delivered& one : tried.deliveries) {
            tried.total += one.delivery;
            tried.total += one.tax;
        }
        const Rank rank = rank_of(tried, level, set);
        if (!best || rank.key() < best_rank.key()) {
            best = std::move(tried);
            best_rank = rank;
        }
    }
    if (!best) {
        Order alone = order(households, offers, currency, aim, level);
        const MoneyRange total = alone.total;
        best = Purchase{std::move(alone), {}, total};
    }
    return *best;
}

} // namespace loam::buying
