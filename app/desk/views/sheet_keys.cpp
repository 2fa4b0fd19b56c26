// The same by keyboard, and the menu of the thing that is chosen.
#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMenu>
#include <algorithm>

#include "app/desk/views/sheet.hpp"

namespace loam::desk {

namespace {

std::optional<QPointF> direction_of(int key)
{
    switch (key) {
    case Qt::Key_Left:
        return QPointF(-1.0, 0.0);
    case Qt::Key_Right:
        return QPointF(1.0, 0.0);
    case Qt::Key_Up: // away from the front, as on the drawing
        return QPointF(0.0, 1.0);
    case Qt::Key_Down:
        return QPointF(0.0, -1.0);
    default:
        return std::nullopt;
    }
}

} // namespace

// Undo is the window's; keys that the sheet itself takes must not be taken for shortcuts of menus.
bool Sheet::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool ours = key->key() == Qt::Key_Delete || key->matches(QKeySequence::Delete) ||
                          (key->key() == Qt::Key_D && key->modifiers() == Qt::ControlModifier);
        if (ours && !picture.highlighted.isEmpty()) {
            event->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

QString Sheet::burst(const QString& kind)
{
    constexpr qint64 pause_ms = 1500;
    const QString what = kind + QLatin1Char('-') + picture.highlighted;
    if (what != burst_kind_ || !burst_age_.isValid() || burst_age_.elapsed() > pause_ms) {
        ++bursts_;
    }
    burst_kind_ = what;
    burst_age_.start();
    return QStringLiteral("keys-%1-%2").arg(bursts_).arg(what);
}

void Sheet::step(const QPointF& by_m, bool resize)
{
    const QString& id = picture.highlighted;
    if (!drawing::placed_thing(picture.enclosure, id)) {
        return;
    }
    picture.in_hand = drawing::InHand{id, {}};
    if (resize) {
        edit(tr("Resize %1"), burst(QStringLiteral("resize")),
             drawing::resized(picture.enclosure, id, QSizeF(by_m.x(), by_m.y())));
    } else {
        edit(tr("Move %1"), burst(QStringLiteral("move")), drawing::moved(picture.enclosure, id, by_m));
    }
}

void Sheet::take_out()
{
    if (drawing::placed_thing(picture.enclosure, picture.highlighted)) {
        edit(tr("Take out %1"), {}, drawing::taken_out(picture.enclosure, picture.highlighted));
    }
}

void Sheet::duplicate()
{
    if (drawing::placed_thing(picture.enclosure, picture.highlighted)) {
        emit duplicateWanted(picture.highlighted);
    }
}

void Sheet::turn()
{
    const auto what = drawing::placed_thing(picture.enclosure, picture.highlighted);
    if (what && what->turnable) {
        edit(tr("Turn %1"), {}, drawing::turned(picture.enclosure, what->id));
    }
}

void Sheet::align(drawing::Alignment alignment)
{
    if (drawing::placed_thing(picture.enclosure, picture.highlighted)) {
        edit(tr("Align %1"), {}, drawing::aligned(picture.enclosure, picture.highlighted, alignment));
    }
}

void Sheet::keyPressEvent(QKeyEvent* event)
{
    const Qt::KeyboardModifiers with = event->modifiers() & ~Qt::KeypadModifier;
    if (const auto direction = direction_of(event->key())) {
        constexpr double coarse_m = 0.05;
        const double step_m = with.testFlag(Qt::ShiftModifier) ? coarse_m : drawing::raster_m;
        step(*direction * step_m, with.testFlag(Qt::ControlModifier));
        return;
    }
    switch (event->key()) {
    case Qt::Key_Escape:
        if (drag_) {
            cancel_drag();
        } else {
            choose(QString());
        }
        return;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        return take_out();
    case Qt::Key_D:
        return with == Qt::ControlModifier ? duplicate() : event->ignore();
    case Qt::Key_R:
        return with == Qt::NoModifier ? turn() : event->ignore();
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (!picture.highlighted.isEmpty()) {
            emit fieldWanted(picture.highlighted);
        }
        return;
    case Qt::Key_Plus:
        return zoom_by(1.25, QRectF(rect()).center());
    case Qt::Key_Minus:
        return zoom_by(0.8, QRectF(rect()).center());
    case Qt::Key_0:
        return show_whole();
    default:
        QWidget::keyPressEvent(event);
    }
}

// Tab goes from thing to thing, and after the last one on to the next control.
bool Sheet::focusNextPrevChild(bool next)
{
    const std::vector<drawing::Placed> things = drawing::placed_things(picture.enclosure);
    const auto at = std::find_if(things.begin(), things.end(),
                                 [this](const drawing::Placed& one) { return one.id == picture.highlighted; });
    const bool none = at == things.end();
    if (things.empty() || !hasFocus() || (!none && at == (next ? things.end() - 1 : things.begin()))) {
        return QWidget::focusNextPrevChild(next);
    }
    choose(none ? (next ? things.front().id : things.back().id) : (next ? (at + 1)->id : (at - 1)->id));
    return true;
}

void Sheet::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    const bool by_tab = event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason;
    if (by_tab) { // comes in at the end that Tab leads on from
        const std::vector<drawing::Placed> things = drawing::placed_things(picture.enclosure);
        if (!things.empty()) {
            choose(event->reason() == Qt::TabFocusReason ? things.front().id : things.back().id);
        }
    }
    update();
}

void Sheet::focusOutEvent(QFocusEvent* event)
{
    QWidget::focusOutEvent(event);
    picture.in_hand.reset();
    redraw();
}

void Sheet::contextMenuEvent(QContextMenuEvent* event)
{
    if (event->reason() == QContextMenuEvent::Mouse) {
        choose(drawing::element_at(event->pos(), area(), picture));
    }
    pointer_.reset(); // its readout would lie under the menu
    update();
    const auto what = drawing::placed_thing(picture.enclosure, picture.highlighted);
    QMenu menu(this);
    menu.setObjectName(QStringLiteral("sheetMenu"));
    const auto add = [&menu](QMenu& to, const QString& text, const char* name, const QKeySequence& keys, auto act) {
        QAction* action = to.addAction(text);
        action->setObjectName(QString::fromLatin1(name));
        action->setShortcut(keys);
        connect(action, &QAction::triggered, &menu, act);
        return action;
    };
    if (what) {
        add(menu, tr("&Show in the form"), "thingField", Qt::Key_Return,
            [this, id = what->id] { emit fieldWanted(id); });
        add(menu, tr("&Turn by a quarter"), "thingTurn", Qt::Key_R, [this] { turn(); })->setEnabled(what->turnable);
        add(menu, tr("&Duplicate"), "thingDuplicate", Qt::CTRL | Qt::Key_D, [this] { duplicate(); });
        QMenu& to = *menu.addMenu(tr("&Align with"));
        using enum drawing::Alignment;
        const std::tuple<QString, const char*, drawing::Alignment> places[] = {
            {tr("the &left wall"), "alignLeft", left},
            {tr("the &right wall"), "alignRight", right},
            {tr("the &front"), "alignFront", front},
            {tr("the &back"), "alignBack", back},
            {tr("the middle of the l&ength"), "alignMiddleLength", middle_of_length},
            {tr("the middle of the &width"), "alignMiddleWidth", middle_of_width}};
        for (const auto& [text, name, alignment] : places) {
            add(to, text, name, {}, [this, alignment = alignment] { align(alignment); });
        }
        add(menu, tr("Take &out"), "thingOut", Qt::Key_Delete, [this] { take_out(); });
        menu.addSeparator();
    }
    add(menu, tr("&Larger"), "sheetLarger", Qt::Key_Plus, [this] { zoom_by(1.25, QRectF(rect()).center()); });
    add(menu, tr("S&maller"), "sheetSmaller", Qt::Key_Minus, [this] { zoom_by(0.8, QRectF(rect()).center()); });
    add(menu, tr("&Whole box"), "sheetWhole", Qt::Key_0, [this] { show_whole(); })->setEnabled(zoom_ > 1.0);
    menu.exec(event->globalPos());
}

} // namespace loam::desk
