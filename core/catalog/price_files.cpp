// Price lists as JSON. As CSV: price_csv_read.cpp and price_csv_write.cpp.
#include <variant>

#include "core/catalog/check_prices.hpp"
#include "core/catalog/describe.hpp"
#include "core/catalog/read_prices.hpp"
#include "core/json/front.hpp"
#include "core/json/parse.hpp"

namespace loam::catalog {

PriceListRead read_price_node(const json::Node& node)
{
    PriceListRead result;
    json::read_into(node, result.prices, result.problems);
    if (result.problems.empty()) {
        check_prices(result.prices, result.problems);
    }
    if (!result.problems.empty()) {
        result.prices = {};
    }
    return result;
}

PriceListRead read_prices(std::string_view json_text)
{
    auto parsed = json::parse(json_text);
    if (auto* const problems = std::get_if<json::Problems>(&parsed)) {
        return {{}, std::move(*problems)};
    }
    return read_price_node(std::get<json::Node>(parsed));
}

std::string write(const PriceList& prices)
{
    return json::write(json::to_node(prices));
}

} // namespace loam::catalog
