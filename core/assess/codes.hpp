// Every code that an Assessment may carry, and what each brings along. app/words keeps one sentence per code, and its
// test walks these lists; a code that is not listed does not compile (see Code below).
//
// `inputs` and `labels` name what stands in `because` (of a finding) or in `amounts` and `labels` (of a remedy),
// separated by blanks; a name that ends in '?' may be missing. Units stand in each Input: "m", "m2", "degC", "K",
// "W", "kg", "l", "h", "1" (a pure number or a share), "mm" is never used.
// Common names: low likely high = the figure's range; min max = the target's ends; short_by, over_by = how far the
// likely value (or, for `tight` and `danger`, the offending end) misses the target.
#pragma once

#include <span>
#include <string_view>

#include "core/assess/finding_codes.hpp"
#include "core/assess/reason_codes.hpp"
#include "core/assess/remedy_codes.hpp"

namespace loam::assess {

constexpr bool is_listed(std::span<const CodeEntry> list, std::string_view code)
{
    for (const CodeEntry& entry : list) {
        if (entry.code == code) {
            return true;
        }
    }
    return false;
}

// nullptr where it is not listed.
constexpr const CodeEntry* find_code(std::span<const CodeEntry> list, std::string_view code)
{
    for (const CodeEntry& entry : list) {
        if (entry.code == code) {
            return &entry;
        }
    }
    return nullptr;
}

// A literal that is checked against its list when it is compiled, so that no unlisted code can be reported.
struct FindingCode {
    std::string_view text;
    consteval FindingCode(const char* literal) : text(literal)
    {
        if (!is_listed(finding_codes, text)) {
            throw "this finding code is not in finding_codes";
        }
    }
};
struct RemedyCode {
    std::string_view text;
    consteval RemedyCode(const char* literal) : text(literal)
    {
        if (!is_listed(remedy_codes, text)) {
            throw "this remedy code is not in remedy_codes";
        }
    }
};
struct RuleCode {
    std::string_view text;
    consteval RuleCode(const char* literal) : text(literal)
    {
        if (!is_listed(rule_codes, text)) {
            throw "this rule code is not in rule_codes";
        }
    }
};
struct NeedCode {
    std::string_view text;
    consteval NeedCode(const char* literal) : text(literal)
    {
        if (!is_listed(need_codes, text)) {
            throw "this need code is not in need_codes";
        }
    }
};

} // namespace loam::assess
