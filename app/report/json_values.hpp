// The small values of the assessment's JSON. Internal to app/report.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "core/explain.hpp"
#include "core/json/node.hpp"
#include "core/money.hpp"

namespace loam::report {

// Six significant digits: more than any figure here is worth, and fewer than machines may differ in. Not finite: null.
json::Node number(double value);
json::Node number(const std::optional<double>& value);
json::Node integer(std::int64_t value);
json::Node text(const std::string& value);
json::Node text_or_null(const std::string& value);
json::Node texts(const std::vector<std::string>& values);
json::Node range(const Range& range);
json::Node range(const std::optional<Range>& given);
json::Node likely(const std::optional<Range>& given);
json::Node bounds(const Target& target);

// A decimal literal with the currency's own number of digits; null where it did not fit.
json::Node money(const Money& amount);
json::Node money(const std::optional<Money>& amount);
json::Node money(const MoneyRange& range);
json::Node money(const std::optional<MoneyRange>& range);

json::Node date(std::chrono::year_month_day date); // YYYY-MM-DD
json::Node month(std::chrono::year_month month);   // YYYY-MM
std::string verdict_id(Verdict verdict);
std::string confidence_id(Confidence confidence);
json::Node direction(Direction direction);
// Adds "verdict" and "direction".
void add_judgement(json::Node& node, const Judgement& judgement);

} // namespace loam::report
