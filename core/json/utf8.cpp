#include "core/json/utf8.hpp"

namespace loam::json {

namespace {

unsigned byte_at(std::string_view text, std::size_t offset)
{
    return static_cast<unsigned char>(text[offset]);
}

struct Lead {
    std::size_t length; // of the whole sequence, 0 for a byte that can't begin one
    unsigned second_min;
    unsigned second_max;
};

// RFC 3629, section 4: the bounds of the second byte exclude overlong forms, surrogates and the far end.
Lead lead_of(unsigned byte)
{
    if (byte < 0x80) {
        return {1, 0, 0};
    }
    if (byte < 0xC2 || byte > 0xF4) {
        return {0, 0, 0};
    }
    if (byte < 0xE0) {
        return {2, 0x80, 0xBF};
    }
    if (byte < 0xF0) {
        return {3, byte == 0xE0 ? 0xA0u : 0x80u, byte == 0xED ? 0x9Fu : 0xBFu};
    }
    return {4, byte == 0xF0 ? 0x90u : 0x80u, byte == 0xF4 ? 0x8Fu : 0xBFu};
}

bool is_continuation(unsigned byte)
{
    return (byte & 0xC0u) == 0x80u;
}

bool sequence_is_well_formed(std::string_view text, std::size_t offset, const Lead& lead)
{
    if (lead.length == 0 || offset + lead.length > text.size()) {
        return false;
    }
    if (lead.length == 1) {
        return true;
    }
    const unsigned second = byte_at(text, offset + 1);
    if (second < lead.second_min || second > lead.second_max) {
        return false;
    }
    for (std::size_t i = 2; i < lead.length; ++i) {
        if (!is_continuation(byte_at(text, offset + i))) {
            return false;
        }
    }
    return true;
}

} // namespace

std::optional<std::size_t> first_invalid_utf8(std::string_view text)
{
    for (std::size_t offset = 0; offset < text.size();) {
        const Lead lead = lead_of(byte_at(text, offset));
        if (!sequence_is_well_formed(text, offset, lead)) {
            return offset;
        }
        offset += lead.length;
    }
    return std::nullopt;
}

std::size_t code_points(std::string_view text)
{
    std::size_t count = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (!is_continuation(byte_at(text, i))) {
            ++count;
        }
    }
    return count;
}

bool has_control_character(std::string_view text)
{
    for (std::size_t i = 0; i < text.size(); ++i) {
        const unsigned byte = byte_at(text, i);
        const bool c1 = byte == 0xC2 && i + 1 < text.size() && byte_at(text, i + 1) < 0xA0;
        if (byte < 0x20 || byte == 0x7F || c1) {
            return true;
        }
    }
    return false;
}

} // namespace loam::json
