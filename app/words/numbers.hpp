// Figures as the reader expects them: in their units, by their locale. The desk, the sheets and the command line
// share it. Stored values stay SI; only what is shown is converted, and an untouched field reads back unchanged.
#pragma once

#include <QDate>
#include <QLocale>
#include <QString>
#include <chrono>
#include <optional>
#include <string>
#include <string_view>

#include "app/words/quantity.hpp"
#include "app/words/units.hpp"
#include "core/explain.hpp"
#include "core/money.hpp"

namespace loam::words {

class Formatter {
public:
    explicit Formatter(UnitSystem system = UnitSystem::metric, const QLocale& locale = default_locale());
    // English with a point and without grouping marks that depend on the machine.
    static QLocale default_locale();

    UnitSystem system() const { return system_; }
    const QLocale& locale() const { return locale_; }

    // "27.1 °C", "90 cm", "40%"; in both units "90 cm [35.4 in]". Not finite: "not known".
    QString value(double stored, Quantity quantity) const;
    // The same without the unit, for a column or field whose head names it.
    QString bare(double stored, Quantity quantity) const;
    // The same with two significant digits, for what is only roughly known: "5,600 h".
    QString about(double stored, Quantity quantity) const;
    QString unit(Quantity quantity) const; // "°C"; empty for a pure number

    // "27.1–31.4 °C (likely 29.3)"; one number where both ends read alike.
    QString range(const Range& range, Quantity quantity) const;
    QString range(const std::optional<Range>& range, Quantity quantity) const; // absent: "not known"
    QString span(const Range& range, Quantity quantity) const;                 // "27.1–31.4 °C"
    // "24–29 °C", "at least 24 °C", "at most 29 °C"; no bound: "no target".
    QString target(const Target& target, Quantity quantity) const;

    // A figure of core with its short unit ("m", "degC", "1"); currencies are shown as money.
    QString figure(double stored, std::string_view unit) const;

    QString money(const Money& amount) const;      // "12.30 USD"
    QString money_bare(const Money& amount) const; // "12.30"
    QString money(const MoneyRange& range) const;  // "10.00–14.00 USD, typically 12.30"
    QString money_span(const MoneyRange& range) const;
    // Without the minor units, for what is known in round figures only: "21,000–220,000 USD".
    QString money_round_span(const MoneyRange& range) const;
    QString number(double value, int decimals) const;
    QString count(std::int64_t value) const;
    QString date(std::chrono::year_month_day date) const;
    QString date(const QDate& date) const;
    QString iso_date(const std::string& date) const; // "2026-11-01" as the others are shown

    // What the user typed, as a stored value: "35.4", "35,4 in", "90 cm", "3 ft 6 in", "85 °F". A unit that is
    // written counts, whatever the system; without one, the shown unit does. nullopt where it is not a number.
    std::optional<double> parse(const QString& text, Quantity quantity) const;
    // The same for a field that shows `stored`: text that still reads as it was shown gives `stored` back, exactly.
    std::optional<double> parse(const QString& text, Quantity quantity, double stored) const;
    // A price as typed, exact: "4.50", "4,50", "1,250.00" as the locale groups. nullopt where it is no such number or
    // below zero.
    std::optional<Decimal> parse_price(const QString& text) const;
    QString price(const Decimal& price) const; // as written, with the locale's decimal mark: reads back the same
    // Why something with a unit can't be taken, where there is more to say than that it is no such figure; else empty.
    QString why_not(const QString& text, Quantity quantity) const;

private:
    // "90 cm [35.4 in]", as drawings give a second unit; nullopt where one unit serves.
    template <typename Say> std::optional<QString> in_two_units(Quantity quantity, const Say& say) const;

    UnitSystem system_;
    QLocale locale_;
};

} // namespace loam::words
