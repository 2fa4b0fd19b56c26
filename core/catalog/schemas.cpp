// The published JSON Schemas; the copies in resources/schema are compared with these in a test.
#include "core/catalog/files.hpp"
#include "core/json/front.hpp"

namespace loam::catalog {

template <class File> static std::string schema_text(std::string_view kind, std::string_view title)
{
    const std::string id = "urn:loamstead:schema:" + std::string(kind) + ":1";
    return json::write(json::schema_of<File>(id, title));
}

template <class Entry> static std::string sheet_schema()
{
    return schema_text<Sheet<Entry>>(form<Entry>.kind, form<Entry>.note);
}

std::optional<std::string> schema(std::string_view kind)
{
    if (kind == form<Species>.kind) {
        return sheet_schema<Species>();
    }
    if (kind == form<Rule>.kind) {
        return sheet_schema<Rule>();
    }
    if (kind == form<Material>.kind) {
        return sheet_schema<Material>();
    }
    if (kind == form<DeviceTraits>.kind) {
        return sheet_schema<DeviceTraits>();
    }
    if (kind == form<Assumption>.kind) {
        return sheet_schema<Assumption>();
    }
    if (kind == "prices") {
        return schema_text<PriceList>(kind, "A price list of generic goods");
    }
    return std::nullopt;
}

} // namespace loam::catalog
