// The lines of an iCalendar file (RFC 5545, section 3.1): no text of a user's can begin a line of its own.
#pragma once

#include <QByteArray>
#include <QString>
#include <string_view>

namespace loam::report {

// A TEXT value (3.3.11): backslash, semicolon and comma are escaped, each line break becomes "\n", other control
// characters a blank.
QByteArray ics_text(const QString& text);

// "NAME:value" with its CRLF, folded so that no line is longer than 75 octets and no UTF-8 sequence is torn. `value`
// has been escaped, or is of a kind that needs none.
QByteArray ics_line(std::string_view name, const QByteArray& value);

} // namespace loam::report
