#include "core/json/node.hpp"

#include <algorithm>
#include <cassert>

#include "core/json/number_text.hpp"

namespace loam::json {

const Node* Node::find(std::string_view key) const
{
    if (kind != Kind::object) {
        return nullptr;
    }
    const auto found = std::find(keys.begin(), keys.end(), key);
    return found == keys.end() ? nullptr : &items[static_cast<std::size_t>(found - keys.begin())];
}

Node Node::of(bool value)
{
    Node node;
    node.kind = Kind::boolean;
    node.boolean = value;
    return node;
}

Node Node::of(double value)
{
    const std::string text = number_text(value);
    return text.empty() ? Node{} : literal(text);
}

Node Node::of(std::int64_t value)
{
    return literal(std::to_string(value));
}

Node Node::of(std::string_view value)
{
    Node node;
    node.kind = Kind::string;
    node.text = value;
    return node;
}

Node Node::literal(std::string number_text)
{
    Node node;
    node.kind = Kind::number;
    node.text = std::move(number_text);
    return node;
}

Node Node::array()
{
    Node node;
    node.kind = Kind::array;
    return node;
}

Node Node::object()
{
    Node node;
    node.kind = Kind::object;
    return node;
}

Node& Node::add(std::string key, Node value)
{
    assert(kind == Kind::object);
    keys.push_back(std::move(key));
    items.push_back(std::move(value));
    return *this;
}

Node& Node::add(Node value)
{
    assert(kind == Kind::array);
    items.push_back(std::move(value));
    return *this;
}

} // namespace loam::json
