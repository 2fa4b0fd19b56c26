// Parts of the decision sheet that are not about animals, floor and money.
#pragma once

#include "app/sheets/contents.hpp"

namespace loam::sheets {

// Hours of care a week, by task, and how they were estimated.
void add_care_hours(Content& content, const Request& request, const words::Speaker& speaker);
// Where eggs are laid, and where a new or ill animal is kept apart.
void add_room_to_spare(Content& content, const Request& request, const words::Speaker& speaker);
// Whether the boxes pass doors and stairs, and how heavy they are.
void add_way_in(Content& content, const Request& request, const words::Speaker& speaker);
// That one animal is enough, hygiene, papers, vet, and what is particular to the species.
void add_company_and_law(Content& content, const Request& request, const words::Speaker& speaker);

} // namespace loam::sheets
