// The columns of a list of adopters: what each sets in the plan, and in which unit its cells count.
#pragma once

#include <span>
#include <string_view>

namespace loam::batch {

enum class CellKind {
    person, // who it is for, and how they read: not in the plan
    text,   // as the plan file has it; the plan's own reader judges the word
    number,
    whole,
    price,   // a decimal, kept as written
    animals, // how many, or which
    owned    // items of the price list
};

struct Column {
    std::string_view name;
    std::string_view path; // from the plan's root; "@" is the enclosure that the row is about
    CellKind kind = CellKind::text;
    std::string_view means; // for the documentation
    double factor = 1.0;    // stored = (typed - offset) * factor
    double offset = 0.0;
};

std::span<const Column> columns();
const Column* find_column(std::string_view name); // nullptr where there is none

// Whether it sets the size of the box.
bool is_box(const Column& column);
// Whether it concerns one enclosure.
bool is_of_enclosure(const Column& column);

} // namespace loam::batch
