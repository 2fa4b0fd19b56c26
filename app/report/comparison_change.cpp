#include "app/report/comparison_change.hpp"

#include "app/report/said.hpp"

#include <cmath>

namespace loam::report {

namespace {

using words::Quantity;

QString signed_text(bool more, const QString& amount, const QString& word)
{
    return (more ? QStringLiteral("+") : QStringLiteral("−")) + amount + QLatin1Char(' ') + word;
}

QString amount_of(double difference, Quantity quantity, const words::Formatter& format)
{
    if (quantity == Quantity::fraction) { // "5%" would be read as a share of the figure
        return Said::tr("%1 points").arg(format.bare(difference, quantity));
    }
    return format.value(difference, quantity == Quantity::temperature ? Quantity::temperature_difference : quantity);
}

} // namespace

QString change_of(const Range& from, const Range& to, Quantity quantity, const ChangeWords& words,
                  const words::Formatter& format)
{
    const double difference = to.likely - from.likely;
    const QString amount = amount_of(std::abs(difference), quantity, format);
    if (amount != amount_of(0.0, quantity, format)) {
        return signed_text(difference > 0.0, amount, difference > 0.0 ? words.more : words.less);
    }
    if (format.span(from, quantity) == format.span(to, quantity)) {
        return {};
    }
    const double wider = (to.high - to.low) - (from.high - from.low);
    return wider > 0.0 ? Said::tr("wider range") : Said::tr("narrower range");
}

QString change_of(const Money& from, const Money& to, const words::Formatter& format)
{
    if (from == to || !(from.currency() == to.currency())) {
        return {};
    }
    const bool dearer = to.minor_units() > from.minor_units();
    const Money amount = dearer ? to - from : from - to;
    if (amount.overflowed()) {
        return {};
    }
    return signed_text(dearer, format.money(amount), dearer ? Said::tr("dearer") : Said::tr("cheaper"));
}

QString change_of(std::int64_t from, std::int64_t to, const words::Formatter& format)
{
    if (from == to) {
        return {};
    }
    return signed_text(to > from, format.count(std::abs(to - from)), to > from ? Said::tr("more") : Said::tr("fewer"));
}

QString change_of(const Judgement& from, const Judgement& to)
{
    if (from == to) {
        return {};
    }
    if (from.verdict == to.verdict || from.verdict == Verdict::not_known || to.verdict == Verdict::not_known) {
        return Said::tr("other verdict");
    }
    return to.verdict < from.verdict ? Said::tr("better") : Said::tr("worse"); // they are counted from best to worst
}

} // namespace loam::report
