#include "app/words/line_breaks.hpp"

#include <QRegularExpression>

namespace loam::words {

QString figures_kept_whole(const QString& text)
{
    // A unit is up to three letters or signs after a digit and a space; a longer word may stand on the next line.
    static const QRegularExpression unit(QStringLiteral("(?<=\\d) (?=[\\p{L}°²³]{1,3}(?![\\p{L}\\d]))"));
    static const QRegularExpression dash(QStringLiteral("(?<=\\d)–(?=\\d)"));
    QString whole = text;
    whole.replace(unit, QString(QChar(0x00a0)));                         // no-break space
    whole.replace(dash, QString::fromUtf8("\xe2\x81\xa0–\xe2\x81\xa0")); // word joiners around it
    return whole;
}

} // namespace loam::words
