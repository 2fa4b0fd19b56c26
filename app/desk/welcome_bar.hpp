// A line above the drawing that tells a newcomer that this is an example, and offers to start their own plan.
#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace loam::desk {

class WelcomeBar : public QFrame {
    Q_OBJECT

public:
    explicit WelcomeBar(QWidget* parent = nullptr);

signals:
    void startOwn();
    void openFile();
    void tourWanted();
};

} // namespace loam::desk
