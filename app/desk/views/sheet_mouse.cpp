// What the mouse does on the sheet: choosing, moving, resizing, enlarging.
#include <QApplication>
#include <QMouseEvent>
#include <cmath>

#include "app/desk/views/sheet.hpp"
#include "app/drawing/in_hand.hpp"
#include "app/drawing/snapping.hpp"

namespace loam::desk {

// The handle of what is chosen, else the thing at the point.
std::optional<Sheet::Drag> Sheet::grip(const QPointF& point) const
{
    Drag drag;
    drag.before = picture.enclosure;
    drag.pressed = point;
    const auto lit = drawing::placed_thing(picture.enclosure, picture.highlighted);
    if (lit && drawing::handle_of(*lit, drawing::lay_out(picture, area())).contains(point)) {
        drag.what = Drag::What::resize;
        drag.thing = *lit;
        return drag;
    }
    if (auto thing = drawing::placed_thing(picture.enclosure, drawing::thing_at(point, area(), picture))) {
        drag.thing = std::move(*thing);
        return drag;
    }
    return std::nullopt;
}

void Sheet::choose(const QString& id)
{
    emit chosen(id);
    setFocus(Qt::OtherFocusReason); // the form shows the thing, the keys stay here
}

void Sheet::mousePressEvent(QMouseEvent* event)
{
    const QPointF point = event->position();
    if (event->button() == Qt::MiddleButton) {
        drag_ = Drag{};
        drag_->what = Drag::What::pan;
        drag_->pressed = point;
        drag_->shift = shift_;
        setCursor(Qt::ClosedHandCursor);
        return;
    }
    auto taken = grip(point);
    if (!taken || taken->what != Drag::What::resize) {
        choose(drawing::element_at(point, area(), picture));
    }
    if (event->button() == Qt::LeftButton && taken) {
        drag_ = std::move(taken);
        setCursor(drag_->what == Drag::What::resize ? Qt::SizeBDiagCursor : Qt::ClosedHandCursor);
    }
}

void Sheet::mouseMoveEvent(QMouseEvent* event)
{
    pointer_ = event->position();
    if (!drag_) {
        show_cursor(*pointer_);
        update();
        return;
    }
    if (drag_->what == Drag::What::pan) {
        shift_ = drag_->shift + (*pointer_ - drag_->pressed);
        keep_in_sight();
        return;
    }
    if (!drag_->moving) { // a click that trembles moves nothing
        drag_->moving = (*pointer_ - drag_->pressed).manhattanLength() >= QApplication::startDragDistance();
        drags_ += drag_->moving ? 1 : 0;
    }
    if (drag_->moving) {
        drag_to(*pointer_, event->modifiers().testFlag(Qt::AltModifier));
    }
}

void Sheet::drag_to(const QPointF& point, bool free)
{
    const double scale = drawing::lay_out(picture, area()).pixels_per_m;
    const QPointF by_m((point.x() - drag_->pressed.x()) / scale, (drag_->pressed.y() - point.y()) / scale);
    const QString field = QStringLiteral("drag-%1-%2").arg(drags_).arg(drag_->thing.id);
    if (drag_->what == Drag::What::resize) {
        const double step_m = free ? 0.001 : drawing::raster_m;
        const auto stepped = [step_m](double value_m) { return std::round(value_m / step_m) * step_m; };
        picture.in_hand = drawing::InHand{drag_->thing.id, {}};
        edit(tr("Resize %1"), field,
             drawing::resized(drag_->before, drag_->thing.id, {stepped(by_m.x()), stepped(by_m.y())}));
        return;
    }
    constexpr double reach_px = 6.0;
    const drawing::Snapped to = drawing::snapped(drag_->before, drag_->thing, by_m, reach_px / scale, free);
    picture.in_hand = drawing::InHand{drag_->thing.id, to.guides};
    edit(tr("Move %1"), field, drawing::moved(drag_->before, drag_->thing.id, to.by_m));
}

void Sheet::cancel_drag()
{
    const Drag gone = std::move(*drag_);
    drag_.reset();
    picture.in_hand.reset();
    if (gone.moving) { // back to where it began: nothing is left to undo
        edit(tr("Move %1"), QStringLiteral("drag-%1-%2").arg(drags_).arg(gone.thing.id), gone.before);
    }
    unsetCursor();
    redraw();
}

void Sheet::mouseReleaseEvent(QMouseEvent* event)
{
    if (drag_ && (event->button() == Qt::LeftButton || event->button() == Qt::MiddleButton)) {
        drag_.reset();
        picture.in_hand.reset();
        show_cursor(event->position());
        redraw();
    }
}

void Sheet::mouseDoubleClickEvent(QMouseEvent* event)
{
    const QString id = drawing::element_at(event->position(), area(), picture);
    if (!id.isEmpty()) {
        emit fieldWanted(id);
    }
}

void Sheet::wheelEvent(QWheelEvent* event)
{
    if (event->modifiers().testFlag(Qt::ControlModifier)) {
        constexpr double notch = 120.0;
        zoom_by(std::pow(1.2, event->angleDelta().y() / notch), event->position());
    } else if (zoom_ > 1.0) {
        shift_ += QPointF(event->angleDelta());
        keep_in_sight();
    } else {
        QWidget::wheelEvent(event);
    }
}

void Sheet::leaveEvent(QEvent*)
{
    pointer_.reset();
    update();
}

void Sheet::show_cursor(const QPointF& point)
{
    const auto taken = grip(point);
    if (!taken) {
        unsetCursor();
    } else {
        setCursor(taken->what == Drag::What::resize ? Qt::SizeBDiagCursor : Qt::OpenHandCursor);
    }
}

} // namespace loam::desk
