#include "core/formula_guard.hpp"

#include <algorithm>
#include <array>

namespace loam {

bool reads_as_formula(std::string_view cell)
{
    static constexpr std::array<std::string_view, 4> blanks{" ", "\n", "\xC2\xA0",
                                                            "\xE3\x80\x80"}; // no-break, full-width
    static constexpr std::array<std::string_view, 10> signs{
        "=", "+", "-", "@", "\t", "\r", "\xEF\xBC\x9D", "\xEF\xBC\x8B", "\xEF\xBC\x8D", "\xEF\xBC\xA0"};
    const auto begins_with = [&](std::string_view sign) { return cell.starts_with(sign); };
    for (auto blank = blanks.begin(); blank != blanks.end();) {
        blank = std::find_if(blanks.begin(), blanks.end(), begins_with);
        if (blank != blanks.end()) {
            cell.remove_prefix(blank->size());
        }
    }
    return std::any_of(signs.begin(), signs.end(), begins_with);
}

} // namespace loam
