// Everything the menus can do, found by a few letters.
#pragma once

#include <QDialog>

class QAction;
class QLineEdit;
class QListWidget;
class QMenuBar;

namespace loam::desk {

class CommandFinder : public QDialog {
    Q_OBJECT

public:
    // Lists what can be done now: actions that are greyed out are not there.
    CommandFinder(const QMenuBar& menus, QWidget* parent);

    QAction* chosen() const { return chosen_; } // once accepted

protected:
    bool eventFilter(QObject* watched, QEvent* event) override; // arrow keys in the line move the list

private:
    void filter(const QString& text);
    void take();

    QLineEdit* line_;
    QListWidget* list_;
    QAction* chosen_ = nullptr;
};

} // namespace loam::desk
