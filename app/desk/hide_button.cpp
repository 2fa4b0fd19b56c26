#include "app/desk/hide_button.hpp"

namespace loam::desk {

HideButton::HideButton(QWidget* bar) : QToolButton(bar)
{
    setText(QStringLiteral("✕"));
    setAutoRaise(true);
    setToolTip(tr("Hide this line"));
    setAccessibleName(tr("Hide this line"));
    connect(this, &QToolButton::clicked, bar, &QWidget::hide);
}

} // namespace loam::desk
