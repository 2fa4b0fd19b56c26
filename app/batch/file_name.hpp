// File names that no adopter's name can turn against the folder.
#pragma once

#include <QString>
#include <cstddef>

namespace loam::batch {

// "0012-anna-o-malley.pdf": the row as a spreadsheet counts, in at least four digits, then at most 40 characters of
// [a-z0-9-] made of the name. The number alone sets two files apart, and no name is a device's, a path's or hidden.
QString pdf_name(std::size_t row, const QString& name);

} // namespace loam::batch
