#include <QObject>
#include <algorithm>
#include <map>
#include <numeric>
#include <set>

#include "app/sheets/contents.hpp"
#include "app/words/capitals.hpp"
#include "app/words/cost_names.hpp"
#include "app/words/verdicts.hpp"
#include "core/assess/cost_lines.hpp"

namespace loam::sheets {

namespace {

std::vector<Column> money_columns(const QString& head)
{
    return {{head, 3.6, false},
            {QObject::tr("Low"), 1.1, true},
            {QObject::tr("Typical"), 1.1, true},
            {QObject::tr("High"), 1.1, true},
            {QObject::tr("My figure"), 1.4, true}};
}

Row money_row(const QString& name, const MoneyRange& amount, const words::Formatter& formatter, bool total = false)
{
    return {.cells = {words::capitalised(name),
                      formatter.money_bare(amount.low),
                      formatter.money_bare(amount.typical),
                      formatter.money_bare(amount.high),
                      {}},
            .total = total};
}

void add_startup(Content& content, const Request& request)
{
    const assess::Costs& costs = request.assessment.costs;
    std::map<catalog::Category, MoneyRange> sums;
    for (const assess::ShoppingLine& line : request.assessment.shopping) {
        if (line.line_total) {
            const auto place = sums.try_emplace(line.category, MoneyRange::zero(costs.currency)).first;
            place->second += *line.line_total;
        }
    }
    Table table{money_columns(QObject::tr("To begin")), {}};
    MoneyRange listed = MoneyRange::zero(costs.currency);
    for (const auto& [category, sum] : sums) {
        table.rows.push_back(money_row(words::category(category), sum, request.formatter));
        listed += sum;
    }
    const auto add_beside_goods = [&](const QString& name, const MoneyRange& amount) {
        if (amount.high.minor_units() > 0) {
            table.rows.push_back(money_row(name, amount, request.formatter));
            listed += amount;
        }
    };
    for (const assess::DeliveryCost& one : costs.deliveries) {
        const QString channel = QString::fromStdString(one.channel);
        add_beside_goods(QObject::tr("Delivery, %1").arg(channel), one.delivery);
        add_beside_goods(QObject::tr("Tax on top, %1").arg(channel), one.tax);
    }
    if (!(listed == costs.startup)) {
        const MoneyRange rest{costs.startup.low - listed.low, costs.startup.typical - listed.typical,
                              costs.startup.high - listed.high};
        table.rows.push_back(money_row(QObject::tr("Set aside for surprises"), rest, request.formatter));
    }
    table.rows.push_back(money_row(QObject::tr("To begin, all together"), costs.startup, request.formatter, true));
    content.blocks.push_back(Heading{QObject::tr("Startup cost")});
    content.blocks.push_back(std::move(table));
}

// Places of the lines beyond the largest `most`; none where only one would be.
std::set<std::size_t> small_ones(const std::vector<assess::CostLine>& lines, std::size_t most)
{
    std::vector<std::size_t> places(lines.size());
    std::iota(places.begin(), places.end(), std::size_t{0});
    if (lines.size() <= most + 1) {
        return {};
    }
    std::stable_sort(places.begin(), places.end(), [&](std::size_t one, std::size_t other) {
        return lines[one].per_year.typical.minor_units() > lines[other].per_year.typical.minor_units();
    });
    return {places.begin() + static_cast<std::ptrdiff_t>(most), places.end()};
}

// The smallest lines as one: the sheet has two pages.
std::vector<Row> running_rows(const std::vector<assess::CostLine>& lines, const Request& request)
{
    constexpr std::size_t most = 18;
    const std::set<std::size_t> small = small_ones(lines, most);
    std::vector<Row> rows;
    MoneyRange small_together = MoneyRange::zero(request.assessment.costs.currency);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (small.contains(i)) {
            small_together += lines[i].per_year;
        } else {
            rows.push_back(money_row(words::cost_name(lines[i].name), lines[i].per_year, request.formatter));
        }
    }
    if (!small.empty()) {
        rows.push_back(
            money_row(QObject::tr("%1 smaller lines together").arg(small.size()), small_together, request.formatter));
    }
    return rows;
}

void add_running(Content& content, const Request& request)
{
    const assess::Costs& costs = request.assessment.costs;
    Table table{money_columns(QObject::tr("In a year")), running_rows(assess::merged_by_name(costs.lines), request)};
    table.rows.push_back(
        money_row(QObject::tr("In a year, all together"), costs.running_per_year, request.formatter, true));
    content.blocks.push_back(Heading{QObject::tr("Running cost")});
    content.blocks.push_back(
        Paragraph{QObject::tr("What wears out counts with its price spread evenly over its life.")});
    content.blocks.push_back(std::move(table));
    if (!costs.electricity_per_year) {
        content.blocks.push_back(Blank{QObject::tr("Electricity is not in it: price of a kWh")});
    }
}

void add_replacements(Content& content, const Request& request)
{
    const assess::Costs& costs = request.assessment.costs;
    if (costs.replacements.empty()) {
        return;
    }
    Table table{{{QObject::tr("Due"), 1.3, false},
                 {QObject::tr("What"), 3.2, false},
                 {QObject::tr("Typical"), 1.2, true},
                 {QObject::tr("Done on"), 1.4, false}},
                {}};
    for (auto one = costs.replacements.begin(); one != costs.replacements.end();) {
        // The same thing on the same day, in several places.
        const auto next = std::find_if(one, costs.replacements.end(), [&](const assess::Replacement& other) {
            return other.due != one->due || other.name != one->name || other.uv_fades != one->uv_fades;
        });
        const auto count = std::distance(one, next);
        MoneyRange price = MoneyRange::zero(costs.currency);
        std::for_each(one, next, [&](const assess::Replacement& each) { price += each.price; });
        const QString single = QString::fromStdString(one->name);
        const QString name = count == 1 ? single : QObject::tr("%1 × %2").arg(request.formatter.count(count), single);
        table.rows.push_back({.cells = {request.formatter.date(one->due),
                                        one->uv_fades ? QObject::tr("%1 (its UV fades)").arg(name) : name,
                                        request.formatter.money_bare(price.typical),
                                        {}},
                              .tick = true});
        one = next;
    }
    content.blocks.push_back(Heading{QObject::tr("To replace in the first year")});
    content.blocks.push_back(std::move(table));
}

void add_horizon(Content& content, const Request& request)
{
    const assess::Costs& costs = request.assessment.costs;
    if (costs.horizon.empty()) {
        return;
    }
    Table table{{{QObject::tr("Year"), 1.0, false},
                 {QObject::tr("Spent in it"), 1.4, true},
                 {QObject::tr("So far, low"), 1.5, true},
                 {QObject::tr("So far, typical"), 1.5, true},
                 {QObject::tr("So far, high"), 1.5, true}},
                {}};
    for (const assess::HorizonYear& year : costs.horizon) {
        const QString name = year.year == 0 ? QObject::tr("start") : request.formatter.count(year.year);
        table.rows.push_back({.cells = {name, request.formatter.money_bare(year.spent.typical),
                                        request.formatter.money_bare(year.cumulative.low),
                                        request.formatter.money_bare(year.cumulative.typical),
                                        request.formatter.money_bare(year.cumulative.high)},
                              .tick = false});
    }
    content.blocks.push_back(Heading{QObject::tr("Over the years")});
    content.blocks.push_back(std::move(table));
    if (costs.net_present_cost) {
        content.blocks.push_back(Paragraph{QObject::tr("Net present cost at typical prices: %1.")
                                               .arg(request.formatter.money(*costs.net_present_cost))});
    }
    if (costs.equivalent_annual_cost) {
        content.blocks.push_back(Paragraph{QObject::tr("That is as much as an even %1 a year.")
                                               .arg(request.formatter.money(*costs.equivalent_annual_cost))});
    }
}

} // namespace

Content budget_content(const Request& request, const words::Speaker& speaker)
{
    const assess::Costs& costs = request.assessment.costs;
    const QString currency = QString::fromStdString(costs.currency.code);
    Content content = begun(Sheet::budget, request);
    content.pages = 2;
    add_dangers(content, request, speaker);
    if (costs.price_illustrative) {
        content.blocks.push_back(Caution{QObject::tr("The prices are invented for illustration. Write in your own.")});
    }
    content.blocks.push_back(Paragraph{
        QObject::tr("All amounts in %1, prices of %2.").arg(currency, request.formatter.iso_date(costs.price_date))});
    add_startup(content, request);
    add_running(content, request);
    add_replacements(content, request);
    add_horizon(content, request);
    if (!costs.unpriced.empty()) {
        content.blocks.push_back(Heading{QObject::tr("Without a price, to be added by hand")});
        for (const std::string& need : costs.unpriced) {
            content.blocks.push_back(Blank{speaker.need(need)});
        }
    }
    add_sign_off(content);
    add_unknowns(content, Sheet::budget, request, speaker);
    add_cautions(content, Sheet::budget);
    return content;
}

} // namespace loam::sheets
