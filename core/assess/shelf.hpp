// What a keeper has already, given out need by need, so that each thing that is owned lends its age to one need only.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/buying/need.hpp"
#include "core/buying/offer.hpp"
#include "core/plan/plan.hpp"

namespace loam::assess {

// A thing taken from the shelf: how long it has been in use, where that is stated.
struct Taken {
    std::optional<double> age_months;
    std::size_t entry = 0; // of the plan's list of what is owned
};

class Shelf {
public:
    // The offers must outlive the shelf.
    Shelf(const std::vector<plan::OwnedItem>& owned, const std::vector<buying::ItemOffer>& offers);

    // What of it meets the need, entries in the plan's order; nullopt: it has to be bought, and is new then.
    std::optional<Taken> take(const buying::Need& need);

private:
    struct Entry {
        const buying::ItemOffer* offer = nullptr; // nullptr: the list does not know the item
        double left = 0.0;
        std::optional<double> age_months;
    };
    std::vector<Entry> entries_;
};

} // namespace loam::assess
