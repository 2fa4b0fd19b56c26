// Decimal numbers as they are written: reading, writing, nearest double.
#include <cassert>
#include <charconv>

#include "core/money.hpp"

namespace loam {

namespace {

constexpr int most_decimals = 12;
constexpr int most_digits = 18; // any 18 digits fit an int64

constexpr bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

} // namespace

std::optional<Decimal> Decimal::parse(std::string_view text)
{
    const bool negative = !text.empty() && text.front() == '-';
    text.remove_prefix(negative ? 1 : 0);
    if (text.empty() || !is_digit(text.front()) || !is_digit(text.back())) {
        return std::nullopt;
    }
    Decimal result;
    int digits = 0;
    bool fraction = false;
    for (const char c : text) {
        if (c == '.' && !fraction) {
            fraction = true;
            continue;
        }
        if (!is_digit(c) || ++digits > most_digits) {
            return std::nullopt;
        }
        result.coefficient = result.coefficient * 10 + (c - '0');
        result.scale += fraction ? 1 : 0;
    }
    if (result.scale > most_decimals) {
        return std::nullopt;
    }
    result.coefficient = negative ? -result.coefficient : result.coefficient;
    return result;
}

std::string Decimal::text() const
{
    assert(scale >= 0);
    // The magnitude of the smallest int64 has no int64 of its own.
    const auto bits = static_cast<std::uint64_t>(coefficient);
    std::string digits = std::to_string(coefficient < 0 ? 0 - bits : bits);
    const auto decimals = static_cast<std::size_t>(scale);
    if (digits.size() <= decimals) {
        digits.insert(0, decimals + 1 - digits.size(), '0');
    }
    if (decimals > 0) {
        digits.insert(digits.size() - decimals, 1, '.');
    }
    return coefficient < 0 ? "-" + digits : digits;
}

double Decimal::value() const
{
    const std::string written = text();
    double result = 0.0;
    std::from_chars(written.data(), written.data() + written.size(), result); // correctly rounded, no locale
    return result;
}

} // namespace loam
