#include "app/report/ics_lines.hpp"

namespace loam::report {

namespace {

constexpr qsizetype longest_line = 75; // octets, without the line break

bool continues_a_character(char octet)
{
    return (static_cast<unsigned char>(octet) & 0xc0U) == 0x80U;
}

} // namespace

QByteArray ics_text(const QString& text)
{
    QString escaped;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const QChar mark = text[i];
        if (mark == QLatin1Char('\r') && i + 1 < text.size() && text[i + 1] == QLatin1Char('\n')) {
            continue; // the line feed speaks for both
        }
        if (mark == QLatin1Char('\n') || mark == QLatin1Char('\r')) {
            escaped += QStringLiteral("\\n");
        } else if (mark == QLatin1Char('\\') || mark == QLatin1Char(';') || mark == QLatin1Char(',')) {
            escaped += QLatin1Char('\\');
            escaped += mark;
        } else {
            escaped += mark.category() == QChar::Other_Control ? QChar(QLatin1Char(' ')) : mark;
        }
    }
    return escaped.toUtf8();
}

QByteArray ics_line(std::string_view name, const QByteArray& value)
{
    const QByteArray whole = QByteArray(name.data(), static_cast<qsizetype>(name.size())) + ':' + value;
    QByteArray folded;
    qsizetype at = 0;
    qsizetype room = longest_line;
    while (whole.size() - at > room) {
        qsizetype end = at + room;
        while (end > at + 1 && continues_a_character(whole[end])) {
            --end;
        }
        folded += whole.mid(at, end - at) + "\r\n ";
        at = end;
        room = longest_line - 1; // the blank that marks a continued line counts
    }
    return folded + whole.mid(at) + "\r\n";
}

} // namespace loam::report
