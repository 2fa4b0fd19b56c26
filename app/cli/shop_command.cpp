#include "app/cli/inputs.hpp"
#include "app/cli/say.hpp"
#include "app/report/order.hpp"
#include "app/report/shopping.hpp"
#include "app/report/text_report.hpp"
#include "core/assess/assess.hpp"

namespace loam::cli {

namespace {

// Two plans may both have an enclosure "e1". In an order over several, each is named with its plan.
std::vector<plan::Plan> told_apart(std::vector<plan::Plan> plans)
{
    if (plans.size() < 2) {
        return plans;
    }
    QStringList titles;
    for (plan::Plan& plan : plans) {
        const QString title = text(plan.title);
        const auto earlier = titles.count(title);
        titles << title;
        const QString prefix = earlier == 0 ? title : QStringLiteral("%1 (%2)").arg(title).arg(earlier + 1);
        for (plan::Enclosure& enclosure : plan.enclosures) {
            const QString name = enclosure.name.empty() ? text(enclosure.id) : text(enclosure.name);
            enclosure.id = (prefix + QStringLiteral(": ") + name).toStdString();
        }
    }
    return plans;
}

std::optional<buying::Aim> aim_of(const Arguments& arguments)
{
    const auto given = arguments.value("--aim");
    if (!given) {
        return std::nullopt;
    }
    return *given == QStringLiteral("fewest-packs")      ? buying::Aim::fewest_packs
           : *given == QStringLiteral("least-left-over") ? buying::Aim::least_left_over
                                                         : buying::Aim::cheapest;
}

} // namespace

Exit run_shop(const Arguments& arguments)
{
    if (arguments.has("--csv") && arguments.has("--json")) {
        tell(say("--csv and --json can't both be given."));
        return Exit::wrong_usage;
    }
    const auto read = read_inputs(arguments);
    if (const Exit* refused = std::get_if<Exit>(&read)) {
        return *refused;
    }
    const Inputs& inputs = std::get<Inputs>(read);
    const std::vector<plan::Plan> plans = told_apart(inputs.plans);
    const assess::MergedOrder merged = assess::merged_order(plans, inputs.catalog, inputs.date, aim_of(arguments));
    const plan::Plan nameless;
    const words::Speaker speaker(inputs.formatter, plans.size() == 1 ? plans.front() : nameless, inputs.catalog);
    if (arguments.has("--csv")) {
        return put_out(QByteArray::fromStdString(report::shopping_csv(merged.lines, speaker)));
    }
    const report::Order order{plans, inputs.catalog.prices, inputs.date, merged.lines, merged.deliveries};
    return put_out(arguments.has("--json") ? QByteArray::fromStdString(report::order_json(order))
                                           : report::text_order(order, speaker).toUtf8());
}

} // namespace loam::cli
