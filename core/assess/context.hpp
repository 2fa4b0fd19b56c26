// What every translator may look at, and how it asks for an input that may be absent.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/assess/notes.hpp"
#include "core/catalog/catalog.hpp"
#include "core/plan/plan.hpp"

namespace loam::assess {

struct Context {
    const plan::Plan& plan;
    const catalog::Catalog& catalog;
    std::chrono::year_month_day today;
};

// An enclosure with its place in the plan, so that pointers into it can be written.
struct Housed {
    const plan::Enclosure& enclosure;
    std::size_t index = 0;
    std::string pointer(std::string_view rest) const; // "/enclosures/<index><rest>"
    Place at(std::string_view where = {}) const;      // empty: the enclosure itself
};

// The given value as an exact range; else the catalog's bracket, written down as assumed. nullopt where the catalog
// has none: then that is written down too, and what hangs on it is not known.
std::optional<Range> given_or_assumed(Notes& notes, const catalog::Catalog& catalog, std::optional<double> given,
                                      std::string pointer, std::string_view assumption);
// The same with a bracket from elsewhere (a species sheet, a material, a kind of device).
std::optional<Range> given_or(Notes& notes, std::optional<double> given, std::string pointer, std::string unit,
                              const std::optional<Range>& bracket, const Source& source);

// The spread of a model coefficient; 1 exactly where the catalog has no such entry would be a comfortable default, so
// nullopt then.
std::optional<Range> spread_of(const catalog::Catalog& catalog, std::string_view assumption);

// Species of the enclosure's animals in the order of the plan, each once; unknown ids are left out.
std::vector<const catalog::Species*> species_in(const plan::Enclosure& enclosure, const catalog::Catalog& catalog);

std::int64_t animal_count(const plan::Enclosure& enclosure);

bool lights(const catalog::Catalog& catalog, plan::DeviceKind kind);
constexpr bool is_lamp(plan::DeviceKind kind)
{
    using enum plan::DeviceKind;
    return kind == flood_lamp || kind == uv_tube || kind == uv_compact || kind == mercury_vapour_lamp ||
           kind == metal_halide_lamp || kind == led_strip;
}
// What radiates from above and can burn: lamps with a hot bulb, ceramic heaters, panels.
constexpr bool is_overhead_heat(plan::DeviceKind kind)
{
    using enum plan::DeviceKind;
    return kind == flood_lamp || kind == mercury_vapour_lamp || kind == metal_halide_lamp || kind == ceramic_heater ||
           kind == radiant_panel;
}

} // namespace loam::assess
