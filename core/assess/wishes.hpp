// What the keeper changes of the bill of needs, and the lines of their own.
#pragma once

#include <string_view>
#include <vector>

#include "core/assess/context.hpp"
#include "core/buying/need.hpp"
#include "core/buying/order.hpp"
#include "core/cost/running.hpp"

namespace loam::assess {

// The needs without those left out, and with the item that is wished for in the others. Where several wishes meet one
// need, the last counts.
std::vector<buying::Need> as_wished(std::vector<buying::Need> needs, const std::vector<plan::Wish>& wishes);

// Whether nothing of this kind is to be bought, wherever it comes from: then none is used up either.
bool left_out(const std::vector<plan::Wish>& wishes, std::string_view kind);

// What is left out, above all where safety hangs on it, and wishes that meet nothing. `drawn_up`: before any wish.
Notes judge_wishes(const Context& context, const std::vector<buying::Need>& drawn_up);

// What begins the kind of need of a line of the keeper's own; its id follows.
inline constexpr const char* own_need_prefix = "own.";

// The keeper's own lines behind those of the order; its total follows. One without a price is listed as unpriced.
void add_own_lines(buying::Order& order, const plan::Plan& plan, const Currency& currency);

// Those of them that are bought again.
std::vector<cost::Renewal> own_renewals(const plan::Plan& plan, const Currency& currency);

} // namespace loam::assess
