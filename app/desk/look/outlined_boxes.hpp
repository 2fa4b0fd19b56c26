// Boxes to tick that can be seen on dark paper too: Fusion outlines them darker than the window, whatever its colour.
#pragma once

#include <QProxyStyle>

namespace loam::desk {

class OutlinedBoxes : public QProxyStyle {
    Q_OBJECT

public:
    explicit OutlinedBoxes(QStyle* base);

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
};

} // namespace loam::desk
