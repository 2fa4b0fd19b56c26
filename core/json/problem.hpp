// What is wrong with a file, and where. app/words makes the sentence from `code` and `args`.
#pragma once

#include <string>
#include <vector>

namespace loam::json {

struct Problem {
    std::string where; // a JSON Pointer ("" is the whole document), or "row 3, column price"
    std::string code;  // for example "unknown-key"
    std::vector<std::string> args;
    friend bool operator==(const Problem&, const Problem&) = default;
};

using Problems = std::vector<Problem>;

} // namespace loam::json
