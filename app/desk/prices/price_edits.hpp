// What can be done to a price list as a whole: rows added and taken out. Free of widgets.
#pragma once

#include <string>
#include <vector>

#include "app/desk/prices/price_cells.hpp"

namespace loam::desk {

// A further pack of the same item, after this one and like it, under an id of its own. Returns where it stands.
PackPlace add_pack(catalog::PriceList& prices, const PackPlace& like);

struct NewItem {
    std::string need; // a kind of need
    std::string name;
    std::string pack;
    Range amount = exactly(1.0);
    Decimal price; // low, typical and high alike, until the keeper knows better
};

// A further item under an id made of its name. Unit, category and useful life are those of the first item of `kinds`
// that meets the same need, with their source; nothing is assumed where there is none. Returns where it stands.
PackPlace add_item(catalog::PriceList& prices, const NewItem& wanted, const catalog::PriceList& kinds);

// An item goes with its last pack.
void remove_packs(catalog::PriceList& prices, const std::vector<PackPlace>& places);

} // namespace loam::desk
