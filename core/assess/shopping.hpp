// From the bill of needs to the shopping list, with whole packs.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/assess/assessment.hpp"
#include "core/assess/context.hpp"
#include "core/buying/purchase.hpp"

namespace loam::assess {

// The price list as core/buying sees it; without prices where its currency is not the plan's, for then nothing can be
// compared. With `only`, what that channel sells.
std::vector<buying::ItemOffer> offers_of(const catalog::PriceList& prices, const Currency& currency,
                                         const std::optional<std::string>& only = {});

// Where the plan is to be bought; nullopt: wherever it is cheapest, or the list does not know the place it names.
std::optional<std::string> only_channel(const plan::Plan& plan, const catalog::PriceList& prices);

Currency currency_of(const plan::Plan& plan);
bool prices_match(const plan::Plan& plan, const catalog::Catalog& catalog);

std::vector<buying::Owned> owned_of(const plan::Plan& plan);
buying::Level level_of(const plan::Plan& plan);
buying::Aim aim_of(const plan::Plan& plan);

// The terms of the places that sell; without prices as above.
std::vector<buying::Terms> terms_of(const catalog::PriceList& prices, const Currency& currency);
std::vector<DeliveryCost> delivery_costs(const buying::Purchase& purchase);

std::vector<ShoppingLine> shopping_lines(const buying::Order& order, const catalog::PriceList& prices);

} // namespace loam::assess
