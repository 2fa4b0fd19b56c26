// What core itself names among the costs; items have the names of the price list.
#pragma once

#include <QString>
#include <string>

namespace loam::words {

QString cost_name(const std::string& name); // in the reader's language; what is not core's own stays as it is

} // namespace loam::words
