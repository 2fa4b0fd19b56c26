#include "core/json/parse.hpp"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <unordered_set>
#include <utility>
#include <vector>

#include <nlohmann/json.hpp>

#include "core/json/pointer.hpp"
#include "core/json/problem_codes.hpp"
#include "core/json/shown.hpp"
#include "core/json/utf8.hpp"

namespace loam::json {

namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr std::size_t most_duplicates_listed = 100;

Problem problem_at(std::string_view code, std::string_view text, std::size_t offset)
{
    const std::string_view before = text.substr(0, std::min(offset, text.size()));
    const auto lines = std::count(before.begin(), before.end(), '\n');
    const std::size_t line_break = before.rfind('\n');
    const std::string_view line = line_break == std::string_view::npos ? before : before.substr(line_break + 1);
    return {"", std::string(code), {std::to_string(lines + 1), std::to_string(code_points(line) + 1)}};
}

// Takes nlohmann's events and builds the tree. The events come from a loop, not from recursion, so depth is ours to
// limit before it costs anything.
class Builder {
public:
    Builder(std::string_view text, const Limits& limits) : text_(text), limits_(limits) {}

    using number_integer_t = nlohmann::json::number_integer_t;
    using number_unsigned_t = nlohmann::json::number_unsigned_t;
    using number_float_t = nlohmann::json::number_float_t;
    using string_t = nlohmann::json::string_t;
    using binary_t = nlohmann::json::binary_t;

    bool null() { return leaf(Node{}); }
    bool boolean(bool value) { return leaf(Node::of(value)); }
    bool number_integer(number_integer_t value) { return leaf(Node::of(static_cast<std::int64_t>(value))); }
    bool number_unsigned(number_unsigned_t value) { return leaf(Node::literal(std::to_string(value))); }
    bool number_float(number_float_t, const string_t& literal);
    bool string(string_t& value) { return leaf(string_node(value)); }
    bool binary(binary_t&) { return false; } // never sent for text
    bool start_object(std::size_t) { return open(Node::object()); }
    bool key(string_t& name);
    bool end_object() { return close(); }
    bool start_array(std::size_t) { return open(Node::array()); }
    bool end_array() { return close(); }
    bool parse_error(std::size_t position, const std::string& token, const nlohmann::json::exception& error);

    Problems problems;
    Node root;

private:
    struct Level {
        Node node;
        std::string key; // of the member that is being read
        std::string pointer;
        std::unordered_set<std::string> keys;
        bool skip = false; // the member's key stood before
    };

    static Node string_node(string_t& value)
    {
        Node node;
        node.kind = Kind::string;
        node.text = std::move(value);
        return node;
    }
    bool count_node();
    bool leaf(Node node);
    bool open(Node node);
    bool close();
    void place(Node node);
    std::string pointer_here() const;

    std::string_view text_;
    const Limits& limits_;
    std::vector<Level> levels_;
    std::size_t nodes_ = 0;
};

bool Builder::number_float(number_float_t, const string_t& literal)
{
    // nlohmann puts the C locale's decimal sign into the literal.
    std::string plain = literal;
    std::replace_if(
        plain.begin(), plain.end(),
        [](char c) { return std::string_view("0123456789+-eE").find(c) == std::string_view::npos; }, '.');
    return leaf(Node::literal(std::move(plain)));
}

bool Builder::key(string_t& name)
{
    Level& level = levels_.back();
    level.skip = !level.keys.insert(name).second;
    if (level.skip && problems.size() < most_duplicates_listed) {
        problems.push_back({pointer_to(level.pointer, name), std::string(problem::duplicate_key), {shown(name)}});
    }
    level.key = std::move(name);
    return true;
}

bool Builder::count_node()
{
    if (++nodes_ <= limits_.max_nodes) {
        return true;
    }
    problems.push_back({"", std::string(problem::too_many_values), {std::to_string(limits_.max_nodes)}});
    return false;
}

bool Builder::leaf(Node node)
{
    if (!count_node()) {
        return false;
    }
    place(std::move(node));
    return true;
}

bool Builder::open(Node node)
{
    if (!count_node()) {
        return false;
    }
    if (levels_.size() == limits_.max_depth) {
        problems.push_back({"", std::string(problem::too_deep), {std::to_string(limits_.max_depth)}});
        return false;
    }
    Level level;
    level.node = std::move(node);
    level.pointer = pointer_here();
    levels_.push_back(std::move(level));
    return true;
}

bool Builder::close()
{
    Node node = std::move(levels_.back().node);
    levels_.pop_back();
    place(std::move(node));
    return true;
}

void Builder::place(Node node)
{
    if (levels_.empty()) {
        root = std::move(node);
        return;
    }
    Level& level = levels_.back();
    if (level.node.kind == Kind::array) {
        level.node.add(std::move(node));
    } else if (!level.skip) {
        level.node.add(std::move(level.key), std::move(node));
    }
}

std::string Builder::pointer_here() const
{
    if (levels_.empty()) {
        return "";
    }
    const Level& level = levels_.back();
    return level.node.kind == Kind::array ? pointer_to(level.pointer, level.node.items.size())
                                          : pointer_to(level.pointer, level.key);
}

// NaN or Infinity where a value begins, its sign aside.
bool is_not_a_number(std::string_view text, std::size_t offset)
{
    const std::string_view rest = text.substr(std::min(offset, text.size()));
    const bool named = rest.substr(0, 3) == "NaN" || rest.substr(0, 8) == "Infinity";
    return named && (offset == 0 || std::string_view(" \t\r\n,:[-").find(text[offset - 1]) != std::string_view::npos);
}

bool Builder::parse_error(std::size_t position, const std::string&, const nlohmann::json::exception& error)
{
    constexpr int number_out_of_range = 406; // nlohmann's number for a literal that is no finite double
    // The position counts the bytes read, the offending one included.
    const std::size_t offset = position > 0 ? position - 1 : 0;
    if (error.id == number_out_of_range || is_not_a_number(text_, offset)) {
        problems.push_back(problem_at(problem::not_finite, text_, offset));
    } else if (position > text_.size()) {
        problems.push_back(problem_at(problem::truncated, text_, text_.size()));
    } else {
        problems.push_back(problem_at(problem::syntax, text_, offset));
    }
    return false;
}

std::optional<Problem> refusal_before_parsing(std::string_view text, const Limits& limits)
{
    if (text.size() > limits.max_bytes) {
        return Problem{
            "", std::string(problem::too_large), {std::to_string(limits.max_bytes), std::to_string(text.size())}};
    }
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos) {
        return Problem{"", std::string(problem::empty), {}};
    }
    if (const auto offset = first_invalid_utf8(text)) {
        return problem_at(problem::invalid_utf8, text, *offset);
    }
    return std::nullopt;
}

} // namespace

std::variant<Node, Problems> parse(std::string_view text, const Limits& limits)
{
    if (text.substr(0, byte_order_mark.size()) == byte_order_mark) {
        text.remove_prefix(byte_order_mark.size());
    }
    if (auto refusal = refusal_before_parsing(text, limits)) {
        return Problems{std::move(*refusal)};
    }
    Builder builder(text, limits);
    const bool whole = nlohmann::json::sax_parse(text.begin(), text.end(), &builder);
    if (!whole || !builder.problems.empty()) {
        return std::move(builder.problems);
    }
    return std::move(builder.root);
}

} // namespace loam::json
