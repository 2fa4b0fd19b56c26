// The names in the guidance that the program comes with, in the reader's language.
#pragma once

#include <QString>
#include <span>
#include <string>

#include "core/catalog/catalog.hpp"

namespace loam::words {

std::span<const char* const> catalog_names(); // English, as in the files

// Species, materials, rules, and the items and packs of the price list by their names in the language spoken now.
// Names of the user's own guidance that are nobody's translation stay as they are; ids and citations always do.
void translate_names(catalog::Catalog& catalog);

// What a list says of a pack beside its item. Empty for a single piece, of which the item says it all.
QString pack_words(const std::string& name);

} // namespace loam::words
