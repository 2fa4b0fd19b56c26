// How wide the columns of a table are.
#pragma once

#include <QFontMetricsF>
#include <QString>
#include <vector>

namespace loam::sheets {

// Width of the widest part of a text that no line break may stand in.
double unbreakable_width(const QString& text, const QFontMetricsF& metrics);

// The room shared out by `shares`, where no column is narrower than its `least`: the others give what it lacks. Where
// all that does not fit, by `shares` alone. Both lists are of one size, lengths in one unit.
std::vector<double> column_widths(const std::vector<double>& shares, const std::vector<double>& least, double room);

} // namespace loam::sheets
