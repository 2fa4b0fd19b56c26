// The columns of a price list as CSV: one row per pack, what belongs to the item or the list stands in each row.
// Each column is a place in the JSON form, so that both forms are held to the same rules by the same reader.
#pragma once

#include <array>
#include <string>
#include <string_view>

#include "core/json/node.hpp"

namespace loam::catalog {

enum class ColumnLevel { list, item, pack };
enum class ColumnKind { text, number, flag };

struct Column {
    std::string_view name;
    ColumnLevel level;
    std::string_view path; // within the list, item or pack, its steps joined by "/"
    ColumnKind kind = ColumnKind::text;
    bool required = false;          // the column must be there, though a cell of it may be empty where JSON allows
    std::string_view fallback = {}; // the column that counts where the cell is empty, or a text in '…'
};

inline constexpr std::array price_columns{
    Column{"item_id", ColumnLevel::item, "id", ColumnKind::text, true},
    Column{"item_name", ColumnLevel::item, "name", ColumnKind::text, true},
    Column{"serves", ColumnLevel::item, "serves", ColumnKind::text, true},
    Column{"category", ColumnLevel::item, "category", ColumnKind::text, true},
    Column{"unit", ColumnLevel::item, "unit", ColumnKind::text, true},
    Column{"fits_from", ColumnLevel::item, "fits_from", ColumnKind::number},
    Column{"fits_to", ColumnLevel::item, "fits_to", ColumnKind::number},
    Column{"pack_id", ColumnLevel::pack, "id", ColumnKind::text, true},
    Column{"pack_name", ColumnLevel::pack, "name", ColumnKind::text, true},
    Column{"amount_low", ColumnLevel::pack, "amount/low", ColumnKind::number, false, "amount_likely"},
    Column{"amount_likely", ColumnLevel::pack, "amount/likely", ColumnKind::number, true},
    Column{"amount_high", ColumnLevel::pack, "amount/high", ColumnKind::number, false, "amount_likely"},
    Column{"price_low", ColumnLevel::pack, "low", ColumnKind::number, false, "price_typical"},
    Column{"price_typical", ColumnLevel::pack, "typical", ColumnKind::number, true},
    Column{"price_high", ColumnLevel::pack, "high", ColumnKind::number, false, "price_typical"},
    Column{"mass_kg", ColumnLevel::pack, "mass_kg", ColumnKind::number},
    Column{"in_stock", ColumnLevel::pack, "in_stock", ColumnKind::flag},
    Column{"life_months_low", ColumnLevel::item, "life_months/low", ColumnKind::number},
    Column{"life_months_likely", ColumnLevel::item, "life_months/likely", ColumnKind::number},
    Column{"life_months_high", ColumnLevel::item, "life_months/high", ColumnKind::number},
    Column{"life_months_citation", ColumnLevel::item, "life_months/source/citation"},
    Column{"life_months_confidence", ColumnLevel::item, "life_months/source/confidence"},
    Column{"life_hours_low", ColumnLevel::item, "life_hours/low", ColumnKind::number},
    Column{"life_hours_likely", ColumnLevel::item, "life_hours/likely", ColumnKind::number},
    Column{"life_hours_high", ColumnLevel::item, "life_hours/high", ColumnKind::number},
    Column{"life_hours_citation", ColumnLevel::item, "life_hours/source/citation"},
    Column{"life_hours_confidence", ColumnLevel::item, "life_hours/source/confidence"},
    Column{"currency", ColumnLevel::list, "currency", ColumnKind::text, true},
    Column{"date", ColumnLevel::list, "date", ColumnKind::text, true},
    Column{"place", ColumnLevel::list, "place", ColumnKind::text, true},
    Column{"channel", ColumnLevel::list, "channel", ColumnKind::text, false, "'shop'"},
    Column{"list_title", ColumnLevel::list, "title", ColumnKind::text, false, "place"},
    Column{"delivery_low", ColumnLevel::list, "delivery/low", ColumnKind::number, false, "delivery_typical"},
    Column{"delivery_typical", ColumnLevel::list, "delivery/typical", ColumnKind::number},
    Column{"delivery_high", ColumnLevel::list, "delivery/high", ColumnKind::number, false, "delivery_typical"},
    Column{"delivery_free_from", ColumnLevel::list, "delivery/free_from", ColumnKind::number},
    Column{"tax_share", ColumnLevel::list, "tax_share", ColumnKind::number},
    Column{"minimum_order", ColumnLevel::list, "minimum_order", ColumnKind::number},
    Column{"illustrative", ColumnLevel::list, "illustrative", ColumnKind::flag, false, "'false'"},
};

// The member at `path`; nullptr where there is none.
const json::Node* at_path(const json::Node& object, std::string_view path);
// Puts it there, with the objects in between.
void put_at_path(json::Node& object, std::string_view path, json::Node value);

} // namespace loam::catalog
