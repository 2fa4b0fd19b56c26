// From the words of the command line to a command's arguments.
#pragma once

#include <variant>

#include "app/cli/command.hpp"

namespace loam::cli {

struct UsageError {
    QString message; // a sentence, with the nearest known name where one is likely
};

// `words` are those after the command's name. "--" ends the options; "-" is standard input.
std::variant<Arguments, UsageError> parse(const Command& command, const QStringList& words);

// "Did you mean “assess”?", or an empty text.
QString did_you_mean(const QString& mistyped, const QStringList& names);

} // namespace loam::cli
