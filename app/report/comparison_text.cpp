#include "app/report/comparison.hpp"
#include "app/report/comparison_rows.hpp"
#include "app/report/lines.hpp"
#include "app/report/said.hpp"

namespace loam::report {

namespace {

QString group_text(const ComparisonGroup& group)
{
    QString text = heading(group.title);
    for (const ComparisonRow& each : group.rows) {
        const QString name = QString(2 * each.level, QLatin1Char(' ')) + each.name;
        text += each.heading ? row(2, {{name}})
                             : row(2, {{name, 22}, {cell_text(each.sides[0]), 27}, {cell_text(each.sides[1]), 27}});
    }
    return text;
}

QString purchases_text(const ComparisonGroup& purchases)
{
    QString text = heading(purchases.title);
    if (purchases.rows.empty()) {
        return text + wrapped(QStringLiteral("  "), Said::tr("Nothing: both orders are the same."));
    }
    for (const ComparisonRow& each : purchases.rows) {
        text += row(2, {{each.sides[0].text, 4, true}, {each.sides[1].text, 4, true}, {each.name, 66}});
    }
    return text;
}

} // namespace

QString text_comparison(const TwoPlans& plans, const words::Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    QString text = wrapped(Said::tr("First:  "), QString::fromStdString(plans.sides[0]->plan_title));
    text += wrapped(Said::tr("Second: "), QString::fromStdString(plans.sides[1]->plan_title));
    text += wrapped({}, Said::tr("Assessed as of %1.").arg(format.date(plans.sides[0]->date)));
    for (const ComparisonGroup& group : enclosure_groups(plans, format)) {
        text += group_text(group);
    }
    text += group_text(costs_group(plans, format));
    text += wrapped(QStringLiteral("  "), payback_sentence(plans.comparison.payback, Said::tr("the second"), format));
    if (plans.sides[0]->costs.price_illustrative) {
        text += wrapped(QStringLiteral("  "), Said::tr("The prices are invented examples."));
    }
    return text + purchases_text(purchases_group(plans, speaker));
}

} // namespace loam::report
