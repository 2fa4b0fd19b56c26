// One order over one or several plans, with its total, for programs and for people.
#pragma once

#include <QString>
#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"
#include "core/catalog/prices.hpp"
#include "core/plan/plan.hpp"

namespace loam::report {

struct Order {
    const std::vector<plan::Plan>& plans;
    const catalog::PriceList& prices;
    std::chrono::year_month_day date;
    const std::vector<assess::ShoppingLine>& lines;
    const std::vector<assess::DeliveryCost>& deliveries;
};

std::string order_json(const Order& order);
QString text_order(const Order& order, const words::Speaker& speaker);

} // namespace loam::report
