// A line of a table begins with a capital letter, whatever its name begins with.
#pragma once

#include <QString>

namespace loam::words {

QString capitalised(const QString& text);

} // namespace loam::words
