#include "app/desk/views/sheet.hpp"

#include <QApplication>
#include <QMouseEvent>
#include <QPainter>

#include "app/desk/look/theme.hpp"
#include "app/drawing/probe.hpp"

namespace loam::desk {

Sheet::Sheet(QWidget* parent) : QWidget(parent)
{
    setMinimumSize(320, 260);
    setFocusPolicy(Qt::ClickFocus);
    setMouseTracking(true);
}

void Sheet::redraw()
{
    drawn_ = QPixmap();
    update();
}

void Sheet::paintEvent(QPaintEvent*)
{
    // The drawing is kept: the pointer moves far more often than it changes.
    const QSize pixels = size() * devicePixelRatio();
    if (drawn_.size() != pixels) {
        draw(pixels);
    }
    QPainter painter(this);
    painter.drawPixmap(rect(), drawn_);
    if (pointer_ && !drag_) {
        drawing::paint_probe(painter, *pointer_, rect(), picture);
    }
}

void Sheet::draw(const QSize& pixels)
{
    drawn_ = QPixmap(pixels);
    drawn_.setDevicePixelRatio(devicePixelRatio());
    picture.font = font();
    picture.inks = is_dark(palette()) ? drawing::Inks::dark() : drawing::Inks::light();
    QPainter painter(&drawn_);
    drawing::paint(painter, rect(), picture);
}

void Sheet::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    redraw(); // palette or font, perhaps
}

void Sheet::mousePressEvent(QMouseEvent* event)
{
    emit chosen(drawing::element_at(event->position(), rect(), picture));
    if (event->button() != Qt::LeftButton) {
        return;
    }
    if (const auto grip = drawing::grip_at(event->position(), rect(), picture)) {
        drag_ = Drag{*grip, event->position()};
        setCursor(Qt::ClosedHandCursor);
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
    if (!drag_->moving) { // a click that trembles moves nothing
        drag_->moving = (*pointer_ - drag_->pressed).manhattanLength() >= QApplication::startDragDistance();
        drags_ += drag_->moving ? 1 : 0;
    }
    if (drag_->moving) {
        emit dragged(drag_->grip.device, drawing::dragged_to_m(drag_->grip, *pointer_, rect(), picture), drags_);
    }
}

void Sheet::mouseReleaseEvent(QMouseEvent* event)
{
    if (event->button() == Qt::LeftButton && drag_) {
        drag_.reset();
        show_cursor(event->position());
        update();
    }
}

void Sheet::leaveEvent(QEvent*)
{
    pointer_.reset();
    update();
}

void Sheet::show_cursor(const QPointF& point)
{
    if (drawing::grip_at(point, rect(), picture)) {
        setCursor(Qt::OpenHandCursor);
    } else {
        unsetCursor();
    }
}

} // namespace loam::desk
