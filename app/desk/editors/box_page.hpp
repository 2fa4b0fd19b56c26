// The enclosure itself: name, stand, sides, materials, top and covers.
#pragma once

#include "app/desk/editors/page.hpp"

namespace loam::desk {

// Material ids of the catalog that serve a use, as options; what the plan holds is kept even where it is unknown.
std::vector<Option> material_options(const FormState& state, catalog::MaterialUse use);

class BoxPage : public Page {
    Q_OBJECT

public:
    BoxPage(FormState& state, QWidget* parent);

private:
    void build_shell();
    void build_panels();
    void build_linings();
    void build_top();
    void build_covers();
    void build_vents();
};

} // namespace loam::desk
