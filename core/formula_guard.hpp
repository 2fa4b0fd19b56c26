// Text from people in files that spreadsheets open.
#pragma once

#include <string_view>

namespace loam {

// Whether a spreadsheet may run the cell as a formula: after any blanks it begins with = + - or @, plain or full-width,
// or it begins with a tab or a carriage return. An apostrophe before it prevents that.
// Source: OWASP, "CSV Injection" (from memory); leading blanks and full-width signs are our own caution.
bool reads_as_formula(std::string_view cell);

} // namespace loam
