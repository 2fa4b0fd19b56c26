// What deliveries and tax add to the start stands in the rows that window, clipboard and CSV share.
#include "app/report/cost_rows.hpp"
#include "tests/catch.hpp"

using namespace loam;

namespace {

MoneyRange usd(std::int64_t minor)
{
    const Money amount(minor, Currency{"USD", 2});
    return {amount, amount, amount};
}

} // namespace

TEST_CASE("a delivery and its tax are told, what costs nothing is not")
{
    assess::Costs costs;
    costs.startup = usd(10000);
    costs.running_per_year = usd(0);
    costs.deliveries = {{"shop", usd(5000), usd(0), usd(0), false}, {"web", usd(4000), usd(495), usd(854), false}};
    const plan::Plan plan;
    const catalog::Catalog catalog;
    const words::Speaker speaker(words::Formatter(words::UnitSystem::metric), plan, catalog);
    std::vector<std::optional<MoneyRange>> told;
    for (const report::CostRow& row : report::cost_rows(costs, speaker)) {
        if (row.part == report::CostPart::start && row.level == 1) {
            told.push_back(row.amount);
        }
    }
    CHECK(told == std::vector<std::optional<MoneyRange>>{usd(495), usd(854)});
}
