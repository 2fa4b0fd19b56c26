#include "core/catalog/describe.hpp"
#include "core/catalog/names.hpp"

namespace loam {

void describe(json::Archive& archive, Source& source)
{
    archive.text({"citation", "Author, year, table; or what is remembered of it"}, source.citation, {1, 600});
    archive.choice({"confidence", "How well the figure is confirmed"}, source.confidence, catalog::confidence_names);
}

} // namespace loam

namespace loam::catalog {

void describe_within(json::Archive& archive, Band& band, json::Bounds limits)
{
    archive.number({"min", "Lower end; absent: unbounded"}, band.min, limits);
    archive.number({"max", "Upper end; absent: unbounded"}, band.max, limits);
    archive.object({"source", "Where the band comes from"}, band.source);
    archive.list({"others", "Sources that disagree, their figures in the citation"}, band.others, {0, 20});
}

void describe_within(json::Archive& archive, Spread& spread, json::Bounds limits)
{
    archive.number({"low", "5th percentile"}, spread.low, limits);
    archive.number({"likely", "Likely value"}, spread.likely, limits);
    archive.number({"high", "95th percentile"}, spread.high, limits);
    archive.object({"source", "Where figure and spread come from"}, spread.source);
}

void describe_within(json::Archive& archive, Range& range, json::Bounds limits)
{
    archive.number({"low", "Least to be expected"}, range.low, limits);
    archive.number({"likely", "Likely value"}, range.likely, limits);
    archive.number({"high", "Most to be expected"}, range.high, limits);
}

void flag_or_false(json::Archive& archive, json::Key key, bool& value)
{
    std::optional<bool> given = value ? std::optional<bool>(true) : std::nullopt;
    archive.flag(key, given);
    value = given.value_or(false);
}

} // namespace loam::catalog
