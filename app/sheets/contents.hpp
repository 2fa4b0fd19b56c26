// What each sheet says, as blocks.
#pragma once

#include "app/sheets/block.hpp"
#include "app/sheets/sheets.hpp"
#include "app/words/speaker.hpp"

namespace loam::sheets {

Content shopping_content(const Request& request, const words::Speaker& speaker);
Content budget_content(const Request& request, const words::Speaker& speaker);
Content winter_rest_content(const Request& request, const words::Speaker& speaker);
Content running_content(const Request& request, const words::Speaker& speaker);
Content year_content(const Request& request, const words::Speaker& speaker);

// Parts that several sheets share.
QString footer_of(const Request& request);
QString subtitle_of(const Request& request);
// Dangers first: a sheet never leaves them to another page of another sheet.
void add_dangers(Content& content, const Request& request, const words::Speaker& speaker);
// Inputs that were not stated, as lines to fill in, with the range that was used meanwhile: on the first sheet asked
// for; the others refer to it.
void add_unknowns(Content& content, Sheet here, const Request& request, const words::Speaker& speaker);
void add_cautions(Content& content);

} // namespace loam::sheets
