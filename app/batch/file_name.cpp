#include "app/batch/file_name.hpp"

namespace loam::batch {

namespace {

// Letters that don't fall apart into a base and its accents.
QString spelled_out(QString text)
{
    struct Pair {
        char16_t letter;
        const char* latin;
    };
    static constexpr Pair pairs[] = {{u'ß', "ss"}, {u'æ', "ae"}, {u'œ', "oe"}, {u'ø', "o"},
                                     {u'ł', "l"},  {u'đ', "d"},  {u'ð', "d"},  {u'þ', "th"}};
    for (const Pair& pair : pairs) {
        text.replace(QChar(pair.letter), QLatin1String(pair.latin));
    }
    return text;
}

QString slug_of(const QString& name)
{
    constexpr qsizetype longest = 40;
    const QString latin = spelled_out(name.left(200).toLower()).normalized(QString::NormalizationForm_KD);
    QString slug;
    for (const QChar letter : latin) {
        const char16_t code = letter.unicode();
        const bool kept = (code >= u'a' && code <= u'z') || (code >= u'0' && code <= u'9');
        if (kept) {
            slug += letter;
        } else if (letter.category() != QChar::Mark_NonSpacing && !slug.isEmpty() && !slug.endsWith(QLatin1Char('-'))) {
            slug += QLatin1Char('-');
        }
    }
    slug.truncate(longest);
    while (slug.endsWith(QLatin1Char('-'))) {
        slug.chop(1);
    }
    return slug.isEmpty() ? QStringLiteral("adopter") : slug;
}

} // namespace

QString pdf_name(std::size_t row, const QString& name)
{
    return QStringLiteral("%1-%2.pdf").arg(row, 4, 10, QLatin1Char('0')).arg(slug_of(name));
}

} // namespace loam::batch
