// The guidance files: a list of entries of one kind under a head that names the kind.
#pragma once

#include <string_view>
#include <vector>

#include "core/catalog/describe.hpp"

namespace loam::catalog {

template <class Entry> struct Sheet {
    std::vector<Entry> entries;
    json::Extras extras;
};

// How the file of an Entry is called: its "format", the key of its list, and what identifies an entry.
struct SheetForm {
    std::string_view kind; // as in schema()
    std::string_view format;
    std::string_view list;
    std::string_view note;
};
template <class Entry> constexpr SheetForm form = {};
template <> inline constexpr SheetForm form<Species>{"species", "loamstead-species", "species", "Sheets of animals"};
template <> inline constexpr SheetForm form<Rule>{"rules", "loamstead-rules", "rules", "Published floor-area rules"};
template <> inline constexpr SheetForm form<Material>{"materials", "loamstead-materials", "materials",
                                                      "Materials of shells, covers and beds"};
template <> inline constexpr SheetForm form<DeviceTraits>{"devices", "loamstead-devices", "devices",
                                                          "What kinds of device do with their watts"};
template <> inline constexpr SheetForm form<Assumption>{"assumptions", "loamstead-assumptions", "assumptions",
                                                        "Brackets where a plan is silent, and spreads of coefficients"};

inline const std::string& id_of(const Species& entry)
{
    return entry.id;
}
inline const std::string& id_of(const Rule& entry)
{
    return entry.id;
}
inline const std::string& id_of(const Material& entry)
{
    return entry.id;
}
inline const std::string& id_of(const DeviceTraits& entry)
{
    return entry.kind;
}
inline const std::string& id_of(const Assumption& entry)
{
    return entry.id;
}

template <class Entry> void describe(json::Archive& archive, Sheet<Entry>& sheet)
{
    archive.fixed({"format", "What kind of file this is"}, json::Node::of(form<Entry>.format));
    archive.fixed({"version", "Version of the format"}, json::Node::of(std::int64_t{1}));
    archive.list({form<Entry>.list, form<Entry>.note}, sheet.entries, {1, 1000});
    archive.extras(sheet.extras);
}

} // namespace loam::catalog
