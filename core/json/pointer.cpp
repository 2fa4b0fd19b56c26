#include "core/json/pointer.hpp"

namespace loam::json {

std::string pointer_to(std::string_view parent, std::string_view key)
{
    std::string pointer(parent);
    pointer += '/';
    for (const char c : key) {
        if (c == '~') {
            pointer += "~0";
        } else if (c == '/') {
            pointer += "~1";
        } else {
            pointer += c;
        }
    }
    return pointer;
}

std::string pointer_to(std::string_view parent, std::size_t index)
{
    return std::string(parent) + '/' + std::to_string(index);
}

} // namespace loam::json
