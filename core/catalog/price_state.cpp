#include "core/catalog/price_state.hpp"

#include <algorithm>
#include <charconv>
#include <set>
#include <string_view>

namespace loam::catalog {

namespace {

std::optional<int> number(std::string_view digits)
{
    int value = 0;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return read.ec == std::errc() && read.ptr == digits.data() + digits.size() && value >= 0 ? std::optional(value)
                                                                                             : std::nullopt;
}

// "YYYY-MM-DD"; nullopt for anything else.
std::optional<std::chrono::year_month_day> date_of(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') {
        return std::nullopt;
    }
    const auto year = number(text.substr(0, 4));
    const auto month = number(text.substr(5, 2));
    const auto day = number(text.substr(8, 2));
    if (!year || !month || !day) {
        return std::nullopt;
    }
    const std::chrono::year_month_day date{std::chrono::year{*year}, std::chrono::month{static_cast<unsigned>(*month)},
                                           std::chrono::day{static_cast<unsigned>(*day)}};
    return date.ok() ? std::optional(date) : std::nullopt;
}

bool in_stock(const Item& item)
{
    return std::any_of(item.packs.begin(), item.packs.end(), [](const Pack& pack) { return pack.in_stock; });
}

} // namespace

std::optional<double> age_months(const PriceList& prices, std::chrono::year_month_day today)
{
    const auto date = date_of(prices.date);
    if (!date) {
        return std::nullopt;
    }
    const auto age = std::chrono::sys_days{today} - std::chrono::sys_days{*date};
    return std::chrono::duration<double, std::chrono::months::period>(age).count();
}

PriceState price_state(const PriceList& prices, const PriceList& kinds, std::chrono::year_month_day today)
{
    PriceState state;
    state.age_months = age_months(prices, today);
    state.old = state.age_months.value_or(0.0) > old_prices_months;
    std::set<std::string> unserved;
    for (const Item& item : kinds.items) {
        unserved.insert(item.serves);
    }
    for (const Item& item : prices.items) {
        unserved.erase(item.serves);
        if (!in_stock(item)) {
            state.out_of_stock.push_back(item.id);
        }
    }
    state.unserved.assign(unserved.begin(), unserved.end());
    return state;
}

} // namespace loam::catalog
