#include "core/catalog/price_difference.hpp"

#include <algorithm>
#include <limits>

namespace loam::catalog {

namespace {

template <typename Thing> const Thing* find(const std::vector<Thing>& things, const std::string& id)
{
    const auto at = std::find_if(things.begin(), things.end(), [&](const Thing& one) { return one.id == id; });
    return at == things.end() ? nullptr : &*at;
}

std::optional<std::int64_t> scaled_up(std::int64_t coefficient, int digits)
{
    constexpr std::int64_t most = std::numeric_limits<std::int64_t>::max() / 10;
    for (; digits > 0; --digits) {
        if (coefficient > most || coefficient < -most) {
            return std::nullopt;
        }
        coefficient *= 10;
    }
    return coefficient;
}

bool same(const Decimal& one, const Decimal& other)
{
    const auto apart = exact_difference(one, other);
    return apart && apart->coefficient == 0;
}

bool same_prices(const Pack& one, const Pack& other)
{
    return same(one.low, other.low) && same(one.typical, other.typical) && same(one.high, other.high);
}

class Comparer {
public:
    explicit Comparer(bool prices_compared) { result_.prices_compared = prices_compared; }

    void compare(const Item& before, const Item& after)
    {
        const bool meaning = before.serves != after.serves || before.unit != after.unit ||
                             before.fits_from != after.fits_from || before.fits_to != after.fits_to;
        if (meaning || before.name != after.name || before.category != after.category) {
            result_.items.push_back({Difference::changed, after.id, after.name, meaning});
        }
        for (const Pack& pack : before.packs) {
            if (const Pack* same_pack = find(after.packs, pack.id)) {
                compare_packs(after, pack, *same_pack, before.unit == after.unit);
            } else {
                add({Difference::removed, before.id, before.name, pack, {}});
            }
        }
        for (const Pack& pack : after.packs) {
            if (find(before.packs, pack.id) == nullptr) {
                add({Difference::added, after.id, after.name, {}, pack});
            }
        }
    }

    void add_item(const Item& item, Difference kind)
    {
        result_.items.push_back({kind, item.id, item.name});
        for (const Pack& pack : item.packs) {
            PackDifference whole{kind, item.id, item.name, {}, {}};
            (kind == Difference::added ? whole.after : whole.before) = pack;
            add(std::move(whole));
        }
    }

    PriceDifference take() { return std::move(result_); }

private:
    void compare_packs(const Item& item, const Pack& before, const Pack& after, bool same_unit)
    {
        PackDifference found{Difference::changed, item.id, item.name, before, after};
        found.price = result_.prices_compared && !same_prices(before, after);
        found.amount = !same_unit || !(before.amount == after.amount);
        found.stock = before.in_stock != after.in_stock;
        if (!found.price && !found.amount && !found.stock) {
            return;
        }
        found.rise = result_.prices_compared ? exact_difference(after.typical, before.typical) : std::nullopt;
        if (found.rise && before.typical.coefficient != 0) {
            found.rise_share = found.rise->value() / before.typical.value();
        }
        add(std::move(found));
    }

    void add(PackDifference found) { result_.packs.push_back(std::move(found)); }

    PriceDifference result_;
};

} // namespace

std::optional<Decimal> exact_difference(const Decimal& minuend, const Decimal& subtrahend)
{
    const int scale = std::max(minuend.scale, subtrahend.scale);
    const auto from = scaled_up(minuend.coefficient, scale - minuend.scale);
    const auto less = scaled_up(subtrahend.coefficient, scale - subtrahend.scale);
    constexpr std::int64_t most = std::numeric_limits<std::int64_t>::max() / 2;
    if (!from || !less || *from > most || *from < -most || *less > most || *less < -most) {
        return std::nullopt;
    }
    return Decimal{*from - *less, scale};
}

PriceDifference difference(const PriceList& first, const PriceList& second)
{
    Comparer comparer(first.currency == second.currency);
    for (const Item& item : first.items) {
        if (const Item* other = find(second.items, item.id)) {
            comparer.compare(item, *other);
        } else {
            comparer.add_item(item, Difference::removed);
        }
    }
    for (const Item& item : second.items) {
        if (find(first.items, item.id) == nullptr) {
            comparer.add_item(item, Difference::added);
        }
    }
    return comparer.take();
}

} // namespace loam::catalog
