// What is said of cells in several places. Internal to app/batch.
#pragma once

#include <QString>
#include <string_view>

#include "core/catalog/catalog.hpp"

namespace loam::batch {

QString text(std::string_view utf8);
QString shown(const QString& typed); // cut where it is long
// Each with what was probably meant.
QString no_such_item(const QString& item, const catalog::PriceList& prices);
QString no_such_species(const QString& species, const catalog::Catalog& catalog);

} // namespace loam::batch
