// Bowls, hides, rocks, logs, plants.
#pragma once

#include "app/desk/editors/page.hpp"

namespace loam::desk {

class FittingsPage : public Page {
    Q_OBJECT

public:
    FittingsPage(FormState& state, QWidget* parent);
};

} // namespace loam::desk
