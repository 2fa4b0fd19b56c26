// Who lives in the box.
#pragma once

#include "app/desk/editors/page.hpp"

namespace loam::desk {

class AnimalsPage : public Page {
    Q_OBJECT

public:
    AnimalsPage(FormState& state, QWidget* parent);
};

} // namespace loam::desk
