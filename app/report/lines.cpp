#include "app/report/lines.hpp"

namespace loam::report {

namespace {

QString fitted(const Cell& cell)
{
    if (cell.width == 0) {
        return cell.text;
    }
    const QString text =
        cell.text.size() > cell.width ? cell.text.left(cell.width - 1) + QStringLiteral("…") : cell.text;
    return cell.right ? text.rightJustified(cell.width) : text.leftJustified(cell.width);
}

QString without_trailing_blanks(QString line)
{
    while (line.endsWith(QLatin1Char(' '))) {
        line.chop(1);
    }
    return line;
}

} // namespace

QString wrapped(const QString& first, const QString& text)
{
    const QString margin(first.size(), QLatin1Char(' '));
    QString result;
    QString line = first;
    bool empty = true;
    for (const QString& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        if (!empty && line.size() + 1 + word.size() > terminal_columns) {
            result += line + QLatin1Char('\n');
            line = margin;
            empty = true;
        }
        line += (empty ? QString() : QStringLiteral(" ")) + word;
        empty = false;
    }
    return result + without_trailing_blanks(line) + QLatin1Char('\n');
}

QString row(qsizetype indent, const std::vector<Cell>& cells)
{
    QString line(indent, QLatin1Char(' '));
    bool first = true;
    for (const Cell& cell : cells) {
        line += (first ? QString() : QStringLiteral("  ")) + fitted(cell);
        first = false;
    }
    return without_trailing_blanks(line).left(terminal_columns) + QLatin1Char('\n');
}

QString heading(const QString& text)
{
    const QString shown = text.size() > terminal_columns ? text.left(terminal_columns - 1) + QStringLiteral("…") : text;
    return QLatin1Char('\n') + shown + QLatin1Char('\n') + QString(shown.size(), QLatin1Char('-')) + QLatin1Char('\n');
}

} // namespace loam::report
