#include "core/json/number_text.hpp"

#include <array>
#include <charconv>
#include <cmath>

namespace loam::json {

std::string number_text(double value)
{
    if (!std::isfinite(value)) {
        return "";
    }
    if (value == 0.0) {
        return "0";
    }
    const double magnitude = std::abs(value);
    const bool plain = magnitude >= 1e-6 && magnitude < 1e15;
    std::array<char, 64> buffer{};
    char* const first = buffer.data();
    char* const last = first + buffer.size();
    const auto end = plain ? std::to_chars(first, last, value, std::chars_format::fixed).ptr
                           : std::to_chars(first, last, value, std::chars_format::scientific).ptr;
    return std::string(first, end);
}

std::optional<double> double_of(std::string_view literal)
{
    double value = 0.0;
    const char* const last = literal.data() + literal.size();
    const auto [end, error] = std::from_chars(literal.data(), last, value);
    if (end != last || literal.empty()) {
        return std::nullopt;
    }
    if (error == std::errc::result_out_of_range) {
        // Too large or too small for a double; from_chars does not say which.
        const std::size_t exponent = literal.find_first_of("eE");
        const bool vanishes =
            exponent == std::string_view::npos ? literal.find("0.") <= 1 : literal.substr(exponent + 1, 1) == "-";
        return vanishes ? std::optional<double>(0.0) : std::nullopt;
    }
    if (error != std::errc{} || !std::isfinite(value)) {
        return std::nullopt;
    }
    return value;
}

std::optional<std::int64_t> integer_of(std::string_view literal)
{
    constexpr double largest_exact = 9007199254740992.0; // 2^53
    const auto value = double_of(literal);
    if (!value || std::abs(*value) > largest_exact || std::trunc(*value) != *value) {
        return std::nullopt;
    }
    return static_cast<std::int64_t>(*value);
}

} // namespace loam::json
