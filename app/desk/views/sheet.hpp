// The sheet that the enclosure is drawn on: tells what was clicked, lets things be moved, resized and turned by mouse
// and keyboard, and reads the chosen layer under the pointer.
#pragma once

#include <QElapsedTimer>
#include <QPixmap>
#include <QWidget>
#include <optional>

#include "app/drawing/enclosure_drawing.hpp"
#include "app/drawing/placing.hpp"

namespace loam::desk {

class Sheet : public QWidget {
    Q_OBJECT

public:
    explicit Sheet(QWidget* parent = nullptr);

    drawing::Picture picture;
    // After a change of `picture`.
    void redraw();

    // What the drawing is laid out in: the sheet, or more of it where it is enlarged.
    QRectF area() const;
    double zoom() const { return zoom_; }
    void zoom_by(double factor, const QPointF& about);
    void show_whole();

    // Of the thing that is highlighted; nothing happens where there is none.
    void take_out();
    void duplicate();
    void turn();
    void align(drawing::Alignment alignment);

signals:
    void chosen(const QString& id); // empty: none
    // Edits with the same non-empty `field` are one step of undo.
    void edited(const QString& text, const QString& field, const loam::plan::Enclosure& changed);
    void duplicateWanted(const QString& id);
    void fieldWanted(const QString& id); // where the form says what the thing is

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

private:
    // What the mouse has taken hold of.
    struct Drag {
        enum class What { move, resize, pan } what = What::move;
        drawing::Placed thing;
        plan::Enclosure before;
        QPointF pressed;
        QPointF shift; // of the sheet, when it is panned
        bool moving = false;
    };

    void draw(const QSize& pixels);
    void show_cursor(const QPointF& point);
    std::optional<Drag> grip(const QPointF& point) const;
    void drag_to(const QPointF& point, bool free);
    void cancel_drag();
    void choose(const QString& id);
    void step(const QPointF& by_m, bool resize);
    // For keys that follow one another: they are one step of undo.
    QString burst(const QString& kind);
    void edit(const QString& verb, const QString& field, const plan::Enclosure& changed);
    QString name_of(const QString& id) const;
    void keep_in_sight();
    void say_what_is_chosen();

    QPixmap drawn_;
    std::optional<QPointF> pointer_;
    std::optional<Drag> drag_;
    int drags_ = 0;
    double zoom_ = 1.0;
    QPointF shift_; // of the enlarged area's corner
    QString burst_kind_;
    QElapsedTimer burst_age_;
    int bursts_ = 0;
};

} // namespace loam::desk
