#include "app/desk/views/sheet.hpp"

#include <QAccessible>
#include <QAccessibleEvent>
#include <QPainter>
#include <algorithm>

#include "app/desk/look/theme.hpp"
#include "app/drawing/in_hand.hpp"
#include "app/drawing/probe.hpp"
#include "app/words/verdicts.hpp"

namespace loam::desk {

Sheet::Sheet(QWidget* parent) : QWidget(parent)
{
    setMinimumSize(320, 260);
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
}

void Sheet::redraw()
{
    drawn_ = QPixmap();
    say_what_is_chosen();
    update();
}

QRectF Sheet::area() const
{
    return {shift_, QSizeF(size()) * zoom_};
}

void Sheet::zoom_by(double factor, const QPointF& about)
{
    constexpr double closest = 8.0;
    const double wanted = std::clamp(zoom_ * factor, 1.0, closest);
    shift_ = about - (about - shift_) * (wanted / zoom_); // what is under the pointer stays there
    zoom_ = wanted;
    keep_in_sight();
}

void Sheet::show_whole()
{
    zoom_ = 1.0;
    keep_in_sight();
}

// The enlarged drawing always fills the sheet.
void Sheet::keep_in_sight()
{
    const QSizeF least = QSizeF(size()) * (1.0 - zoom_);
    shift_ = {std::clamp(shift_.x(), std::min(0.0, least.width()), 0.0),
              std::clamp(shift_.y(), std::min(0.0, least.height()), 0.0)};
    picture.in_view = zoom_ > 1.0 ? std::optional(QRectF(rect())) : std::nullopt;
    redraw();
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
        drawing::paint_probe(painter, *pointer_, area(), picture);
    }
    if (hasFocus()) {
        painter.setPen(QPen(picture.inks.accent, 2.0));
        painter.drawRect(rect().adjusted(1, 1, -2, -2));
    }
}

void Sheet::draw(const QSize& pixels)
{
    drawn_ = QPixmap(pixels);
    drawn_.setDevicePixelRatio(devicePixelRatio());
    picture.font = font();
    picture.inks = is_dark(palette()) ? drawing::Inks::dark() : drawing::Inks::light();
    QPainter painter(&drawn_);
    drawing::paint(painter, area(), picture);
}

void Sheet::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    redraw(); // palette or font, perhaps
}

void Sheet::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    keep_in_sight();
}

QString Sheet::name_of(const QString& id) const
{
    const std::string wanted = id.toStdString();
    for (const plan::Fitting& fitting : picture.enclosure.fittings) {
        if (fitting.id == wanted) {
            return words::fitting_kind(fitting.kind);
        }
    }
    for (const plan::Device& device : picture.enclosure.equipment) {
        if (device.id == wanted) {
            return words::device_kind(device.kind);
        }
    }
    return tr("cover");
}

// For those who hear the drawing instead of seeing it.
void Sheet::say_what_is_chosen()
{
    const auto what = drawing::placed_thing(picture.enclosure, picture.highlighted);
    const QString text =
        what ? QStringLiteral("%1, %2").arg(name_of(what->id),
                                            drawing::place_words(picture.enclosure, *what, picture.formatter))
             : tr("Nothing is chosen. Tab goes from one thing to the next.");
    if (text == accessibleDescription()) {
        return;
    }
    setAccessibleDescription(text);
    QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
}

void Sheet::edit(const QString& verb, const QString& field, const plan::Enclosure& changed)
{
    emit edited(verb.arg(name_of(picture.highlighted)), field, changed);
}

} // namespace loam::desk
