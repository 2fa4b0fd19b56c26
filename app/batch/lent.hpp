// What the club lends to each adopter.
#pragma once

#include <QByteArray>
#include <QStringList>
#include <vector>

#include "core/catalog/catalog.hpp"
#include "core/plan/plan.hpp"

namespace loam::batch {

struct LentRead {
    std::vector<plan::OwnedItem> lent;
    QStringList errors; // "row 3, column item: …"; empty: `lent` is good
};

// CSV with the columns item (an id of the price list) and quantity (in its unit, above 0; empty: 1). Ids of the
// elements are such that `plan` does not use. All or nothing: what is lent concerns every adopter.
LentRead read_lent(const QByteArray& text, const catalog::PriceList& prices, const plan::Plan& plan);

} // namespace loam::batch
