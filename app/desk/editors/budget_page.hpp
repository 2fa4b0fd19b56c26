// Title, currency, place of law, horizon, and what is owned already.
#pragma once

#include "app/desk/editors/page.hpp"

namespace loam::desk {

class BudgetPage : public Page {
    Q_OBJECT

public:
    BudgetPage(FormState& state, QWidget* parent);
};

} // namespace loam::desk
