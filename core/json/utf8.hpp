// What the loader needs to know of UTF-8 (RFC 3629).
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace loam::json {

// The offset of the first byte that does not belong to well-formed UTF-8 (overlong forms, surrogates and values
// above U+10FFFF are ill-formed); nullopt where all is well.
std::optional<std::size_t> first_invalid_utf8(std::string_view text);

// The number of code points of well-formed UTF-8.
std::size_t code_points(std::string_view text);

// True where the text holds a C0 or C1 control character or DELETE.
bool has_control_character(std::string_view text);

} // namespace loam::json
