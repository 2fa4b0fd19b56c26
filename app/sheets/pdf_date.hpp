// The one thing in a PDF of ours that hangs on the hour it was made in.
#pragma once

#include <QByteArray>
#include <chrono>

namespace loam::sheets {

// The file with this day, at noon in UTC, as its day of creation, so that the same plan and date give the same bytes at
// any hour and in any time zone. Where the date's length changes, the table of offsets and its own place move with what
// stands behind it. For files as QPdfWriter writes them (PDF 1.4, one table of offsets); another comes back as it is.
// Source: ISO 32000-1, 7.5.4 (cross-reference table), 7.5.5 (trailer), 7.9.4 (dates); from memory.
QByteArray dated_pdf(QByteArray pdf, std::chrono::year_month_day day);

} // namespace loam::sheets
