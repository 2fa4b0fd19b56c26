// What each sheet says, as blocks.
#pragma once

#include <QSizeF>

#include "app/sheets/block.hpp"
#include "app/sheets/sheets.hpp"
#include "app/words/speaker.hpp"

namespace loam::sheets {

Content decision_content(const Request& request, const words::Speaker& speaker);
Content shopping_content(const Request& request, const words::Speaker& speaker);
Content budget_content(const Request& request, const words::Speaker& speaker);
// `drawing_share`: what of a page's height a drawing may take at most, 0 to 1.
Content build_content(const Request& request, const words::Speaker& speaker, double drawing_share);
Content proving_content(const Request& request, const words::Speaker& speaker);
Content holiday_content(const Request& request, const words::Speaker& speaker);
Content winter_rest_content(const Request& request, const words::Speaker& speaker);
Content running_content(const Request& request, const words::Speaker& speaker);
Content year_content(const Request& request, const words::Speaker& speaker);

// Of a page of this paper, within its margins.
QSizeF printable_pt(Paper paper);

// Parts that several sheets share.

// Its head (who hands it out, its title, the plan) and its footer; the rest is still to come.
Content begun(Sheet sheet, const Request& request);
// Dangers first: a sheet never leaves them to another page of another sheet.
void add_dangers(Content& content, const Request& request, const words::Speaker& speaker);
// Inputs that were not stated, as lines to fill in, with the range that was used meanwhile: on the shopping sheet, or
// the first one where that is not asked for; the others refer to it.
void add_unknowns(Content& content, Sheet here, const Request& request, const words::Speaker& speaker);
// The usual cautions, those that the reader of this sheet needs.
void add_cautions(Content& content, Sheet here);
// Things to write in by hand side by side: short labels over cells.
void add_cells(Content& content, const QStringList& labels, std::size_t rows = 1);
// Blanks for who paid and who agreed.
void add_sign_off(Content& content);
// A blank of a table's cell.
QString cell_blank();

} // namespace loam::sheets
