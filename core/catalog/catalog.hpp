// All guidance data as one value. Files are read by app/; core receives their texts.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/material.hpp"
#include "core/catalog/prices.hpp"
#include "core/catalog/rule.hpp"
#include "core/catalog/species.hpp"
#include "core/json/problem.hpp"

namespace loam::catalog {

struct Catalog {
    std::vector<Species> species;
    std::vector<Rule> rules;
    std::vector<Material> materials;
    std::vector<DeviceTraits> devices;
    std::vector<Assumption> assumptions;
    PriceList prices;
    friend bool operator==(const Catalog&, const Catalog&) = default;

    // nullptr where the id is unknown.
    const Species* find_species(std::string_view id) const;
    const Rule* find_rule(std::string_view id) const;
    const Material* find_material(std::string_view id) const;
    const DeviceTraits* find_device(std::string_view kind) const;
    const Assumption* find_assumption(std::string_view id) const;
};

// One file of guidance: its kind is read from its "format" member ("loamstead-species", "loamstead-rules",
// "loamstead-materials", "loamstead-devices", "loamstead-assumptions", "loamstead-prices").
struct SourceText {
    std::string name; // for messages
    std::string text;
};

struct FileProblem {
    std::string file;
    json::Problem problem;
    friend bool operator==(const FileProblem&, const FileProblem&) = default;
};

// Adds the file's entries; an entry whose id is there already replaces it (later layers win), and a price list replaces
// the whole earlier one. A file with a problem adds nothing, and its problems are returned.
std::vector<FileProblem> add_layer(Catalog& catalog, const std::vector<SourceText>& files);

// What no single file can show: unknown rules or materials in a species sheet, food that no item serves, kinds of
// device that are not described. `file` is "species/<id>" or "devices".
std::vector<FileProblem> check(const Catalog& catalog);

std::string write(const PriceList& prices);     // JSON, byte-stable
std::string write_csv(const PriceList& prices); // RFC 4180, formula-safe

struct PriceListRead {
    PriceList prices;
    json::Problems problems; // empty: `prices` is good
};
PriceListRead read_prices(std::string_view json_text);
PriceListRead read_prices_csv(std::string_view csv_text); // a problem per bad row, "row 3, column price_low"

// "species", "rules", "materials", "devices", "assumptions", "prices"; nullopt for another name.
std::optional<std::string> schema(std::string_view kind);

} // namespace loam::catalog
