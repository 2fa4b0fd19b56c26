#include "core/catalog/price_columns.hpp"

#include <algorithm>

namespace loam::catalog {

const json::Node* at_path(const json::Node& object, std::string_view path)
{
    const std::size_t slash = path.find('/');
    const json::Node* const member = object.find(path.substr(0, slash));
    if (member == nullptr || slash == std::string_view::npos) {
        return member;
    }
    return at_path(*member, path.substr(slash + 1));
}

void put_at_path(json::Node& object, std::string_view path, json::Node value)
{
    const std::size_t slash = path.find('/');
    const std::string key(path.substr(0, slash));
    if (slash == std::string_view::npos) {
        object.add(key, std::move(value));
        return;
    }
    const auto found = std::find(object.keys.begin(), object.keys.end(), key);
    const auto index = static_cast<std::size_t>(found - object.keys.begin());
    if (found == object.keys.end()) {
        object.add(key, json::Node::object());
    }
    put_at_path(object.items[index], path.substr(slash + 1), std::move(value));
}

} // namespace loam::catalog
