// Which sheets are to be printed or saved.
#pragma once

#include <optional>
#include <vector>

#include "app/desk/session/settings.hpp"
#include "app/sheets/paper.hpp"

class QWidget;

namespace loam::desk {

// Asks, with a tick at each but those that were left out the last time; what is left out now is kept for the next time.
// nullopt where the user thought better of it.
std::optional<std::vector<sheets::Sheet>> ask_for_sheets(const std::vector<sheets::Sheet>& on_offer, Settings& settings,
                                                         QWidget* parent);

} // namespace loam::desk
