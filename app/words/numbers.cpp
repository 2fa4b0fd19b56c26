#include "app/words/numbers.hpp"

#include "app/words/inches.hpp"
#include "core/units.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace loam::words {

namespace {

// The translator finds these texts under "numbers".
struct Said {
    Q_DECLARE_TR_FUNCTIONS(numbers)
};

const auto en_dash = QStringLiteral("–");

// A small amount reads better in the smaller unit: 4 mL, not 0.0 L.
Quantity fitting_quantity(Quantity quantity, double largest)
{
    const double size = std::abs(largest);
    if (size == 0.0) {
        return quantity;
    }
    switch (quantity) {
    case Quantity::length:
        return size < 0.02 ? Quantity::thickness : quantity;
    case Quantity::area:
        return size < 0.01 ? Quantity::small_area : quantity;
    case Quantity::volume:
        return size < 0.1 ? Quantity::dose : quantity;
    case Quantity::mass:
        return size < 1.0 ? Quantity::small_mass : quantity;
    default:
        return quantity;
    }
}

// What `fitting_quantity` chose counts in another stored unit (ml for l); all others share theirs.
double restored(double stored, Quantity from, Quantity to)
{
    return from == Quantity::volume && to == Quantity::dose ? stored * 1000.0 : stored;
}

bool whole_at(double shown, int decimals)
{
    const double scale = std::pow(10.0, decimals);
    return std::fmod(std::round(shown * scale), scale) == 0.0;
}

bool in_inch_fractions(Quantity quantity, UnitSystem system)
{
    return quantity == Quantity::thickness && system == UnitSystem::us;
}

// "1 year", not "1 years"; the symbols of the other units never change.
std::optional<QString> in_the_singular(const QString& number, const DisplayUnit& unit)
{
    if (number != QStringLiteral("1")) {
        return std::nullopt;
    }
    if (unit.symbol == QStringLiteral("days")) {
        return Said::tr("1 day");
    }
    if (unit.symbol == QStringLiteral("weeks")) {
        return Said::tr("1 week");
    }
    if (unit.symbol == QStringLiteral("months")) {
        return Said::tr("1 month");
    }
    return unit.symbol == QStringLiteral("years") ? std::optional(Said::tr("1 year")) : std::nullopt;
}

QString with_unit(const QString& number, const DisplayUnit& unit, const QLocale& locale)
{
    if (unit.symbol.isEmpty()) {
        return number;
    }
    if (const auto singular = in_the_singular(number, unit)) {
        return *singular;
    }
    if (unit.symbol == QStringLiteral("%")) {
        const bool tight = locale.language() == QLocale::English || locale.language() == QLocale::C;
        return number + (tight ? QString() : QStringLiteral(" ")) + locale.percent();
    }
    return number + (unit.spaced ? QStringLiteral(" ") : QString()) + spoken(unit.symbol);
}

// Two ends with one mark between them; a minus sign beside a dash is hard to read.
QString joined(const QString& low, const QString& high, bool negative)
{
    return negative ? Said::tr("%1 to %2").arg(low, high) : low + en_dash + high;
}

QString not_known()
{
    return Said::tr("not known");
}

} // namespace

QString spoken(const QString& symbol)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("numbers", "days"), QT_TRANSLATE_NOOP("numbers", "weeks"),
                                      QT_TRANSLATE_NOOP("numbers", "months"), QT_TRANSLATE_NOOP("numbers", "years")};
    for (const char* word : words) {
        if (symbol == QLatin1String(word)) {
            return Said::tr(word);
        }
    }
    return symbol;
}

Formatter::Formatter(UnitSystem system, const QLocale& locale) : system_(system), locale_(locale) {}

QLocale Formatter::default_locale()
{
    return QLocale(QLocale::English, QLocale::UnitedStates);
}

QString Formatter::number(double value, int decimals) const
{
    if (!std::isfinite(value)) {
        return not_known();
    }
    const double scale = std::pow(10.0, decimals);
    const double rounded = std::round(value * scale) / scale;
    return locale_.toString(rounded == 0.0 ? 0.0 : rounded, 'f', decimals); // never "-0.0"
}

QString Formatter::count(std::int64_t value) const
{
    return locale_.toString(static_cast<qlonglong>(value));
}

