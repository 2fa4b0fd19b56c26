// What has to be there, before anyone asks in which packs it is sold.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace loam::buying {

struct Need {
    std::string kind;    // as price lists name it, for example "substrate.coir-chips"
    double amount = 0.0; // in `unit`; it is covered in full, so give the amount that must not run short
    std::string unit;
    std::optional<double> fits_value; // what chooses among the items of a kind: watts, floor area, outlets
    std::vector<std::string> enclosures;
    std::string why;    // a code that app/words knows
    std::string where;  // the plan element it comes from
    std::string item{}; // the only one that will do; empty: whatever serves the kind
    friend bool operator==(const Need&, const Need&) = default;
};

struct Owned {
    std::string item;      // id of the price list
    double quantity = 0.0; // in the item's unit
    friend bool operator==(const Owned&, const Owned&) = default;
};

} // namespace loam::buying
