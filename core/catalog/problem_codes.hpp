// The codes that guidance and price files add to those of core/json/problem_codes.hpp, with what their `args` hold.
// app/words keeps a sentence for each.
#pragma once

#include <array>
#include <string_view>

namespace loam::catalog::problem {

// One file. `where` is a JSON Pointer.
inline constexpr std::string_view out_of_order = "out-of-order";       // {lower key, its value, upper key, its value}
inline constexpr std::string_view not_exactly_one = "not-exactly-one"; // {names joined by ", "}
inline constexpr std::string_view duplicate_id = "duplicate-id";       // {id}
inline constexpr std::string_view unknown_format = "unknown-format";   // {format as written}
inline constexpr std::string_view classes_order = "classes-order";     // {}: not ascending, or an open class not last
inline constexpr std::string_view shares_exceed_one = "shares-exceed-one"; // {sum}
inline constexpr std::string_view missing_for_use = "missing-for-use";     // {key, use}
inline constexpr std::string_view unknown_currency = "unknown-currency";   // {code}
inline constexpr std::string_view too_many_decimals = "too-many-decimals"; // {price, currency, its minor digits}
inline constexpr std::string_view not_a_need_kind = "not-a-need-kind";     // {text}
inline constexpr std::string_view no_such_date = "no-such-date";           // {text}

// Several files together. `file` is "species/<id>" and so on.
inline constexpr std::string_view unknown_rule = "unknown-rule";         // {rule id}
inline constexpr std::string_view unknown_material = "unknown-material"; // {material id}
inline constexpr std::string_view not_a_substrate = "not-a-substrate";   // {material id}
inline constexpr std::string_view measure_differs = "measure-differs";   // {rule id, its measure, the species' one}
inline constexpr std::string_view unserved_need = "unserved-need";       // {need kind}
inline constexpr std::string_view missing_device = "missing-device";     // {kind}

// A price list as CSV. `where` is "row 3, column price_low" (rows count from 1, the header), or "row 3", or empty.
inline constexpr std::string_view csv_open_quote = "csv-open-quote";             // {}: a quote is never closed
inline constexpr std::string_view csv_stray_quote = "csv-stray-quote";           // {}: text beside a quoted cell
inline constexpr std::string_view csv_too_many_rows = "csv-too-many-rows";       // {greatest count}
inline constexpr std::string_view csv_cell_count = "csv-cell-count";             // {cells, columns}
inline constexpr std::string_view csv_missing_column = "csv-missing-column";     // {column}
inline constexpr std::string_view csv_unknown_column = "csv-unknown-column";     // {column[, nearest known one]}
inline constexpr std::string_view csv_duplicate_column = "csv-duplicate-column"; // {column}
inline constexpr std::string_view csv_not_a_number = "csv-not-a-number";         // {text}
inline constexpr std::string_view csv_not_a_flag = "csv-not-a-flag";             // {text}: neither true nor false
inline constexpr std::string_view csv_differs = "csv-differs";                   // {text, text of the first such row}
inline constexpr std::string_view csv_no_rows = "csv-no-rows";                   // {}

inline constexpr std::array all{out_of_order,      not_exactly_one,    duplicate_id,       unknown_format,
                                classes_order,     shares_exceed_one,  missing_for_use,    unknown_currency,
                                too_many_decimals, not_a_need_kind,    no_such_date,       unknown_rule,
                                unknown_material,  not_a_substrate,    measure_differs,    unserved_need,
                                missing_device,    csv_open_quote,     csv_stray_quote,    csv_too_many_rows,
                                csv_cell_count,    csv_missing_column, csv_unknown_column, csv_duplicate_column,
                                csv_not_a_number,  csv_not_a_flag,     csv_differs,        csv_no_rows};

} // namespace loam::catalog::problem
