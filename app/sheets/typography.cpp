#include "app/sheets/typography.hpp"

#include <QRegularExpression>

namespace loam::sheets {

namespace {

struct KeepWhole {
    void operator()(Issuer&) const {} // the user's own text
    void operator()(Figure&) const {}
    void operator()(NewPage&) const {}
    void operator()(Title& title) const
    {
        title.text = figures_kept_whole(title.text);
        title.below = figures_kept_whole(title.below);
    }
    void operator()(Heading& heading) const { heading.text = figures_kept_whole(heading.text); }
    void operator()(Paragraph& paragraph) const { paragraph.text = figures_kept_whole(paragraph.text); }
    void operator()(Caution& caution) const { caution.text = figures_kept_whole(caution.text); }
    void operator()(Blank& blank) const { blank.label = figures_kept_whole(blank.label); }
    void operator()(Together& together) const
    {
        for (Caution& caution : together.cautions) {
            (*this)(caution);
        }
    }
    void operator()(Table& table) const
    {
        for (Row& row : table.rows) {
            for (QString& cell : row.cells) {
                cell = figures_kept_whole(cell);
            }
        }
    }
};

} // namespace

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

void keep_figures_whole(Content& content)
{
    for (Block& block : content.blocks) {
        std::visit(KeepWhole{}, block);
    }
}

} // namespace loam::sheets
