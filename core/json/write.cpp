// The printer of node.hpp: a container whose members are all scalars stands on one line where it fits.
#include <algorithm>
#include <array>

#include "core/json/node.hpp"

namespace loam::json {

namespace {

constexpr std::size_t longest_line = 110;
constexpr std::size_t indent_width = 2;

bool is_container(const Node& node)
{
    return node.kind == Kind::array || node.kind == Kind::object;
}

void append_escaped(std::string& out, char c)
{
    constexpr std::string_view hex = "0123456789abcdef";
    const auto byte = static_cast<unsigned char>(c);
    switch (c) {
    case '"':
        out += "\\\"";
        return;
    case '\\':
        out += "\\\\";
        return;
    case '\n':
        out += "\\n";
        return;
    case '\r':
        out += "\\r";
        return;
    case '\t':
        out += "\\t";
        return;
    default:
        break;
    }
    if (byte >= 0x20) {
        out += c;
        return;
    }
    out += "\\u00";
    out += hex[byte >> 4u];
    out += hex[byte & 15u];
}

void append_string(std::string& out, std::string_view text)
{
    out += '"';
    for (const char c : text) {
        append_escaped(out, c);
    }
    out += '"';
}

void append_scalar(std::string& out, const Node& node)
{
    switch (node.kind) {
    case Kind::null:
        out += "null";
        break;
    case Kind::boolean:
        out += node.boolean ? "true" : "false";
        break;
    case Kind::number:
        out += node.text;
        break;
    case Kind::string:
        append_string(out, node.text);
        break;
    case Kind::array:
    case Kind::object:
        break;
    }
}

bool is_list_of_numbers(const Node& node)
{
    return node.kind == Kind::array && std::all_of(node.items.begin(), node.items.end(), [](const Node& item) {
               return item.kind == Kind::number || item.kind == Kind::null;
           });
}

class Printer {
public:
    void print(const Node& node, std::size_t depth);
    std::string out;

private:
    void print_on_one_line(const Node& node);
    void print_on_many_lines(const Node& node, std::size_t depth);
    void print_filling_lines(const Node& list, std::size_t depth);
    bool try_one_line(const Node& node);
    std::size_t column() const;
    void open(const Node& node) { out += node.kind == Kind::object ? '{' : '['; }
    void close(const Node& node) { out += node.kind == Kind::object ? '}' : ']'; }
    void key_of(const Node& node, std::size_t index);
};

std::size_t Printer::column() const
{
    const std::size_t line_break = out.rfind('\n');
    return line_break == std::string::npos ? out.size() : out.size() - line_break - 1;
}

void Printer::key_of(const Node& node, std::size_t index)
{
    if (node.kind == Kind::object) {
        append_string(out, node.keys[index]);
        out += ": ";
    }
}

void Printer::print_on_one_line(const Node& node)
{
    open(node);
    for (std::size_t i = 0; i < node.items.size(); ++i) {
        if (i > 0) {
            out += ", ";
        }
        key_of(node, i);
        append_scalar(out, node.items[i]);
    }
    close(node);
}

bool Printer::try_one_line(const Node& node)
{
    // A list of more scalars than a line can hold is not worth printing twice.
    if (node.items.size() > longest_line || std::any_of(node.items.begin(), node.items.end(), is_container)) {
        return false;
    }
    const std::size_t before = out.size();
    const std::size_t start = column();
    print_on_one_line(node);
    if (start + out.size() - before > longest_line) {
        out.resize(before);
        return false;
    }
    return true;
}

// A long list of numbers, such as a row of a map, as many to a line as fit.
void Printer::print_filling_lines(const Node& list, std::size_t depth)
{
    const std::string line_break = '\n' + std::string((depth + 1) * indent_width, ' ');
    open(list);
    out += line_break;
    for (std::size_t i = 0; i < list.items.size(); ++i) {
        std::string item;
        append_scalar(item, list.items[i]);
        item += i + 1 < list.items.size() ? "," : "";
        if (i > 0) {
            out += column() + 1 + item.size() > longest_line ? line_break : " ";
        }
        out += item;
    }
    out += '\n';
    out.append(depth * indent_width, ' ');
    close(list);
}

void Printer::print_on_many_lines(const Node& node, std::size_t depth)
{
    const std::string indent((depth + 1) * indent_width, ' ');
    open(node);
    for (std::size_t i = 0; i < node.items.size(); ++i) {
        out += i > 0 ? ",\n" : "\n";
        out += indent;
        key_of(node, i);
        print(node.items[i], depth + 1);
    }
    out += '\n';
    out.append(depth * indent_width, ' ');
    close(node);
}

void Printer::print(const Node& node, std::size_t depth)
{
    if (!is_container(node)) {
        append_scalar(out, node);
    } else if (!try_one_line(node)) {
        if (is_list_of_numbers(node)) {
            print_filling_lines(node, depth);
        } else {
            print_on_many_lines(node, depth);
        }
    }
}

} // namespace

std::string write(const Node& node)
{
    Printer printer;
    printer.print(node, 0);
    printer.out += '\n';
    return std::move(printer.out);
}

} // namespace loam::json
