// What --help says.
#pragma once

#include <QString>

#include "app/cli/command.hpp"

namespace loam::cli {

QString general_help();
QString command_help(const Command& command);

} // namespace loam::cli