template <typename Say> std::optional<QString> Formatter::in_two_units(Quantity quantity, const Say& say) const
{
    if (system_ != UnitSystem::both || !has_two_units(quantity)) {
        return std::nullopt;
    }
    return QStringLiteral("%1 [%2]").arg(say(Formatter(UnitSystem::metric, locale_)),
                                         say(Formatter(UnitSystem::us, locale_)));
}

QString Formatter::value(double stored, Quantity quantity) const
{
    if (!std::isfinite(stored)) {
        return not_known();
    }
    if (const auto twice = in_two_units(quantity, [&](const Formatter& one) { return one.value(stored, quantity); })) {
        return *twice;
    }
    const Quantity fitting = fitting_quantity(quantity, stored);
    const DisplayUnit unit = display_unit(fitting, system_);
    const double shown = restored(stored, quantity, fitting) * unit.factor + unit.offset;
    if (in_inch_fractions(fitting, system_)) {
        return with_unit(inches_text(shown, *this), unit, locale_);
    }
    return with_unit(number(shown, whole_at(shown, unit.decimals) ? 0 : unit.decimals), unit, locale_);
}

QString Formatter::bare(double stored, Quantity quantity) const
{
    const DisplayUnit unit = display_unit(quantity, system_);
    return number(stored * unit.factor + unit.offset, unit.decimals);
}

QString Formatter::about(double stored, Quantity quantity) const
{
    if (const auto twice = in_two_units(quantity, [&](const Formatter& one) { return one.about(stored, quantity); })) {
        return *twice;
    }
    const DisplayUnit unit = display_unit(quantity, system_);
    const double shown = stored * unit.factor + unit.offset;
    if (!std::isfinite(shown) || shown == 0.0) {
        return value(stored, quantity);
    }
    const int digits = static_cast<int>(std::floor(std::log10(std::abs(shown))));
    const double step = std::pow(10.0, digits - 1);
    return with_unit(number(std::round(shown / step) * step, std::max(0, 1 - digits)), unit, locale_);
}

QString Formatter::unit(Quantity quantity) const
{
    const DisplayUnit unit = display_unit(quantity, system_);
    return unit.symbol == QStringLiteral("%") ? locale_.percent() : spoken(unit.symbol);
}

QString Formatter::span(const Range& range, Quantity quantity) const
{
    if (!std::isfinite(range.low) || !std::isfinite(range.high)) {
        return not_known();
    }
    if (const auto twice = in_two_units(quantity, [&](const Formatter& one) { return one.span(range, quantity); })) {
        return *twice;
    }
    const Quantity fitting = fitting_quantity(quantity, std::max(std::abs(range.low), std::abs(range.high)));
    const DisplayUnit unit = display_unit(fitting, system_);
    const double low = restored(range.low, quantity, fitting) * unit.factor + unit.offset;
    const double high = restored(range.high, quantity, fitting) * unit.factor + unit.offset;
    if (in_inch_fractions(fitting, system_)) {
        const bool fractions = inch_fraction(low) && inch_fraction(high);
        const auto text = [&](double inches) {
            return fractions ? inches_text(inches, *this) : decimal_inches(inches, *this);
        };
        const QString ends = low == high ? inches_text(low, *this) : joined(text(low), text(high), low < 0.0);
        return with_unit(ends, unit, locale_);
    }
    const int decimals = whole_at(low, unit.decimals) && whole_at(high, unit.decimals) ? 0 : unit.decimals;
    const QString low_text = number(low, decimals);
    const QString high_text = number(high, decimals);
    return with_unit(low_text == high_text ? low_text : joined(low_text, high_text, low < 0.0), unit, locale_);
}

QString Formatter::range(const Range& range, Quantity quantity) const
{
    if (const auto twice = in_two_units(quantity, [&](const Formatter& one) { return one.range(range, quantity); })) {
        return *twice;
    }
    QString ends = span(range, quantity);
    const Quantity fitting = fitting_quantity(quantity, std::max(std::abs(range.low), std::abs(range.high)));
    const DisplayUnit unit = display_unit(fitting, system_);
    const double low = restored(range.low, quantity, fitting) * unit.factor + unit.offset;
    const double high = restored(range.high, quantity, fitting) * unit.factor + unit.offset;
    const double likely = restored(range.likely, quantity, fitting) * unit.factor + unit.offset;
    if (!std::isfinite(likely) || !std::isfinite(low) || !std::isfinite(high) ||
        number(low, unit.decimals) == number(high, unit.decimals)) {
        return ends;
    }
    const int decimals = whole_at(likely, unit.decimals) ? 0 : unit.decimals;
    const QString middle = in_inch_fractions(fitting, system_) ? inches_text(likely, *this) : number(likely, decimals);
    return Said::tr("%1 (likely %2)").arg(ends, middle);
}

