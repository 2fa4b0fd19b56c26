// The layers of the bed, from the base pane upwards.
#pragma once

#include "app/desk/editors/page.hpp"

namespace loam::desk {

class BedPage : public Page {
    Q_OBJECT

public:
    BedPage(FormState& state, QWidget* parent);
};

} // namespace loam::desk
