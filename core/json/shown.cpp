#include "core/json/shown.hpp"

namespace loam::json {

std::string shown(std::string_view text)
{
    constexpr std::size_t most_bytes = 60;
    if (text.size() <= most_bytes) {
        return std::string(text);
    }
    std::size_t end = most_bytes;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0u) == 0x80u) {
        --end;
    }
    return std::string(text.substr(0, end)) + "…";
}

} // namespace loam::json
