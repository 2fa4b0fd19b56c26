#include "app/report/overview_rows.hpp"

#include <algorithm>
#include <array>
#include <optional>

#include "app/report/said.hpp"
#include "app/words/verdicts.hpp"

namespace loam::report {

namespace {

using words::Quantity;

// Absent where a month's cost is not known.
std::optional<Money> year_cost(const assess::PowerResult& power)
{
    std::optional<Money> sum;
    for (const std::optional<Money>& month : power.month_cost) {
        if (!month) {
            return std::nullopt;
        }
        sum = sum ? *sum + *month : *month;
    }
    return sum;
}

// Findings stand in the order of their seriousness.
const Finding* worst_of(const assess::Assessment& assessment, const std::string& enclosure)
{
    const auto found =
        std::find_if(assessment.findings.begin(), assessment.findings.end(), [&enclosure](const Finding& finding) {
            return finding.enclosure == enclosure && finding.verdict != Verdict::fits;
        });
    return found == assessment.findings.end() ? nullptr : &*found;
}

QString cost_words(const std::optional<Money>& cost, const words::Formatter& format)
{
    return cost ? format.money(*cost) : Said::tr("not known");
}

OverviewRow row_of(const assess::Assessment& assessment, const assess::EnclosureResult& result,
                   const words::Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    OverviewRow row;
    row.enclosure = result.id;
    row.name = QString::fromStdString(result.name.empty() ? result.id : result.name);
    row.verdict = result.overall.verdict;
    row.verdict_words = words::verdict(result.overall.verdict);
    if (const Finding* worst = worst_of(assessment, result.id)) {
        row.worst = *worst;
    }
    row.floor = format.value(result.space.usable_floor_m2, Quantity::area);
    row.needed =
        result.space.required_floor_m2 ? format.value(*result.space.required_floor_m2, Quantity::area) : QString();
    row.connected = format.value(result.power.connected_w.likely, Quantity::power);
    row.energy = format.value(result.power.year_kwh.likely, Quantity::energy);
    row.energy_range = format.range(result.power.year_kwh, Quantity::energy);
    row.electricity_cost = cost_words(year_cost(result.power), format);
    return row;
}

OverviewRow together(const assess::Assessment& assessment, const words::Formatter& format)
{
    double connected_w = 0.0;
    double likely_kwh = 0.0;
    std::optional<Money> cost;
    bool cost_known = true;
    Verdict worst = Verdict::fits;
    const auto weight = [](Verdict verdict) { // as findings are sorted: not known stands above tight
        static constexpr std::array order{Verdict::fits, Verdict::tight, Verdict::not_known, Verdict::falls_short,
                                          Verdict::danger};
        return std::find(order.begin(), order.end(), verdict) - order.begin();
    };
    for (const assess::EnclosureResult& result : assessment.enclosures) {
        connected_w += result.power.connected_w.likely;
        likely_kwh += result.power.year_kwh.likely;
        const auto own = year_cost(result.power);
        cost_known = cost_known && own;
        if (own) {
            cost = cost ? *cost + *own : *own;
        }
        worst = weight(result.overall.verdict) > weight(worst) ? result.overall.verdict : worst;
    }
    OverviewRow row;
    row.name = Said::tr("All together");
    row.verdict = worst;
    row.verdict_words = words::verdict(worst);
    row.connected = format.value(connected_w, Quantity::power);
    row.energy = format.value(likely_kwh, Quantity::energy);
    row.electricity_cost = cost_words(cost_known ? cost : std::nullopt, format);
    return row;
}

} // namespace

std::vector<OverviewRow> overview_rows(const assess::Assessment& assessment, const words::Speaker& speaker)
{
    std::vector<OverviewRow> rows;
    for (const assess::EnclosureResult& result : assessment.enclosures) {
        rows.push_back(row_of(assessment, result, speaker));
    }
    if (rows.size() > 1) {
        rows.push_back(together(assessment, speaker.formatter()));
    }
    return rows;
}

} // namespace loam::report
