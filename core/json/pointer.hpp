// JSON Pointers (RFC 6901).
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace loam::json {

// `parent` with one more step; "~" and "/" in the key are escaped.
std::string pointer_to(std::string_view parent, std::string_view key);
std::string pointer_to(std::string_view parent, std::size_t index);

} // namespace loam::json
