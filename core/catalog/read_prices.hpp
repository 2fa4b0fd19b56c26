// Reading a price list from its JSON form, whichever text that came from.
#pragma once

#include "core/catalog/catalog.hpp"
#include "core/json/node.hpp"

namespace loam::catalog {

// Problems carry JSON Pointers into `node`; where there are any, the list is empty.
PriceListRead read_price_node(const json::Node& node);

} // namespace loam::catalog
