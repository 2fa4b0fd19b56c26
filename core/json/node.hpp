// A JSON document as it was written: members keep their order, numbers keep their text.
// Money and byte-stable saving both need the literal, which a parsed double has lost.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace loam::json {

enum class Kind { null, boolean, number, string, array, object };

struct Node {
    Kind kind = Kind::null;
    bool boolean = false;
    std::string text;              // a string's value, or a number's literal
    std::vector<std::string> keys; // of an object, beside `items`
    std::vector<Node> items;       // of an array or an object

    friend bool operator==(const Node&, const Node&) = default;

    const Node* find(std::string_view key) const; // nullptr where absent or not an object

    static Node of(bool value);
    static Node of(double value); // shortest text that reads back the same; null where not finite
    static Node of(std::int64_t value);
    static Node of(std::string_view value);
    static Node of(const char* value) { return of(std::string_view(value)); } // would become a bool otherwise
    static Node literal(std::string number_text);
    static Node array();
    static Node object();
    Node& add(std::string key, Node value); // to an object; returns *this
    Node& add(Node value);                  // to an array; returns *this
};

// Members whose key begins with "x_": kept for whoever put them there.
using Extras = std::vector<std::pair<std::string, Node>>;

// Indented by two spaces, one trailing newline, short arrays of scalars and short leaf objects on one line.
// The same node always gives the same bytes.
std::string write(const Node& node);

} // namespace loam::json
