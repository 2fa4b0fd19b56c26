#include "app/batch/papers.hpp"

#include <algorithm>

#include "app/batch/said.hpp"
#include "app/report/csv.hpp"
#include "app/report/order.hpp"
#include "app/report/shopping.hpp"
#include "app/words/language.hpp"
#include "core/assess/assess.hpp"

namespace loam::batch {

namespace {

std::string guarded(const QString& text)
{
    return report::csv_cell(text.toStdString());
}

std::string figure(const QString& text)
{
    return report::csv_figure(text.toStdString());
}

// The club's copy: the sums are its own, not the adopters'.
std::vector<plan::Plan> bought_by_club(const Job& job, const std::vector<Adopter>& adopters)
{
    const std::string& currency = job.catalogs.at(job.language).prices.currency;
    std::vector<plan::Plan> plans;
    for (const Adopter& adopter : adopters) {
        if (!adopter.problems.empty()) {
            continue;
        }
        plans.push_back(adopter.plan);
        if (plans.back().currency != currency) {
            plans.back().currency = currency;
            for (plan::OwnLine& line : plans.back().own_lines) {
                line.price.reset(); // it was of the other currency
            }
        }
    }
    return plans;
}

} // namespace

QByteArray failed_csv(const std::vector<RowProblem>& failed)
{
    std::string csv = report::csv_row({"row", "column", "reason"});
    for (const RowProblem& one : failed) {
        csv += report::csv_row({std::to_string(one.row), guarded(one.column), guarded(one.reason)});
    }
    return QByteArray::fromStdString(csv);
}

QByteArray summary_csv(const std::map<std::size_t, Record>& records)
{
    std::string csv = report::csv_row({"row", "file", "verdict", "currency", "startup_low", "startup_typical",
                                       "startup_high", "running_per_year", "without_price", "not_stated"});
    for (const auto& [row, record] : records) {
        csv += report::csv_row({std::to_string(row), guarded(record.file), guarded(record.verdict),
                                guarded(record.currency), figure(record.startup_low), figure(record.startup_typical),
                                figure(record.startup_high), figure(record.running_per_year),
                                std::to_string(record.unpriced), std::to_string(record.not_stated)});
    }
    return QByteArray::fromStdString(csv);
}

ClubOrder club_order(const Job& job, const std::vector<Adopter>& adopters)
{
    const catalog::Catalog& catalog = job.catalogs.at(job.language);
    const std::vector<plan::Plan> plans = bought_by_club(job, adopters);
    const assess::MergedOrder merged = assess::merged_order(plans, catalog, job.date);
    const words::Formatter formatter = words::formatter_in(job.language, job.units);
    const words::Speaker speaker(formatter, job.plan, catalog);
    std::vector<plan::Plan> heading(1); // the template's name stands over it, not a thousand people's
    heading.front().title = Said::tr("%1, for adopters: %2")
                                .arg(QString::fromStdString(job.plan.title), formatter.count(std::ssize(plans)))
                                .toStdString();
    const report::Order order{heading, catalog.prices, job.date, merged.lines, merged.deliveries};
    return {QByteArray::fromStdString(report::shopping_csv(merged.lines, speaker)),
            report::text_order(order, speaker).toUtf8()};
}

} // namespace loam::batch
