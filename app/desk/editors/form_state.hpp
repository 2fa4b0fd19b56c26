// What the pages of the form share: the plan as it is shown, which enclosure is in view, how figures read.
#pragma once

#include <string>

#include "app/desk/document/runner.hpp"
#include "app/words/numbers.hpp"
#include "core/plan/plan.hpp"

namespace loam::desk {

struct FormState {
    plan::Plan plan;
    std::string enclosure; // id
    words::Formatter formatter;
    SharedCatalog catalog;
    SharedAssessment assessment;
};

// The enclosure with this id, or nullptr.
inline plan::Enclosure* enclosure_in(plan::Plan& plan, const std::string& id)
{
    for (plan::Enclosure& enclosure : plan.enclosures) {
        if (enclosure.id == id) {
            return &enclosure;
        }
    }
    return nullptr;
}

// The element with this id in a list, or nullptr.
template <class T> T* element_in(std::vector<T>& elements, const std::string& id)
{
    for (T& element : elements) {
        if (element.id == id) {
            return &element;
        }
    }
    return nullptr;
}

} // namespace loam::desk
