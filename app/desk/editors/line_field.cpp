#include "app/desk/editors/line_field.hpp"

#include <QKeyEvent>

namespace loam::desk {

bool LineField::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride && !unfinished()) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) {
            event->ignore(); // the window's actions take it
            return false;
        }
    }
    return QLineEdit::event(event);
}

} // namespace loam::desk
