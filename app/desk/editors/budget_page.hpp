// Title, currency, place of law, horizon, what is owned already, what is needed otherwise, and lines of one's own.
#pragma once

#include "app/desk/editors/page.hpp"

namespace loam::desk {

class BudgetPage : public Page {
    Q_OBJECT

public:
    BudgetPage(FormState& state, QWidget* parent);

private:
    void add_wishes();
    void add_own_lines();
};

} // namespace loam::desk
