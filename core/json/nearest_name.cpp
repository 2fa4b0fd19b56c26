#include "core/json/nearest_name.hpp"

#include <algorithm>
#include <vector>

namespace loam::json {

namespace {

constexpr std::size_t longest_worth_comparing = 64;

bool is_likely_slip(std::size_t distance, std::size_t length)
{
    return distance <= std::max<std::size_t>(2, length / 3) && distance < length;
}

} // namespace

std::size_t edit_distance(std::string_view left, std::string_view right)
{
    const std::size_t columns = right.size() + 1;
    std::vector<std::size_t> cells((left.size() + 1) * columns);
    const auto at = [&](std::size_t row, std::size_t column) -> std::size_t& { return cells[row * columns + column]; };
    for (std::size_t column = 0; column < columns; ++column) {
        at(0, column) = column;
    }
    for (std::size_t row = 1; row <= left.size(); ++row) {
        at(row, 0) = row;
        for (std::size_t column = 1; column < columns; ++column) {
            const std::size_t change = left[row - 1] == right[column - 1] ? 0 : 1;
            std::size_t best =
                std::min({at(row - 1, column) + 1, at(row, column - 1) + 1, at(row - 1, column - 1) + change});
            const bool swapped =
                row > 1 && column > 1 && left[row - 1] == right[column - 2] && left[row - 2] == right[column - 1];
            if (swapped) {
                best = std::min(best, at(row - 2, column - 2) + 1);
            }
            at(row, column) = best;
        }
    }
    return cells.back();
}

std::optional<std::string_view> nearest_name(std::string_view mistyped, std::span<const std::string_view> names)
{
    if (mistyped.empty() || mistyped.size() > longest_worth_comparing) {
        return std::nullopt;
    }
    std::optional<std::string_view> nearest;
    std::size_t least = longest_worth_comparing;
    for (const std::string_view name : names) {
        const std::size_t distance = edit_distance(mistyped, name);
        if (distance < least) {
            least = distance;
            nearest = name;
        }
    }
    if (nearest && is_likely_slip(least, std::max(mistyped.size(), nearest->size()))) {
        return nearest;
    }
    const auto longer = std::find_if(names.begin(), names.end(), [&](std::string_view name) {
        return mistyped.size() >= 4 && name.substr(0, mistyped.size()) == mistyped;
    });
    return longer == names.end() ? std::nullopt : std::optional<std::string_view>(*longer);
}

} // namespace loam::json
