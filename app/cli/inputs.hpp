// What the commands read: plans, guidance, prices, the date. Each says on standard error what is wrong.
#pragma once

#include <chrono>
#include <optional>
#include <variant>
#include <vector>

#include "app/cli/command.hpp"
#include "app/sheets/paper.hpp"
#include "app/sheets/printed_by.hpp"
#include "app/words/numbers.hpp"
#include "core/assess/assessment.hpp"
#include "core/catalog/catalog.hpp"
#include "core/plan/plan.hpp"

namespace loam::cli {

struct Inputs {
    std::vector<plan::Plan> plans;
    catalog::Catalog catalog;
    std::chrono::year_month_day date;
    words::Formatter formatter;
};

std::variant<Inputs, Exit> read_inputs(const Arguments& arguments);

// Of a command whose files are price lists: each by itself, nothing put together.
struct PriceInputs {
    std::vector<catalog::PriceList> lists;
    std::chrono::year_month_day date;
};

std::variant<PriceInputs, Exit> read_price_inputs(const Arguments& arguments);

// The value of --only. nullopt: it is not given.
std::optional<std::vector<sheets::Sheet>> chosen_sheets(const Arguments& arguments);
sheets::PrintedBy printed_by(const Arguments& arguments); // --club and --contact

assess::Assessment assessed(const Inputs& inputs, std::size_t plan = 0);

} // namespace loam::cli
