#include "app/sheets/pdf_date.hpp"

#include <optional>

namespace loam::sheets {

namespace {

// Where the table of offsets begins, as the end of the file says. nullopt: there is none to be found.
std::optional<qsizetype> table_of(const QByteArray& pdf)
{
    static const QByteArray mark("startxref\n");
    const qsizetype at = pdf.lastIndexOf(mark);
    if (at < 0) {
        return std::nullopt;
    }
    const qsizetype from = at + mark.size();
    bool good = false;
    const qsizetype table = pdf.mid(from, pdf.indexOf('\n', from) - from).toLongLong(&good);
    return good && pdf.mid(table, 5) == "xref\n" ? std::optional(table) : std::nullopt;
}

QByteArray ten_digits(qsizetype offset)
{
    return QByteArray::number(offset).rightJustified(10, '0');
}

// Every entry has 20 bytes: ten digits of offset, a blank, five of generation, a blank, "n" or "f", two of line end.
void move_entries(QByteArray& pdf, qsizetype table, qsizetype behind, qsizetype by)
{
    constexpr qsizetype entry_bytes = 20;
    qsizetype at = pdf.indexOf('\n', table + 5) + 1; // below "xref" and the count
    for (; at + entry_bytes <= pdf.size() && pdf.at(at) >= '0' && pdf.at(at) <= '9'; at += entry_bytes) {
        const qsizetype offset = pdf.mid(at, 10).toLongLong();
        if (pdf.at(at + 17) == 'n' && offset > behind) {
            pdf.replace(at, 10, ten_digits(offset + by));
        }
    }
}

} // namespace

QByteArray dated_pdf(QByteArray pdf, std::chrono::year_month_day day)
{
    static const QByteArray key("/CreationDate (");
    const qsizetype begin = pdf.indexOf(key);
    const qsizetype end = pdf.indexOf(')', begin);
    const auto table = table_of(pdf);
    if (begin < 0 || end < 0 || !table || *table < end) {
        return pdf;
    }
    const QByteArray date = "D:" + QByteArray::number(static_cast<int>(day.year())).rightJustified(4, '0') +
                            QByteArray::number(static_cast<unsigned>(day.month())).rightJustified(2, '0') +
                            QByteArray::number(static_cast<unsigned>(day.day())).rightJustified(2, '0') + "120000Z";
    const qsizetype from = begin + key.size();
    const qsizetype by = date.size() - (end - from);
    pdf.replace(from, end - from, date);
    move_entries(pdf, *table + by, begin, by);
    const qsizetype last = pdf.lastIndexOf("startxref\n") + 10;
    pdf.replace(last, pdf.indexOf('\n', last) - last, QByteArray::number(*table + by));
    return pdf;
}

} // namespace loam::sheets
