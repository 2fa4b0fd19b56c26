// The cross at the end of a bar; pressing it hides the bar.
#pragma once

#include <QToolButton>

namespace loam::desk {

class HideButton : public QToolButton {
    Q_OBJECT

public:
    explicit HideButton(QWidget* bar);
};

} // namespace loam::desk
