// What a mistyped name was probably meant to be.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

namespace loam::json {

// Insertions, deletions, substitutions and swaps of neighbours that turn one text into the other.
// Method: optimal string alignment, after Damerau (1964), "A technique for computer detection and correction of
// spelling errors", Communications of the ACM 7(3) (from memory). Counts bytes.
std::size_t edit_distance(std::string_view left, std::string_view right);

// The name with the least distance, where it is near enough to be a likely slip, or one that begins with the whole
// of `mistyped` ("power" for "power_w"); nullopt otherwise.
std::optional<std::string_view> nearest_name(std::string_view mistyped, std::span<const std::string_view> names);

} // namespace loam::json
