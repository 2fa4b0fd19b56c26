// What JSON Schema calls the kinds of values.
#pragma once

#include <string_view>

#include "core/json/node.hpp"

namespace loam::json {

constexpr std::string_view kind_name(Kind kind)
{
    switch (kind) {
    case Kind::null:
        return "null";
    case Kind::boolean:
        return "boolean";
    case Kind::number:
        return "number";
    case Kind::string:
        return "string";
    case Kind::array:
        return "array";
    case Kind::object:
        return "object";
    }
    return "";
}

} // namespace loam::json
