// JSON text to a Node, refusing what could hurt: the text of a stranger's file is read by this.
#pragma once

#include <cstddef>
#include <string_view>
#include <variant>

#include "core/json/node.hpp"
#include "core/json/problem.hpp"

namespace loam::json {

struct Limits {
    std::size_t max_bytes = 8u * 1024u * 1024u;
    std::size_t max_depth = 64; // nested arrays and objects
    std::size_t max_nodes = 400'000;
};

// RFC 8259, with a byte order mark allowed at the start. Numbers keep their literal, but an integer -0 becomes 0.
// A key that stands twice in one object is a problem, since readers disagree about which one counts.
// Stops at the first error of syntax; all duplicate keys are listed.
std::variant<Node, Problems> parse(std::string_view text, const Limits& limits = {});

} // namespace loam::json
