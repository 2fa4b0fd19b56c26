// The sheet that the enclosure is drawn on: tells what was clicked, lets lamps be dragged over the plan, and reads the
// chosen layer under the pointer.
#pragma once

#include <QPixmap>
#include <QWidget>
#include <optional>

#include "app/drawing/enclosure_drawing.hpp"

namespace loam::desk {

class Sheet : public QWidget {
    Q_OBJECT

public:
    explicit Sheet(QWidget* parent = nullptr);

    drawing::Picture picture;
    // After a change of `picture`.
    void redraw();

signals:
    void chosen(const QString& id); // empty: none
    void dragged(const QString& id, const QPointF& to_m, int drag);

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    void draw(const QSize& pixels);
    void show_cursor(const QPointF& point);

    struct Drag {
        drawing::Grip grip;
        QPointF pressed;
        bool moving = false;
    };

    QPixmap drawn_;
    std::optional<QPointF> pointer_;
    std::optional<Drag> drag_;
    int drags_ = 0;
};

} // namespace loam::desk
