// Price lists from JSON or CSV files and back; the file's ending tells which.
#pragma once

#include <QString>
#include <QStringList>

#include "app/files/plan_file.hpp"
#include "core/catalog/prices.hpp"

namespace loam::files {

struct PriceFile {
    catalog::PriceList prices;
    Failure failure = Failure::none;
    QStringList errors; // one sentence each with its place; empty: `prices` is good
};

// `path` "-" is standard input; what begins with a brace is taken for JSON there.
PriceFile read_prices(const QString& path);

// Atomic. Returns why the list was not saved, else an empty text.
QString write_prices(const catalog::PriceList& prices, const QString& path);

} // namespace loam::files
