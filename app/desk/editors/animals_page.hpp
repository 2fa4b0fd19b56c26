// Who lives in the box.
#pragma once

#include "app/desk/editors/page.hpp"

namespace loam::desk {

class AnimalsPage : public Page {
    Q_OBJECT

public:
    AnimalsPage(FormState& state, QWidget* parent);

    using AnimalPlace = std::function<plan::Animal*(plan::Plan&)>;

private:
    // `pointer` is the JSON Pointer of the animal.
    void add_measurements(const AnimalPlace& animal, std::function<std::string(plan::Plan&)> pointer);
};

} // namespace loam::desk
