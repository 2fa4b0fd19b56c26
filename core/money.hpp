// Exact money: whole minor units of a named currency. No floating point is ever added up.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace loam {

// A decimal number as it was written, coefficient * 10^-scale; keeps trailing zeros ("0.180" stays "0.180").
struct Decimal {
    std::int64_t coefficient = 0;
    int scale = 0; // 0..12
    friend bool operator==(const Decimal&, const Decimal&) = default;

    // Accepts -?digits(.digits)? with at most 12 decimals and 18 digits; no exponent. nullopt for anything else.
    static std::optional<Decimal> parse(std::string_view text);
    std::string text() const;
    double value() const;
};

// An ISO 4217 alphabetic code with its number of minor digits (0, 2, 3 or 4).
struct Currency {
    std::string code = "USD";
    int minor_digits = 2;
    friend bool operator==(const Currency&, const Currency&) = default;

    // nullopt unless `code` is in our copy of the ISO 4217 list.
    static std::optional<Currency> find(std::string_view code);
};

class Money {
public:
    Money() = default;
    Money(std::int64_t minor_units, Currency currency);

    // nullopt where `amount` has more decimals than the currency (zeros at the end do not count), or does not fit.
    static std::optional<Money> from(const Decimal& amount, const Currency& currency);
    // Rounds the shortest decimal that names `amount` once, half away from zero. nullopt where not finite or too
    // large.
    static std::optional<Money> rounded(double amount, const Currency& currency);
    // `price` is for one; the product of both decimals is exact and rounded once, half away from zero.
    static std::optional<Money> of(double quantity, const Decimal& price, const Currency& currency);

    std::int64_t minor_units() const { return minor_units_; }
    const Currency& currency() const { return currency_; }
    Decimal decimal() const;
    std::string text() const { return decimal().text(); } // "12.30": the currency's own number of digits

    // Sums and products assert that the currencies agree; `overflowed()` stays true once a result did not fit.
    Money& operator+=(const Money& other);
    Money& operator-=(const Money& other);
    friend Money operator+(Money left, const Money& right) { return left += right; }
    friend Money operator-(Money left, const Money& right) { return left -= right; }
    Money times(std::int64_t count) const;
    // Rounds half away from zero, once: for a share or a quantity that is not whole.
    Money scaled(double factor) const;
    bool overflowed() const { return overflowed_; }

    friend bool operator==(const Money&, const Money&) = default;

private:
    std::int64_t minor_units_ = 0;
    Currency currency_;
    bool overflowed_ = false;
};

// The three prices that a range of offers gives. low <= typical <= high.
struct MoneyRange {
    Money low;
    Money typical;
    Money high;
    friend bool operator==(const MoneyRange&, const MoneyRange&) = default;

    static MoneyRange zero(const Currency& currency);
    MoneyRange& operator+=(const MoneyRange& other);
    MoneyRange times(std::int64_t count) const;
};

} // namespace loam
