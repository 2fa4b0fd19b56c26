#include "app/report/order.hpp"

#include <QDate>

#include "app/report/json_parts.hpp"
#include "app/report/json_values.hpp"
#include "app/report/lines.hpp"
#include "app/report/said.hpp"
#include "app/report/shopping.hpp"
#include "app/report/text_parts.hpp"
#include "app/report/text_report.hpp"

namespace loam::report {

namespace {

// The sum of the lines as printed, with what is paid for bringing them; absent where no line has a price.
std::optional<MoneyRange> total_of(const Order& order)
{
    std::optional<MoneyRange> total;
    for (const assess::ShoppingLine& line : order.lines) {
        if (line.line_total) {
            total = total ? *total : MoneyRange::zero(line.line_total->typical.currency());
            *total += *line.line_total;
        }
    }
    for (const assess::DeliveryCost& one : order.deliveries) {
        if (total) {
            *total += one.delivery;
            *total += one.tax;
        }
    }
    return total;
}

std::vector<std::string> unpriced(const std::vector<assess::ShoppingLine>& lines)
{
    std::vector<std::string> needs;
    for (const assess::ShoppingLine& line : lines) {
        if (!line.line_total) {
            needs.push_back(line.need);
        }
    }
    return needs;
}

} // namespace

std::string order_json(const Order& order)
{
    json::Node titles = json::Node::array();
    for (const plan::Plan& plan : order.plans) {
        titles.add(text(plan.title));
    }
    json::Node node = json::Node::object();
    node.add("format", text("loamstead-order")).add("version", integer(1)).add("plans", std::move(titles));
    node.add("date", date(order.date)).add("currency", text(order.prices.currency));
    node.add("price_date", text_or_null(order.prices.date));
    node.add("price_illustrative", json::Node::of(order.prices.illustrative));
    node.add("deliveries", deliveries_node(order.deliveries));
    node.add("shopping", shopping_node(order.lines)).add("total", money(total_of(order)));
    node.add("unpriced", texts(unpriced(order.lines)));
    return json::write(node);
}

QString text_order(const Order& order, const words::Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    QString out;
    for (const plan::Plan& plan : order.plans) {
        out += wrapped({}, QString::fromStdString(plan.title));
    }
    out += text_shopping(order.lines, speaker);
    out += text_deliveries(order.deliveries, format);
    if (const auto total = total_of(order)) {
        out += QLatin1Char('\n') + row(2, {{Said::tr("Total"), 10}, {format.money(*total)}});
    }
    const std::vector<std::string> missing = unpriced(order.lines);
    if (!missing.empty()) {
        out += wrapped(QStringLiteral("  "), Said::tr("Things without a price, not in the total: %1.")
                                                 .arg(format.count(static_cast<std::int64_t>(missing.size()))));
    }
    if (order.prices.illustrative) {
        out +=
            wrapped(QStringLiteral("  "),
                    Said::tr("The prices are invented examples of %1. Put your own in their place.")
                        .arg(format.date(QDate::fromString(QString::fromStdString(order.prices.date), Qt::ISODate))));
    }
    return out;
}

} // namespace loam::report
