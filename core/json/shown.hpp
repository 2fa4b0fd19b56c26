// How much of a file's text a problem repeats.
#pragma once

#include <string>
#include <string_view>

namespace loam::json {

// At most 60 bytes of well-formed UTF-8, cut between code points and marked where it was cut.
std::string shown(std::string_view text);

} // namespace loam::json
