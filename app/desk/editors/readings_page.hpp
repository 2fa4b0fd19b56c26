// What thermometers read in the box.
#pragma once

#include "app/desk/editors/page.hpp"

namespace loam::desk {

class ReadingsPage : public Page {
    Q_OBJECT

public:
    ReadingsPage(FormState& state, QWidget* parent);
};

} // namespace loam::desk
