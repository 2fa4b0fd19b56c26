// Humidity at ground level over the hours of the chart above it: the likely line with its range as a band, what is
// asked for hatched, and a drop for each misting.
#pragma once

#include <QWidget>

#include "app/desk/views/course_targets.hpp"
#include "app/words/numbers.hpp"
#include "core/assess/assessment.hpp"

namespace loam::desk {

class HumidityStrip : public QWidget {
    Q_OBJECT

public:
    explicit HumidityStrip(QWidget* parent = nullptr);

    void show_course(const assess::CourseResult& course, const std::vector<HumidityBand>& targets,
                     const words::Formatter& formatter);
    // From where to where the hours run, in this widget's own coordinates.
    void align(double left, double right);

    QRectF plot() const; // where the hours run
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Scale {
        double low = 0.0;
        double high = 1.0;
        double step = 0.2;
    };
    Scale scale() const;
    QPointF place(double hour, double humidity) const;
    void paint_axis(QPainter& painter) const;
    void paint_dark_hours(QPainter& painter) const;
    void paint_targets(QPainter& painter) const;
    void paint_course(QPainter& painter) const;
    void paint_mistings(QPainter& painter) const;

    assess::CourseResult course_;
    std::vector<HumidityBand> targets_;
    words::Formatter formatter_;
    Scale scale_;
    double left_ = 60.0;
    double right_ = 300.0;
};

} // namespace loam::desk
