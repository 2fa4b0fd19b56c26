// What all charts have in common: quiet lines, the window's own fonts and colours, numbers by locale.
#pragma once

#include <QtCharts/QAbstractAxis>
#include <QtCharts/QChart>

#include "app/words/numbers.hpp"

class QWidget;

namespace loam::desk {

// A chart without a legend in the colours of `of`. The caller's view takes it over.
QChart* quiet_chart(const QWidget& of, const words::Formatter& formatter);
void dress(QAbstractAxis& axis, const QWidget& of);

} // namespace loam::desk
