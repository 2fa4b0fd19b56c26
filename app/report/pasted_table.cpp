#include "app/report/pasted_table.hpp"

#include "app/report/csv.hpp"

namespace loam::report {

namespace {

QString safe(const PastedCell& cell)
{
    return cell.figure ? cell.text : QString::fromStdString(no_formula(cell.text.toStdString()));
}

QString html_cell(const PastedCell& cell, const char* tag)
{
    return QStringLiteral("<%1%2>%3</%1>")
        .arg(QLatin1String(tag), cell.figure ? QStringLiteral(" align=\"right\"") : QString(),
             safe(cell).toHtmlEscaped());
}

QString html_row(const std::vector<PastedCell>& cells, const char* tag)
{
    QString row = QStringLiteral("<tr>");
    for (const PastedCell& cell : cells) {
        row += html_cell(cell, tag);
    }
    return row + QStringLiteral("</tr>\n");
}

QString line(const std::vector<PastedCell>& cells)
{
    QStringList texts;
    for (const PastedCell& cell : cells) {
        QString text = safe(cell);
        for (const QChar apart : {QLatin1Char('\t'), QLatin1Char('\n'), QLatin1Char('\r')}) {
            text.replace(apart, QLatin1Char(' '));
        }
        texts << text;
    }
    return texts.join(QLatin1Char('\t')) + QLatin1Char('\n');
}

} // namespace

QString pasted_html(const PastedTable& table)
{
    QString html = QStringLiteral("<html><head><meta charset=\"utf-8\"></head><body>\n<p><b>%1</b></p>\n<table "
                                  "border=\"1\" cellspacing=\"0\" cellpadding=\"3\">\n")
                       .arg(table.title.toHtmlEscaped());
    html += html_row(table.heads, "th");
    for (const std::vector<PastedCell>& row : table.rows) {
        html += html_row(row, "td");
    }
    html += QStringLiteral("</table>\n");
    for (const QString& note : table.notes) {
        html += QStringLiteral("<p>%1</p>\n").arg(note.toHtmlEscaped());
    }
    return html + QStringLiteral("</body></html>\n");
}

std::string pasted_csv(const PastedTable& table)
{
    const auto row = [](const std::vector<PastedCell>& cells) {
        std::vector<std::string> texts;
        texts.reserve(cells.size());
        for (const PastedCell& cell : cells) {
            texts.push_back(cell.figure ? csv_figure(cell.text.toStdString()) : csv_cell(cell.text.toStdString()));
        }
        return csv_row(texts);
    };
    std::string csv = row(table.heads);
    for (const std::vector<PastedCell>& cells : table.rows) {
        csv += row(cells);
    }
    return csv;
}

QString pasted_lines(const PastedTable& table)
{
    QString lines = line({{table.title}}) + line(table.heads);
    for (const std::vector<PastedCell>& row : table.rows) {
        lines += line(row);
    }
    for (const QString& note : table.notes) {
        lines += line({{note}});
    }
    return lines;
}

} // namespace loam::report
