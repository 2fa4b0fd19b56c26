#include "core/assess/context.hpp"

#include <algorithm>

#include "core/plan/names.hpp"

namespace loam::assess {

std::string Housed::pointer(std::string_view rest) const
{
    return "/enclosures/" + std::to_string(index) + std::string(rest);
}

Place Housed::at(std::string_view where) const
{
    return {where.empty() ? enclosure.id : std::string(where), enclosure.id};
}

std::optional<Range> given_or(Notes& notes, std::optional<double> given, std::string pointer, std::string unit,
                              const std::optional<Range>& bracket, const Source& source)
{
    if (given) {
        return exactly(*given);
    }
    assume(notes, {std::move(pointer), std::move(unit), bracket, source});
    return bracket;
}

std::optional<Range> given_or_assumed(Notes& notes, const catalog::Catalog& catalog, std::optional<double> given,
                                      std::string pointer, std::string_view assumption)
{
    const catalog::Assumption* entry = catalog.find_assumption(assumption);
    if (entry == nullptr) {
        return given_or(notes, given, std::move(pointer), "", std::nullopt, {});
    }
    return given_or(notes, given, std::move(pointer), entry->unit, entry->spread.range(), entry->spread.source);
}

std::optional<Range> spread_of(const catalog::Catalog& catalog, std::string_view assumption)
{
    const catalog::Assumption* entry = catalog.find_assumption(assumption);
    return entry == nullptr ? std::nullopt : std::optional(entry->spread.range());
}

std::vector<const catalog::Species*> species_in(const plan::Enclosure& enclosure, const catalog::Catalog& catalog)
{
    std::vector<const catalog::Species*> found;
    for (const plan::Animal& animal : enclosure.animals) {
        const catalog::Species* species = catalog.find_species(animal.species);
        if (species != nullptr && std::find(found.begin(), found.end(), species) == found.end()) {
            found.push_back(species);
        }
    }
    return found;
}

std::int64_t animal_count(const plan::Enclosure& enclosure)
{
    std::int64_t count = 0;
    for (const plan::Animal& animal : enclosure.animals) {
        count += animal.count;
    }
    return count;
}

bool lights(const catalog::Catalog& catalog, plan::DeviceKind kind)
{
    const catalog::DeviceTraits* traits = catalog.find_device(plan::name_of(kind));
    return traits != nullptr ? traits->emits_light : is_lamp(kind);
}

} // namespace loam::assess
