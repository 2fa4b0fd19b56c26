// One line of the figures.
#pragma once

#include <QString>

#include "app/desk/views/explanation.hpp"
#include "app/words/numbers.hpp"
#include "core/explain.hpp"

namespace loam::desk {

struct FigureRow {
    QString name;
    QString likely;
    QString range;
    QString target;
    QString decided_by{}; // the input that widens the range most
    Explanation why;
};

// A figure with its range, which is left empty where it is exact.
FigureRow figure_row(const QString& name, const Range& figure, words::Quantity quantity,
                     const words::Formatter& formatter, const QString& how = {});
// What is said in words.
FigureRow said_row(const QString& name, const QString& text, const QString& how);

} // namespace loam::desk
