// What no single guidance file can show.
#include <algorithm>

#include "core/catalog/catalog.hpp"
#include "core/catalog/names.hpp"
#include "core/catalog/problem_codes.hpp"
#include "core/json/pointer.hpp"

namespace loam::catalog {

namespace {

void note(std::vector<FileProblem>& found, std::string file, std::string where, std::string_view code,
          std::vector<std::string> args)
{
    found.push_back({std::move(file), {std::move(where), std::string(code), std::move(args)}});
}

void check_rules(const Catalog& catalog, const Species& species, std::vector<FileProblem>& found)
{
    for (std::size_t i = 0; i < species.rules.size(); ++i) {
        const std::string where = json::pointer_to("/rules", i);
        const Rule* const rule = catalog.find_rule(species.rules[i]);
        if (rule == nullptr) {
            note(found, "species/" + species.id, where, problem::unknown_rule, {species.rules[i]});
            continue;
        }
        // A rule by total length can be applied where that length is given beside the measure.
        const bool by_total = rule->measure == space::BodyMeasure::total && species.adult_total_length_m;
        if (rule->measure != species.measure && !by_total) {
            const auto name = [](space::BodyMeasure measure) {
                return std::string(body_measure_names[static_cast<std::size_t>(measure)]);
            };
            note(found, "species/" + species.id, where, problem::measure_differs,
                 {rule->id, name(rule->measure), name(species.measure)});
        }
    }
}

void check_substrates(const Catalog& catalog, const Species& species, std::vector<FileProblem>& found)
{
    for (std::size_t i = 0; i < species.substrates.size(); ++i) {
        const std::string where = json::pointer_to("/substrates", i);
        const Material* const material = catalog.find_material(species.substrates[i]);
        if (material == nullptr) {
            note(found, "species/" + species.id, where, problem::unknown_material, {species.substrates[i]});
            continue;
        }
        const auto& uses = material->uses;
        if (std::find(uses.begin(), uses.end(), MaterialUse::substrate) == uses.end()) {
            note(found, "species/" + species.id, where, problem::not_a_substrate, {material->id});
        }
    }
}

bool is_served(const PriceList& prices, std::string_view need)
{
    return std::any_of(prices.items.begin(), prices.items.end(), [&](const Item& item) { return item.serves == need; });
}

} // namespace

std::vector<FileProblem> check(const Catalog& catalog)
{
    std::vector<FileProblem> found;
    for (const Species& species : catalog.species) {
        check_rules(catalog, species, found);
        check_substrates(catalog, species, found);
        if (!is_served(catalog.prices, species.diet.food_item)) {
            note(found, "species/" + species.id, "/diet/food_item", problem::unserved_need, {species.diet.food_item});
        }
    }
    for (const std::string_view kind : device_kinds) {
        if (catalog.find_device(kind) == nullptr) {
            note(found, "devices", "", problem::missing_device, {std::string(kind)});
        }
    }
    return found;
}

} // namespace loam::catalog