QString Formatter::range(const std::optional<Range>& range, Quantity quantity) const
{
    return range ? this->range(*range, quantity) : not_known();
}

QString Formatter::target(const Target& target, Quantity quantity) const
{
    if (target.min && target.max) {
        return span({*target.min, *target.min, *target.max}, quantity);
    }
    if (target.min) {
        return Said::tr("at least %1").arg(value(*target.min, quantity));
    }
    return target.max ? Said::tr("at most %1").arg(value(*target.max, quantity)) : Said::tr("no target");
}

QString Formatter::figure(double stored, std::string_view unit) const
{
    if (const auto quantity = quantity_of(unit)) {
        return value(stored, *quantity);
    }
    if (unit.size() > 2 && unit.substr(unit.size() - 2) == "/d") {
        return Said::tr("%1 a day").arg(figure(stored, unit.substr(0, unit.size() - 2)));
    }
    const QString name = QString::fromUtf8(unit);
    if (const auto currency = Currency::find(unit)) {
        const auto amount = Money::rounded(stored, *currency);
        return amount ? money(*amount) : not_known();
    }
    return number(stored, whole_at(stored, 2) ? 0 : 2) + QStringLiteral(" ") + name;
}

QString Formatter::money_bare(const Money& amount) const
{
    if (amount.overflowed()) {
        return not_known();
    }
    // Digits from whole minor units: no amount goes through a double.
    const int digits = amount.currency().minor_digits;
    const std::int64_t minor = amount.minor_units();
    const quint64 size = minor < 0 ? 0 - static_cast<quint64>(minor) : static_cast<quint64>(minor);
    quint64 scale = 1;
    for (int i = 0; i < digits; ++i) {
        scale *= 10;
    }
    QString text = minor < 0 ? locale_.negativeSign() : QString();
    text += locale_.toString(static_cast<qulonglong>(size / scale));
    if (digits > 0) {
        text += locale_.decimalPoint();
        text += QString::number(size % scale).rightJustified(digits, QLatin1Char('0'));
    }
    return text;
}

QString Formatter::money(const Money& amount) const
{
    return money_bare(amount) + QStringLiteral(" ") + QString::fromStdString(amount.currency().code);
}

QString Formatter::money_span(const MoneyRange& range) const
{
    const QString low = money_bare(range.low);
    const QString high = money_bare(range.high);
    if (low == high) {
        return money(range.low);
    }
    return joined(low, high, range.low.minor_units() < 0) + QStringLiteral(" ") +
           QString::fromStdString(range.low.currency().code);
}

QString Formatter::money_round_span(const MoneyRange& range) const
{
    const auto whole = [](const Money& amount) { // an amount below one is shown as it is
        const double major = amount.decimal().value();
        return major >= 1.0 || major == 0.0 ? Money(std::llround(major), Currency{amount.currency().code, 0}) : amount;
    };
    return money_span({whole(range.low), whole(range.typical), whole(range.high)});
}

QString Formatter::money(const MoneyRange& range) const
{
    const QString ends = money_span(range);
    return range.low == range.high ? ends : Said::tr("%1, typically %2").arg(ends, money_bare(range.typical));
}

QString Formatter::date(const QDate& date) const
{
    return date.isValid() ? locale_.toString(date, Said::tr("d MMM yyyy", "as QLocale writes dates")) : not_known();
}

QString Formatter::iso_date(const std::string& date) const
{
    return this->date(QDate::fromString(QString::fromStdString(date), Qt::ISODate));
}

QString Formatter::date(std::chrono::year_month_day date) const
{
    return this->date(QDate(static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
                            static_cast<int>(static_cast<unsigned>(date.day()))));
}

} // namespace loam::words
