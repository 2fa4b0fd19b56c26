// Every code that a json::Problem can carry, with what its `args` hold. app/words keeps a sentence for each.
// Codes of the plan's meaning, beyond form, stand in core/plan/problem_codes.hpp.
#pragma once

#include <array>
#include <string_view>

namespace loam::json::problem {

// The text itself. `where` is empty; `line` and `column` count from 1, the column in code points.
inline constexpr std::string_view too_large = "too-large";             // {limit in bytes, size in bytes}
inline constexpr std::string_view empty = "empty";                     // {}
inline constexpr std::string_view invalid_utf8 = "invalid-utf8";       // {line, column}
inline constexpr std::string_view syntax = "syntax";                   // {line, column}
inline constexpr std::string_view truncated = "truncated";             // {line, column}
inline constexpr std::string_view not_finite = "not-finite";           // {line, column}: NaN, Infinity or 1e400
inline constexpr std::string_view too_deep = "too-deep";               // {greatest depth}
inline constexpr std::string_view too_many_values = "too-many-values"; // {greatest count}
inline constexpr std::string_view duplicate_key = "duplicate-key";     // {key}; `where` is the second one's pointer

// The form. `where` is a JSON Pointer.
inline constexpr std::string_view unknown_key = "unknown-key";     // {key} or {key, nearest known key}
inline constexpr std::string_view missing = "missing";             // {key}; `where` is the key's pointer
inline constexpr std::string_view wrong_type = "wrong-type";       // {expected, found}: names of JSON types
inline constexpr std::string_view not_whole = "not-whole";         // {value}: a fraction where a count is due
inline constexpr std::string_view below_minimum = "below-minimum"; // {value, min, max}
inline constexpr std::string_view not_above = "not-above";         // {value, min, max}: min itself is not allowed
inline constexpr std::string_view above_maximum = "above-maximum"; // {value, min, max}
inline constexpr std::string_view not_plain_decimal = "not-plain-decimal"; // {literal}: exponent or over 12 decimals
inline constexpr std::string_view too_short = "too-short";                 // {length, least length} in characters
inline constexpr std::string_view too_long = "too-long";                   // {length, greatest length} in characters
inline constexpr std::string_view pattern = "pattern";                     // {value, pattern}
inline constexpr std::string_view control_character = "control-character"; // {}
inline constexpr std::string_view unknown_choice = "unknown-choice";   // {value, names joined by ", "[, nearest name]}
inline constexpr std::string_view repeated_choice = "repeated-choice"; // {name}
inline constexpr std::string_view wrong_constant = "wrong-constant";   // {expected, found}
inline constexpr std::string_view too_few_items = "too-few-items";     // {count, least count}
inline constexpr std::string_view too_many_items = "too-many-items";   // {count, greatest count}
inline constexpr std::string_view more_problems = "more-problems";     // {count not listed}; `where` is empty

inline constexpr std::array all{
    too_large,       empty,           invalid_utf8,      syntax,        truncated,      not_finite,   too_deep,
    too_many_values, duplicate_key,   unknown_key,       missing,       wrong_type,     not_whole,    below_minimum,
    not_above,       above_maximum,   not_plain_decimal, too_short,     too_long,       pattern,      control_character,
    unknown_choice,  repeated_choice, wrong_constant,    too_few_items, too_many_items, more_problems};

} // namespace loam::json::problem
