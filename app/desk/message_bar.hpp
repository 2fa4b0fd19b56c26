// A line that says what was not done and why; it goes away by itself with the next edit that works.
#pragma once

#include <QFrame>

class QLabel;

namespace loam::desk {

class MessageBar : public QFrame {
    Q_OBJECT

public:
    explicit MessageBar(QWidget* parent = nullptr);

    void say(const QString& what, const QString& why);

private:
    QLabel* text_;
};

} // namespace loam::desk
