#include "core/catalog/describe.hpp"

#include <limits>
#include <string>

#include "core/catalog/names.hpp"
#include "core/catalog/problem_codes.hpp"
#include "core/json/number_text.hpp"
#include "core/json/pattern.hpp"

namespace loam {

void describe(json::Archive& archive, Source& source)
{
    archive.text({"citation", "Author, year, table; or what is remembered of it"}, source.citation, {1, 600});
    archive.choice({"confidence", "How well the figure is confirmed"}, source.confidence, catalog::confidence_names);
}

} // namespace loam

namespace loam::catalog {

void refuse_unless_ordered(json::Archive& archive, const NamedNumber& lower, const NamedNumber& upper)
{
    if (lower.value > upper.value) {
        archive.refuse("", problem::out_of_order,
                       {std::string(lower.name), json::number_text(lower.value), std::string(upper.name),
                        json::number_text(upper.value)});
    }
}

void refuse_unless_need_kind(json::Archive& archive, std::string_view key, const std::string& text)
{
    const std::size_t dot = text.find('.');
    const bool head = json::matches(json::kebab_id, std::string_view(text).substr(0, dot));
    const bool tail = dot == std::string::npos || json::matches(json::kebab_id, std::string_view(text).substr(dot + 1));
    if (!head || !tail) {
        archive.refuse(key, problem::not_a_need_kind, {text});
    }
}

void describe_within(json::Archive& archive, Band& band, json::Bounds limits)
{
    archive.number({"min", "Lower end; absent: unbounded"}, band.min, limits);
    archive.number({"max", "Upper end; absent: unbounded"}, band.max, limits);
    archive.object({"source", "Where the band comes from"}, band.source);
    archive.list({"others", "Sources that disagree, their figures in the citation"}, band.others, {0, 20});
    if (band.min && band.max) {
        refuse_unless_ordered(archive, {"min", *band.min}, {"max", *band.max});
    }
}

// While reading, a member that is missing or out of bounds stays not-a-number, so that it isn't also called out of
// order: every comparison with it is false.
static void describe_three(json::Archive& archive, Range& range, json::Bounds limits)
{
    if (archive.mode() == json::Archive::Mode::read) {
        range = exactly(std::numeric_limits<double>::quiet_NaN());
    }
    archive.number({"low", "5th percentile, or the least to be expected"}, range.low, limits);
    archive.number({"likely", "Likely value"}, range.likely, limits);
    archive.number({"high", "95th percentile, or the most to be expected"}, range.high, limits);
    refuse_unless_ordered(archive, {"low", range.low}, {"likely", range.likely});
    refuse_unless_ordered(archive, {"likely", range.likely}, {"high", range.high});
}

void describe_within(json::Archive& archive, Spread& spread, json::Bounds limits)
{
    Range range = spread.range();
    describe_three(archive, range, limits);
    spread.low = range.low;
    spread.likely = range.likely;
    spread.high = range.high;
    archive.object({"source", "Where figure and spread come from"}, spread.source);
}

void describe_within(json::Archive& archive, Range& range, json::Bounds limits)
{
    describe_three(archive, range, limits);
}

void flag_or_false(json::Archive& archive, json::Key key, bool& value)
{
    std::optional<bool> given = value ? std::optional<bool>(true) : std::nullopt;
    archive.flag(key, given);
    value = given.value_or(false);
}

} // namespace loam::catalog
