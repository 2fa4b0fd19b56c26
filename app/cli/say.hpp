// Results to standard output, messages to standard error, both as UTF-8.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <string_view>

#include "app/cli/exit_status.hpp"

namespace loam::cli {

QString say(const char* sentence); // in the reader's language
QString text(std::string_view utf8);

void tell(const QString& message); // to standard error, behind the program's name
void tell(const QStringList& messages);

// `file_trouble` where standard output can't take it all, for example on a full disk.
Exit put_out(const QByteArray& result);

} // namespace loam::cli
