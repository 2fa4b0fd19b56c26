// The cells of the table of prices, a row for each pack: what they show, and how what is typed becomes the list. Free
// of widgets.
#pragma once

#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "app/words/speaker.hpp"
#include "core/catalog/prices.hpp"

namespace loam::desk {

// In the order of the table. The columns of an item are the same in all rows of its packs.
enum class PriceColumn { item, need, fits, pack, amount, unit, low, typical, high, stock, mass, months, hours };
inline constexpr int price_column_count = 13;

struct PackPlace {
    std::size_t item = 0;
    std::size_t pack = 0;
    friend bool operator==(const PackPlace&, const PackPlace&) = default;
};

std::vector<PackPlace> pack_places(const catalog::PriceList& prices);

QString price_column_head(PriceColumn column);
QString price_column_help(PriceColumn column); // what may be written there
bool is_figure(PriceColumn column);            // to the right

QString price_cell(const catalog::PriceList& prices, const PackPlace& place, PriceColumn column,
                   const words::Speaker& speaker);

// Takes what was typed; `unit` and `need` take the stored code. Returns why it can't be taken, else an empty text, and
// then `prices` holds it.
QString take_price_cell(catalog::PriceList& prices, const PackPlace& place, PriceColumn column, const QString& typed,
                        const words::Formatter& format);

// The cell that a problem's JSON Pointer means; nullopt: the list as a whole.
struct PriceCell {
    PackPlace place;
    PriceColumn column = PriceColumn::item;
};
std::optional<PriceCell> cell_of_problem(const std::string& pointer);

} // namespace loam::desk
