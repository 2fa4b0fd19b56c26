// What the user typed into a field, as a stored value.
#include "app/words/numbers.hpp"
#include "core/light/erythema.hpp"
#include "core/units.hpp"

#include <QCoreApplication>
#include <QRegularExpression>

#include <cmath>
#include <initializer_list>

namespace loam::words {

namespace {

// A unit that may be written after a number, and how it becomes the stored unit: stored = (typed - offset) * factor.
struct Written {
    Quantity quantity;
    std::initializer_list<const char*> names; // lower case
    double factor = 1.0;
    double offset = 0.0;
};

constexpr double fluid_ounce_ml = units::us_fluid_ounce_l * 1000.0;

const double index_per_mw_m2 = light::uv_index_of_effective(0.001);

const std::initializer_list<Written> written_units{
    {Quantity::length, {"m"}, 1.0},
    {Quantity::length, {"cm"}, 0.01},
    {Quantity::length, {"mm"}, 0.001},
    {Quantity::length, {"in", "inch", "inches", "\"", "″"}, units::inch_m},
    {Quantity::length, {"ft", "foot", "feet", "'", "′"}, units::foot_m},
    {Quantity::area, {"m²", "m2", "sqm"}, 1.0},
    {Quantity::area, {"cm²", "cm2"}, 1e-4},
    {Quantity::area, {"sqft", "ft²", "ft2"}, units::square_foot_m2},
    {Quantity::area, {"sqin", "in²", "in2"}, units::inch_m* units::inch_m},
    {Quantity::volume, {"l", "liter", "liters", "litre", "litres"}, 1.0},
    {Quantity::volume, {"ml"}, 0.001},
    {Quantity::volume, {"qt", "quart", "quarts"}, units::us_liquid_quart_l},
    {Quantity::volume, {"gal", "gallon", "gallons"}, units::us_gallon_l},
    {Quantity::volume, {"floz", "oz"}, units::us_fluid_ounce_l},
    {Quantity::dose, {"ml"}, 1.0},
    {Quantity::dose, {"l"}, 1000.0},
    {Quantity::dose, {"floz", "oz"}, fluid_ounce_ml},
    {Quantity::mass, {"kg"}, 1.0},
    {Quantity::mass, {"g"}, 0.001},
    {Quantity::mass, {"lb", "lbs", "pound", "pounds"}, units::pound_kg},
    {Quantity::mass, {"oz", "ounce", "ounces"}, units::ounce_kg},
    {Quantity::temperature, {"°c", "c", "degc"}, 1.0},
    {Quantity::temperature, {"°f", "f", "degf"}, 1.0 / 1.8, 32.0},
    {Quantity::temperature_difference, {"k", "°c", "c"}, 1.0},
    {Quantity::temperature_difference, {"°f", "f"}, 1.0 / 1.8},
    {Quantity::power, {"w", "watt", "watts"}, 1.0},
    {Quantity::power, {"kw"}, 1000.0},
    {Quantity::energy, {"kwh"}, 1.0},
    {Quantity::fraction, {"%"}, 0.01},
    {Quantity::current, {"a"}, 1.0},
    {Quantity::voltage, {"v"}, 1.0},
    {Quantity::hours, {"h", "hours"}, 1.0},
    {Quantity::months, {"months", "month"}, 1.0},
    {Quantity::years, {"years", "year", "a"}, 1.0},
    {Quantity::angle, {"°", "deg"}, 1.0},
    {Quantity::uv_index, {"uvi"}, 1.0},
    {Quantity::uv_index, {"mw/m²", "mw/m2"}, index_per_mw_m2}, // weighted by what reddens skin, as its meters show it
};

// Fields of the small units take what their large ones take.
Quantity dimension(Quantity quantity)
{
    switch (quantity) {
    case Quantity::thickness:
        return Quantity::length;
    case Quantity::small_area:
        return Quantity::area;
    case Quantity::small_mass:
        return Quantity::mass;
    default:
        return quantity;
    }
}

const Written* find_written(const QString& name, Quantity quantity)
{
    for (const Written& written : written_units) {
        if (written.quantity != dimension(quantity)) {
            continue;
        }
        for (const char* known : written.names) {
            if (name == QString::fromUtf8(known)) {
                return &written;
            }
        }
    }
    return nullptr;
}

// A number by the locale's marks; else one with a single mark that cannot be a grouping of thousands, so that both
// "35.4" and "35,4" are understood wherever they have only one meaning. With a point and without groups, to be read
// anywhere; nullopt where it is no number.
std::optional<QString> plain_digits(const QString& text, const QLocale& locale)
{
    bool good = false;
    locale.toDouble(text, &good);
    if (good) {
        return QString(text).remove(locale.groupSeparator()).replace(locale.decimalPoint(), QStringLiteral("."));
    }
    static const QRegularExpression single_mark(QStringLiteral("^[-+]?\\d*[.,]\\d+$"));
    return single_mark.match(text).hasMatch() ? std::optional(QString(text).replace(QLatin1Char(','), QLatin1Char('.')))
                                              : std::nullopt;
}

std::optional<double> plain_number(const QString& text, const QLocale& locale)
{
    bool good = false;
    double value = locale.toDouble(text, &good);
    if (!good) {
        const auto digits = plain_digits(text, locale);
        value = digits ? QLocale::c().toDouble(*digits, &good) : 0.0;
    }
    return good && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

// "35 1/2" and "3/16", as inches are written.
std::optional<double> number_with_fraction(const QString& text, const QLocale& locale)
{
    static const QRegularExpression form(QStringLiteral("^(?:(\\d+)\\s+)?(\\d{1,4})/(\\d{1,4})$"));
    const QRegularExpressionMatch match = form.match(text);
    if (!match.hasMatch()) {
        return plain_number(text, locale);
    }
    const double divisor = match.captured(3).toDouble();
    if (divisor == 0.0) {
        return std::nullopt;
    }
    return match.captured(1).toDouble() + match.captured(2).toDouble() / divisor;
}

QString tidied(const QString& text)
{
    QString tidy = text.trimmed().toLower();
    tidy.replace(QChar(0x2212), QLatin1Char('-')); // the typographic minus
    tidy.replace(QChar(0x00a0), QLatin1Char(' '));
    tidy.replace(QChar(0x202f), QLatin1Char(' '));
    return tidy;
}

struct Typed {
    QString number;
    QString unit;
};

Typed split(const QString& tidy)
{
    static const QRegularExpression form(QStringLiteral("^(.*?\\d)\\s*([^\\d\\s.,/][^.,\\d]*)?$"));
    const QRegularExpressionMatch match = form.match(tidy);
    QString unit = match.captured(2);
    unit.remove(QLatin1Char(' '));
    return {match.captured(1), unit};
}

std::optional<double> one_amount(const QString& tidy, Quantity quantity, const QLocale& locale, UnitSystem system)
{
    // A unit's name may end in a digit ("m2"): such a name is looked for first.
    for (const char* squared : {"mw/m2", "m2", "cm2", "ft2", "in2"}) {
        if (tidy.endsWith(QLatin1String(squared))) {
            const QString number = tidy.chopped(static_cast<qsizetype>(qstrlen(squared))).trimmed();
            const Written* written = find_written(QLatin1String(squared), quantity);
            const auto value = number_with_fraction(number, locale);
            return written != nullptr && value ? std::optional(*value * written->factor) : std::nullopt;
        }
    }
    const Typed typed = split(tidy);
    const auto value = number_with_fraction(typed.number, locale);
    if (!value) {
        return std::nullopt;
    }
    if (typed.unit.isEmpty()) {
        const DisplayUnit unit = display_unit(quantity, system);
        return (*value - unit.offset) / unit.factor;
    }
    const DisplayUnit shown = display_unit(quantity, system);
    if (typed.unit == spoken(shown.symbol).toLower().remove(QLatin1Char(' '))) { // a word of the reader's language
        return (*value - shown.offset) / shown.factor;
    }
    const Written* written = find_written(typed.unit, quantity);
    return written != nullptr ? std::optional((*value - written->offset) * written->factor) : std::nullopt;
}

// "3 ft 6 in", "3' 6\"".
std::optional<double> feet_and_inches(const QString& tidy, const QLocale& locale)
{
    static const QRegularExpression form(
        QStringLiteral("^(\\d+)\\s*(?:ft|feet|foot|'|′)\\s*(\\d[\\d.,/ ]*?)\\s*(?:in|inch|inches|\"|″)?$"));
    const QRegularExpressionMatch match = form.match(tidy);
    if (!match.hasMatch()) {
        return std::nullopt;
    }
    const auto inches = number_with_fraction(match.captured(2), locale);
    return inches ? std::optional(match.captured(1).toDouble() * units::foot_m + *inches * units::inch_m)
                  : std::nullopt;
}

} // namespace

std::optional<double> Formatter::parse(const QString& text, Quantity quantity) const
{
    const QString tidy = tidied(text);
    if (dimension(quantity) == Quantity::length) {
        if (const auto length = feet_and_inches(tidy, locale_)) {
            return length;
        }
    }
    return one_amount(tidy, quantity, locale_, system_);
}

std::optional<Decimal> Formatter::parse_price(const QString& text) const
{
    const auto digits = plain_digits(tidied(text).remove(QLatin1Char(' ')), locale_);
    const auto price = digits ? Decimal::parse(digits->toStdString()) : std::nullopt;
    return price && price->coefficient >= 0 ? price : std::nullopt;
}

QString Formatter::price(const Decimal& price) const
{
    return QString::fromStdString(price.text()).replace(QLatin1Char('.'), locale_.decimalPoint());
}

QString Formatter::why_not(const QString& text, Quantity quantity) const
{
    static const QRegularExpression unweighted(QStringLiteral("^(.*\\d)\\s*[µμu]w\\s*/\\s*cm[²2]$"));
    const QRegularExpressionMatch match = unweighted.match(tidied(text));
    const auto read = match.hasMatch() ? plain_number(match.captured(1), locale_) : std::nullopt;
    if (quantity != Quantity::uv_index || !read) {
        return {};
    }
    constexpr double w_m2_per_uw_cm2 = 0.01;
    const light::UviBounds bounds = light::uv_index_of_unweighted(*read * w_m2_per_uw_cm2);
    return QCoreApplication::translate("words",
                                       "µW/cm² of UV-B can't be turned into a UV index: %1 may be anything from "
                                       "%2 to %3, as the lamp's colours lie. Read it with a UV index meter.")
        .arg(number(*read, 0), value(bounds.least, quantity), value(bounds.most, quantity));
}

std::optional<double> Formatter::parse(const QString& text, Quantity quantity, double stored) const
{
    const QString shown = text.trimmed();
    if (shown == bare(stored, quantity) || shown == value(stored, quantity)) {
        return stored;
    }
    return parse(text, quantity);
}

} // namespace loam::words
