// Lamps, heaters, mats and what controls them.
#pragma once

#include "app/desk/editors/page.hpp"

namespace loam::desk {

class EquipmentPage : public Page {
    Q_OBJECT

public:
    EquipmentPage(FormState& state, QWidget* parent);

private:
    void build_uv_table(const std::function<plan::Device*(plan::Plan&)>& chosen,
                        const std::function<std::string(plan::Plan&)>& pointer);
};

} // namespace loam::desk
