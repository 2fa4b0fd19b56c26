#include "app/sheets/typography.hpp"

#include "app/words/line_breaks.hpp"

namespace loam::sheets {

namespace {

struct KeepWhole {
    void operator()(Issuer&) const {} // the user's own text
    void operator()(Figure&) const {}
    void operator()(NewPage&) const {}
    void operator()(Title& title) const
    {
        title.text = words::figures_kept_whole(title.text);
        title.below = words::figures_kept_whole(title.below);
    }
    void operator()(Heading& heading) const { heading.text = words::figures_kept_whole(heading.text); }
    void operator()(Paragraph& paragraph) const { paragraph.text = words::figures_kept_whole(paragraph.text); }
    void operator()(Caution& caution) const { caution.text = words::figures_kept_whole(caution.text); }
    void operator()(Blank& blank) const { blank.label = words::figures_kept_whole(blank.label); }
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
                cell = words::figures_kept_whole(cell);
            }
        }
    }
};

} // namespace

void keep_figures_whole(Content& content)
{
    for (Block& block : content.blocks) {
        std::visit(KeepWhole{}, block);
    }
}

} // namespace loam::sheets
