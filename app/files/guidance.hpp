// The guidance that the program comes with, under the user's own.
#pragma once

#include <QString>
#include <QStringList>

#include "core/catalog/catalog.hpp"

namespace loam::files {

struct Guidance {
    catalog::Catalog catalog;
    QStringList problems; // one sentence each with file and place; the files named are left out
};

// The built-in catalog with the files of `folder` over it; an entry of the user's replaces one with the same id. What
// the program comes with is named in the language spoken now (words::speak).
Guidance load_guidance(const QString& folder);
Guidance load_guidance(); // with the user's own folder

// Where the user's own sheets, rules, materials and price lists are looked for. Need not exist.
QString user_guidance_folder();

} // namespace loam::files
