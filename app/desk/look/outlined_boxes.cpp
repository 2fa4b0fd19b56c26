#include "app/desk/look/outlined_boxes.hpp"

#include <QPainter>
#include <QStyleOption>

namespace loam::desk {

OutlinedBoxes::OutlinedBoxes(QStyle* base) : QProxyStyle(base) {}

void OutlinedBoxes::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                                  const QWidget* widget) const
{
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    if (element != PE_IndicatorCheckBox && element != PE_IndicatorItemViewItemCheck) {
        return;
    }
    const QColor line = option->palette.color((option->state & State_Selected) != 0 ? QPalette::HighlightedText
                                                                                    : QPalette::PlaceholderText);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(line);
    painter->setBrush(Qt::NoBrush);
    painter->drawRoundedRect(QRectF(option->rect).adjusted(0.5, 0.5, -0.5, -0.5), 2.0, 2.0);
    painter->restore();
}

} // namespace loam::desk
