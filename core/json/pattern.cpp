#include "core/json/pattern.hpp"

#include <algorithm>
#include <cassert>

#include "core/json/archive.hpp"

namespace loam::json {

namespace {

bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}
bool is_lower(char c)
{
    return c >= 'a' && c <= 'z';
}
bool is_upper(char c)
{
    return c >= 'A' && c <= 'Z';
}

// Runs of `letters`, joined by single characters of `joints`.
bool is_joined(std::string_view text, bool (*is_letter)(char), std::string_view joints)
{
    bool after_letter = false;
    for (const char c : text) {
        if (is_letter(c)) {
            after_letter = true;
        } else if (after_letter && joints.find(c) != std::string_view::npos) {
            after_letter = false;
        } else {
            return false;
        }
    }
    return after_letter;
}

bool is_kebab_letter(char c)
{
    return is_lower(c) || is_digit(c);
}
bool is_dotted_letter(char c)
{
    return is_kebab_letter(c) || c == '_';
}
bool is_alphanumeric(char c)
{
    return is_lower(c) || is_upper(c) || is_digit(c);
}

bool is_element_id(std::string_view text)
{
    return !text.empty() && is_alphanumeric(text.front()) &&
           std::all_of(text.begin(), text.end(), [](char c) { return is_alphanumeric(c) || c == '_' || c == '-'; });
}

// 0 stands for a digit, any other character for itself.
bool has_shape(std::string_view text, std::string_view shape)
{
    return std::equal(text.begin(), text.end(), shape.begin(), shape.end(),
                      [](char c, char wanted) { return wanted == '0' ? is_digit(c) : c == wanted; });
}

int two_digits(std::string_view text, std::size_t offset)
{
    return (text[offset] - '0') * 10 + (text[offset + 1] - '0');
}

bool is_clock_time(std::string_view text)
{
    return has_shape(text, "00:00") && two_digits(text, 0) <= 23 && two_digits(text, 3) <= 59;
}

bool is_iso_date(std::string_view text)
{
    if (!has_shape(text, "0000-00-00")) {
        return false;
    }
    const int month = two_digits(text, 5);
    const int day = two_digits(text, 8);
    return month >= 1 && month <= 12 && day >= 1 && day <= 31;
}

bool is_currency_code(std::string_view text)
{
    return text.size() == 3 && std::all_of(text.begin(), text.end(), is_upper);
}

} // namespace

bool matches(std::string_view pattern, std::string_view text)
{
    if (pattern == kebab_id) {
        return is_joined(text, is_kebab_letter, "-");
    }
    if (pattern == dotted_id) {
        return is_joined(text, is_dotted_letter, ".-");
    }
    if (pattern == element_id) {
        return is_element_id(text);
    }
    if (pattern == clock_time) {
        return is_clock_time(text);
    }
    if (pattern == iso_date) {
        return is_iso_date(text);
    }
    if (pattern == currency_code) {
        return is_currency_code(text);
    }
    assert(!"a pattern that archive.hpp does not name");
    return false;
}

} // namespace loam::json
