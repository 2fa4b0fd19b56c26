// The order as one walks through it: by where a thing will stand, then by what kind of thing it is.
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "app/report/pasted_table.hpp"
#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"

namespace loam::report {

struct ShoppingGroup {
    catalog::Category category = catalog::Category::other;
    std::vector<const assess::ShoppingLine*> lines; // of the assessment, in its order
};

struct ShoppingPlace {
    QString title; // "Turtle table", "All enclosures", "Whole site"
    std::vector<ShoppingGroup> groups;
    std::optional<MoneyRange> total; // of the lines with a price; absent: none has one
};

// Single enclosures in the plan's order, then what several share, then what is of no enclosure.
std::vector<ShoppingPlace> shopping_places(const assess::Assessment& assessment, const words::Speaker& speaker);

PastedTable shopping_table(const assess::Assessment& assessment, const words::Speaker& speaker);

} // namespace loam::report
