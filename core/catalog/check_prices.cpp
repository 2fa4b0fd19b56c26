#include "core/catalog/check_prices.hpp"

#include <charconv>
#include <chrono>
#include <set>

#include "core/catalog/problem_codes.hpp"
#include "core/json/pointer.hpp"

namespace loam::catalog {

static void check_price(const Decimal& price, const Currency& currency, const std::string& where,
                        json::Problems& problems)
{
    if (!Money::from(price, currency)) {
        problems.push_back({where,
                            std::string(problem::too_many_decimals),
                            {price.text(), currency.code, std::to_string(currency.minor_digits)}});
    }
}

static void check_packs(const Item& item, const std::optional<Currency>& currency, const std::string& where,
                        json::Problems& problems)
{
    std::set<std::string_view> ids;
    for (std::size_t i = 0; i < item.packs.size(); ++i) {
        const Pack& pack = item.packs[i];
        const std::string pack_where = json::pointer_to(json::pointer_to(where, "packs"), i);
        if (!ids.insert(pack.id).second) {
            problems.push_back({json::pointer_to(pack_where, "id"), std::string(problem::duplicate_id), {pack.id}});
        }
        if (currency) {
            check_price(pack.low, *currency, json::pointer_to(pack_where, "low"), problems);
            check_price(pack.typical, *currency, json::pointer_to(pack_where, "typical"), problems);
            check_price(pack.high, *currency, json::pointer_to(pack_where, "high"), problems);
        }
    }
}

void check_prices(const PriceList& prices, json::Problems& problems)
{
    const auto currency = Currency::find(prices.currency);
    if (currency && prices.delivery) {
        check_price(prices.delivery->low, *currency, "/delivery/low", problems);
        check_price(prices.delivery->typical, *currency, "/delivery/typical", problems);
        check_price(prices.delivery->high, *currency, "/delivery/high", problems);
        check_price(prices.delivery->free_from.value_or(Decimal{}), *currency, "/delivery/free_from", problems);
    }
    if (currency && prices.minimum_order) {
        check_price(*prices.minimum_order, *currency, "/minimum_order", problems);
    }
    std::set<std::string_view> ids;
    for (std::size_t i = 0; i < prices.items.size(); ++i) {
        const Item& item = prices.items[i];
        const std::string where = json::pointer_to("/items", i);
        if (!ids.insert(item.id).second) {
            problems.push_back({json::pointer_to(where, "id"), std::string(problem::duplicate_id), {item.id}});
        }
        check_packs(item, currency, where, problems);
    }
}

static unsigned number_at(std::string_view text, std::size_t from, std::size_t count)
{
    unsigned value = 0;
    const std::string_view digits = text.substr(from, count);
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return error == std::errc{} && end == digits.data() + digits.size() ? value : 0;
}

bool is_calendar_date(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') {
        return false;
    }
    using namespace std::chrono;
    const year_month_day date{year(static_cast<int>(number_at(text, 0, 4))), month(number_at(text, 5, 2)),
                              day(number_at(text, 8, 2))};
    return date.ok();
}

} // namespace loam::catalog
