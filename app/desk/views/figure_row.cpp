#include "app/desk/views/figure_row.hpp"

namespace loam::desk {

FigureRow figure_row(const QString& name, const Range& figure, words::Quantity quantity,
                     const words::Formatter& formatter, const QString& how)
{
    FigureRow row = said_row(name, formatter.value(figure.likely, quantity), how);
    row.range = figure.low == figure.high ? QString() : formatter.span(figure, quantity);
    row.why.title = name + QStringLiteral(": ") + formatter.range(figure, quantity);
    return row;
}

FigureRow said_row(const QString& name, const QString& text, const QString& how)
{
    FigureRow row{.name = name, .likely = text, .range = {}, .target = {}, .decided_by = {}, .why = {}};
    row.why.title = name + QStringLiteral(": ") + text;
    row.why.how = how;
    return row;
}

} // namespace loam::desk
