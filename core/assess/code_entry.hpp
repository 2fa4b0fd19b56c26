// One code and the names of what it carries. See codes.hpp.
#pragma once

#include <string_view>

namespace loam::assess {

struct CodeEntry {
    std::string_view code;
    std::string_view inputs = {};
    std::string_view labels = {};
};

} // namespace loam::assess
