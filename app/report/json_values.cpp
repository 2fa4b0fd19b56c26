#include "app/report/json_values.hpp"

#include <array>
#include <charconv>
#include <cmath>

namespace loam::report {

json::Node number(double value)
{
    if (!std::isfinite(value)) {
        return {};
    }
    // Far below anything that is measured here: what rounding errors leave of a zero.
    constexpr double smallest = 1e-9;
    if (std::abs(value) < smallest) {
        return json::Node::of(0.0);
    }
    std::array<char, 40> digits{};
    const auto written =
        std::to_chars(digits.data(), digits.data() + digits.size(), value, std::chars_format::scientific, 5);
    double rounded = 0.0;
    std::from_chars(digits.data(), written.ptr, rounded);
    return json::Node::of(rounded);
}

json::Node number(const std::optional<double>& value)
{
    return value ? number(*value) : json::Node();
}

json::Node integer(std::int64_t value)
{
    return json::Node::of(value);
}

json::Node text(const std::string& value)
{
    return json::Node::of(std::string_view(value));
}

json::Node text_or_null(const std::string& value)
{
    return value.empty() ? json::Node() : text(value);
}

json::Node texts(const std::vector<std::string>& values)
{
    json::Node list = json::Node::array();
    for (const std::string& value : values) {
        list.add(text(value));
    }
    return list;
}

json::Node range(const Range& range)
{
    json::Node node = json::Node::object();
    node.add("low", number(range.low)).add("likely", number(range.likely)).add("high", number(range.high));
    return node;
}

json::Node range(const std::optional<Range>& given)
{
    return given ? range(*given) : json::Node();
}

json::Node likely(const std::optional<Range>& given)
{
    return given ? number(given->likely) : json::Node();
}

json::Node bounds(const Target& target)
{
    json::Node node = json::Node::object();
    node.add("min", number(target.min)).add("max", number(target.max));
    return node;
}

json::Node money(const Money& amount)
{
    return amount.overflowed() ? json::Node() : json::Node::literal(amount.text());
}

json::Node money(const std::optional<Money>& amount)
{
    return amount ? money(*amount) : json::Node();
}

json::Node money(const MoneyRange& range)
{
    json::Node node = json::Node::object();
    node.add("low", money(range.low)).add("typical", money(range.typical)).add("high", money(range.high));
    return node;
}

json::Node money(const std::optional<MoneyRange>& range)
{
    return range ? money(*range) : json::Node();
}

namespace {

std::string padded(unsigned value, std::size_t width)
{
    std::string digits = std::to_string(value);
    return std::string(width > digits.size() ? width - digits.size() : 0, '0') + digits;
}

std::string iso_month(std::chrono::year_month month)
{
    return padded(static_cast<unsigned>(static_cast<int>(month.year())), 4) + "-" +
           padded(static_cast<unsigned>(month.month()), 2);
}

} // namespace

json::Node date(std::chrono::year_month_day date)
{
    return text(iso_month(date.year() / date.month()) + "-" + padded(static_cast<unsigned>(date.day()), 2));
}

json::Node month(std::chrono::year_month month)
{
    return text(iso_month(month));
}

std::string verdict_id(Verdict verdict)
{
    static constexpr std::array ids{"fits", "tight", "falls short", "danger", "not known"};
    return ids[static_cast<std::size_t>(verdict)];
}

std::string confidence_id(Confidence confidence)
{
    static constexpr std::array ids{"confirmed", "derived", "secondary", "memory", "practice"};
    return ids[static_cast<std::size_t>(confidence)];
}

json::Node direction(Direction direction)
{
    switch (direction) {
    case Direction::above:
        return text("above");
    case Direction::below:
        return text("below");
    case Direction::none:
        return {};
    }
    return {};
}

void add_judgement(json::Node& node, const Judgement& judgement)
{
    node.add("verdict", text(verdict_id(judgement.verdict))).add("direction", direction(judgement.direction));
}

} // namespace loam::report
