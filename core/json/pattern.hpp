// The named patterns of archive.hpp, matched by hand: std::regex follows the global locale and recurses per character.
#pragma once

#include <string_view>

namespace loam::json {

// `pattern` must be one of the named ones.
bool matches(std::string_view pattern, std::string_view text);

} // namespace loam::json
