#include "core/json/archive.hpp"

namespace loam::json {

// A required field travels as an optional that is set; where reading failed it keeps what it had, and the problem
// that was recorded refuses the whole document.

void Archive::number(Key key, double& value, Bounds bounds)
{
    std::optional<double> held = value;
    on_number(key, Need::required, held, bounds);
    value = held.value_or(value);
}

void Archive::number(Key key, std::optional<double>& value, Bounds bounds)
{
    on_number(key, Need::optional, value, bounds);
}

void Archive::integer(Key key, std::int64_t& value, Bounds bounds)
{
    std::optional<std::int64_t> held = value;
    on_integer(key, Need::required, held, bounds);
    value = held.value_or(value);
}

void Archive::integer(Key key, std::optional<std::int64_t>& value, Bounds bounds)
{
    on_integer(key, Need::optional, value, bounds);
}

void Archive::decimal(Key key, Decimal& value, Bounds bounds)
{
    std::optional<Decimal> held = value;
    on_decimal(key, Need::required, held, bounds);
    value = held.value_or(value);
}

void Archive::decimal(Key key, std::optional<Decimal>& value, Bounds bounds)
{
    on_decimal(key, Need::optional, value, bounds);
}

void Archive::text(Key key, std::string& value, TextRule rule)
{
    std::optional<std::string> held = value;
    on_text(key, Need::required, held, rule);
    value = std::move(held).value_or(value);
}

void Archive::text(Key key, std::optional<std::string>& value, TextRule rule)
{
    on_text(key, Need::optional, value, rule);
}

void Archive::text_or_empty(Key key, std::string& value, TextRule rule)
{
    std::optional<std::string> held;
    if (!value.empty()) {
        held = value;
    }
    on_text(key, Need::optional, held, rule);
    value = std::move(held).value_or("");
}

void Archive::flag(Key key, bool& value)
{
    std::optional<bool> held = value;
    on_flag(key, Need::required, held);
    value = held.value_or(value);
}

void Archive::flag(Key key, std::optional<bool>& value)
{
    on_flag(key, Need::optional, value);
}

void Archive::texts(Key key, std::vector<std::string>& values, TextRule each, ListRule rule)
{
    on_texts(key, values, each, rule);
}

} // namespace loam::json
