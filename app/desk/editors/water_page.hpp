// Light hours, misting and water changes.
#pragma once

#include "app/desk/editors/page.hpp"

namespace loam::desk {

class WaterPage : public Page {
    Q_OBJECT

public:
    WaterPage(FormState& state, QWidget* parent);
};

} // namespace loam::desk
