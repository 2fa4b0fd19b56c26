// A year in two strips over the same months: when the lamps are on, with the length of the day outside, and how many
// kilowatt-hours each month takes. Left and right move from month to month.
#pragma once

#include <QWidget>

#include "app/words/numbers.hpp"
#include "core/assess/assessment.hpp"

namespace loam::desk {

class YearStrip : public QWidget {
    Q_OBJECT

public:
    explicit YearStrip(QWidget* parent = nullptr);

    void show_year(const assess::EnclosureResult& enclosure, const words::Formatter& formatter);
    int month() const { return month_; } // 1..12
    void choose_month(int month);

    QSize minimumSizeHint() const override { return {260, 150}; }

signals:
    void monthChosen(int month);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    struct Frame { // of one strip, in the widget's own coordinates
        QRectF area;
        double most = 24.0;
        double y_of(double value) const { return area.bottom() - area.height() * value / most; }
    };
    Frame light_frame() const;
    Frame energy_frame() const;
    double x_of(double months) const; // 0 is 1 January, 12 the year's end
    void paint_axes(QPainter& painter, const Frame& light, const Frame& energy) const;
    void paint_light(QPainter& painter, const Frame& frame) const;
    void paint_sky(QPainter& painter, const Frame& frame) const;
    void paint_energy(QPainter& painter, const Frame& frame) const;
    void paint_rest(QPainter& painter, const Frame& frame) const;

    std::vector<assess::LightDay> light_;
    std::array<Range, 12> month_kwh_{};
    words::Formatter formatter_;
    int month_ = 1;
};

} // namespace loam::desk
