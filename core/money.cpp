#include "core/money.hpp"

#include <array>
#include <cassert>
#include <charconv>
#include <cmath>
#include <limits>

namespace loam {

namespace {

__extension__ using Wide = __int128; // 38 digits: a product of 18 and 19 digits always fits

constexpr std::int64_t largest = std::numeric_limits<std::int64_t>::max();
constexpr std::int64_t smallest = std::numeric_limits<std::int64_t>::min();

// coefficient * 10^exponent, the shortest decimal that names one double.
struct ShortDecimal {
    std::int64_t coefficient = 0;
    int exponent = 0;
};

// The shortest decimal is what a person reads and writes for a double: 1.005 is a half cent although its binary
// value lies a hair below. Rounding works on it, so that the figure shown and the figure rounded agree.
ShortDecimal shortest(double value)
{
    std::array<char, 40> text{};
    const auto written = std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::scientific);
    assert(written.ec == std::errc{});
    ShortDecimal result;
    const char* at = text.data();
    const bool negative = *at == '-';
    at += negative ? 1 : 0;
    for (bool fraction = false; at != written.ptr && *at != 'e'; ++at) {
        if (*at == '.') {
            fraction = true;
            continue;
        }
        result.coefficient = result.coefficient * 10 + (*at - '0'); // at most 17 digits
        result.exponent -= fraction ? 1 : 0;
    }
    int power = 0;
    ++at; // the 'e'
    at += *at == '+' ? 1 : 0;
    std::from_chars(at, written.ptr, power);
    result.exponent += power;
    result.coefficient = negative ? -result.coefficient : result.coefficient;
    return result;
}

// value * 10^exponent as a whole number, half away from zero; nullopt where it does not fit.
std::optional<std::int64_t> whole(Wide value, int exponent)
{
    if (value == 0) {
        return 0;
    }
    for (; exponent > 0; --exponent) {
        value *= 10; // value came in below 10^36, and leaves here at 10^19
        if (value > largest || value < smallest) {
            return std::nullopt;
        }
    }
    if (exponent < 0) {
        if (exponent < -37) {
            return 0; // |value| < 10^36, less than half a unit
        }
        Wide divisor = 1;
        for (; exponent < 0; ++exponent) {
            divisor *= 10;
        }
        const Wide rest = value % divisor < 0 ? -(value % divisor) : value % divisor;
        const Wide away = rest >= divisor - rest ? 1 : 0;
        value = value / divisor + (value < 0 ? -away : away);
    }
    if (value > largest || value < smallest) {
        return std::nullopt;
    }
    return static_cast<std::int64_t>(value);
}

} // namespace

Money::Money(std::int64_t minor_units, Currency currency) : minor_units_(minor_units), currency_(std::move(currency)) {}

std::optional<Money> Money::from(const Decimal& amount, const Currency& currency)
{
    Decimal shortened = amount;
    while (shortened.scale > currency.minor_digits && shortened.coefficient % 10 == 0) {
        shortened.coefficient /= 10;
        --shortened.scale;
    }
    if (shortened.scale > currency.minor_digits) {
        return std::nullopt;
    }
    const auto units = whole(shortened.coefficient, currency.minor_digits - shortened.scale);
    return units ? std::optional<Money>(Money(*units, currency)) : std::nullopt;
}

std::optional<Money> Money::rounded(double amount, const Currency& currency)
{
    if (!std::isfinite(amount)) {
        return std::nullopt;
    }
    const ShortDecimal decimal = shortest(amount);
    const auto units = whole(decimal.coefficient, decimal.exponent + currency.minor_digits);
    return units ? std::optional<Money>(Money(*units, currency)) : std::nullopt;
}

std::optional<Money> Money::of(double quantity, const Decimal& price, const Currency& currency)
{
    assert(price.scale >= 0);
    if (!std::isfinite(quantity)) {
        return std::nullopt;
    }
    const ShortDecimal count = shortest(quantity);
    const auto units = whole(static_cast<Wide>(count.coefficient) * price.coefficient,
                             count.exponent - price.scale + currency.minor_digits);
    return units ? std::optional<Money>(Money(*units, currency)) : std::nullopt;
}

Decimal Money::decimal() const
{
    return {minor_units_, currency_.minor_digits};
}

Money& Money::operator+=(const Money& other)
{
    assert(currency_ == other.currency_);
    overflowed_ = overflowed_ || other.overflowed_ || currency_ != other.currency_;
    if (__builtin_add_overflow(minor_units_, other.minor_units_, &minor_units_)) {
        overflowed_ = true;
        minor_units_ = other.minor_units_ > 0 ? largest : smallest;
    }
    return *this;
}

Money& Money::operator-=(const Money& other)
{
    assert(currency_ == other.currency_);
    overflowed_ = overflowed_ || other.overflowed_ || currency_ != other.currency_;
    if (__builtin_sub_overflow(minor_units_, other.minor_units_, &minor_units_)) {
        overflowed_ = true;
        minor_units_ = other.minor_units_ < 0 ? largest : smallest;
    }
    return *this;
}

Money Money::times(std::int64_t count) const
{
    Money result = *this;
    if (__builtin_mul_overflow(minor_units_, count, &result.minor_units_)) {
        result.overflowed_ = true;
        result.minor_units_ = (minor_units_ < 0) == (count < 0) ? largest : smallest;
    }
    return result;
}

Money Money::scaled(double factor) const
{
    Money result = *this;
    std::optional<std::int64_t> units;
    if (std::isfinite(factor)) {
        const ShortDecimal decimal = shortest(factor);
        units = whole(static_cast<Wide>(minor_units_) * decimal.coefficient, decimal.exponent);
    }
    result.overflowed_ = overflowed_ || !units;
    result.minor_units_ = units.value_or((minor_units_ < 0) == (factor < 0.0) ? largest : smallest);
    return result;
}

MoneyRange MoneyRange::zero(const Currency& currency)
{
    const Money nothing(0, currency);
    return {nothing, nothing, nothing};
}

MoneyRange& MoneyRange::operator+=(const MoneyRange& other)
{
    low += other.low;
    typical += other.typical;
    high += other.high;
    return *this;
}

MoneyRange MoneyRange::times(std::int64_t count) const
{
    return {low.times(count), typical.times(count), high.times(count)};
}

} // namespace loam
