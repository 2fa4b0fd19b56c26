// One line of the order as an item of its table.
#pragma once

#include <QTreeWidgetItem>

#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"

namespace loam::desk {

enum ShoppingColumn { item_column, packs_column, each_column, total_column, left_column, why_column };

// Ticked where all of it is owned, half ticked where a part is; no box where it can't be.
QTreeWidgetItem* shopping_item(const assess::ShoppingLine& line, const plan::Plan& plan, const words::Speaker& speaker);

} // namespace loam::desk
