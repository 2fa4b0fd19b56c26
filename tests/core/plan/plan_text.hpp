// Plan texts for the tests, and what the loader says of them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/plan/file.hpp"

namespace loam::plan::test {

// A file of tests/data/plan.
std::string data(std::string_view name);

// A good plan with one enclosure; `needle` in it, which must stand there, is replaced.
std::string good_text();
std::string with(std::string_view needle, std::string_view replacement);

// The plan, which must load.
Plan loaded(std::string_view text);

// The problems, none where the text loads; also as "pointer code".
json::Problems refused(std::string_view text);
std::vector<std::string> complaints(std::string_view text);

} // namespace loam::plan::test
