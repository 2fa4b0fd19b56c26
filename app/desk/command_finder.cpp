#include "app/desk/command_finder.hpp"

#include <QAction>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QMenuBar>
#include <QVBoxLayout>

namespace loam::desk {

namespace {

QString plain(QString text)
{
    return text.remove(QLatin1Char('&')).remove(QChar(0x2026));
}

void collect(const QList<QAction*>& actions, const QString& path, QListWidget& list)
{
    for (QAction* action : actions) {
        if (action->isSeparator() || action->text().isEmpty()) {
            continue;
        }
        const QString name =
            path.isEmpty() ? plain(action->text()) : path + QStringLiteral(" › ") + plain(action->text());
        if (const QMenu* menu = action->menu()) {
            collect(menu->actions(), name, list);
        } else if (action->isEnabled()) {
            const QString keys = action->shortcut().toString(QKeySequence::NativeText);
            auto* item = new QListWidgetItem(keys.isEmpty() ? name : name + QStringLiteral("   ") + keys, &list);
            item->setData(Qt::UserRole, QVariant::fromValue(action));
            item->setToolTip(action->statusTip());
        }
    }
}

// Every word somewhere in it, in any order.
bool fits(const QString& name, const QStringList& words)
{
    for (const QString& word : words) {
        if (!name.contains(word, Qt::CaseInsensitive)) {
            return false;
        }
    }
    return true;
}

} // namespace

CommandFinder::CommandFinder(const QMenuBar& menus, QWidget* parent)
    : QDialog(parent), line_(new QLineEdit(this)), list_(new QListWidget(this))
{
    setObjectName(QStringLiteral("commandFinder"));
    setWindowTitle(tr("What do you want to do?"));
    line_->setObjectName(QStringLiteral("commandLine"));
    line_->setPlaceholderText(tr("A word of it, for example: print"));
    line_->setAccessibleName(tr("What to look for in the menus"));
    line_->installEventFilter(this);
    list_->setObjectName(QStringLiteral("commandList"));
    list_->setAccessibleName(tr("What the menus can do"));
    collect(menus.actions(), {}, *list_);
    auto* column = new QVBoxLayout(this);
    column->addWidget(line_);
    column->addWidget(list_, 1);
    connect(line_, &QLineEdit::textChanged, this, &CommandFinder::filter);
    connect(line_, &QLineEdit::returnPressed, this, &CommandFinder::take);
    connect(list_, &QListWidget::itemActivated, this, &CommandFinder::take);
    resize(520, 420);
    filter({});
}

void CommandFinder::filter(const QString& text)
{
    const QStringList words = text.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    int first = -1;
    for (int row = 0; row < list_->count(); ++row) {
        const bool shown = fits(list_->item(row)->text(), words);
        list_->item(row)->setHidden(!shown);
        first = shown && first < 0 ? row : first;
    }
    list_->setCurrentRow(first);
}

void CommandFinder::take()
{
    const QListWidgetItem* item = list_->currentItem();
    if (item != nullptr && !item->isHidden()) {
        chosen_ = item->data(Qt::UserRole).value<QAction*>();
        accept();
    }
}

bool CommandFinder::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == line_ && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Down || key == Qt::Key_Up || key == Qt::Key_PageDown || key == Qt::Key_PageUp) {
            QCoreApplication::sendEvent(list_, event);
            return true;
        }
    }
    return QDialog::eventFilter(watched, event);
}

} // namespace loam::desk
