// Temperatures over hours: a line for each place with its range as a band, targets hatched, harmful limits as lines,
// and a bar where the lamps are on. Lines differ in their strokes too, so that they can be told apart in grey.
#pragma once

#include <QtCharts/QChartView>

#include "app/desk/views/course_targets.hpp"
#include "app/words/numbers.hpp"
#include "core/assess/assessment.hpp"

namespace loam::desk {

class CourseChart : public QChartView {
    Q_OBJECT

public:
    explicit CourseChart(QWidget* parent = nullptr);

    void show_course(const assess::CourseResult& course, const std::vector<TargetBand>& targets,
                     const words::Formatter& formatter);

signals:
    // Where the hours run, from the first to the last, in the chart's own coordinates.
    void plotMoved(double left, double right);

protected:
    void drawBackground(QPainter* painter, const QRectF& rect) override; // targets, lit hours
    void drawForeground(QPainter* painter, const QRectF& rect) override; // limits, names of the lines
    void changeEvent(QEvent* event) override;

private:
    // In hours and the reader's own unit.
    struct Line {
        QString name;
        QPen pen;
        QPointF end;
    };
    struct Limit {
        QString name;
        double at = 0.0;
    };
    struct Scale {
        double low = 0.0;
        double high = 1.0;
        double step = 1.0;
        double last_h = 1.0;
    };

    void redraw();
    void tell_plot();
    Scale scale() const;
    double shown(double celsius) const;
    void add_line(QChart& chart, const QString& name, double climate::CoursePoint::*reading, const Range& spread_k,
                  const QPen& pen);
    void add_axes(QChart& chart, const QString& hours_since);
    void find_limits();
    QPointF place(double hour, double degrees) const; // in the scene
    void paint_target(QPainter& painter, const TargetBand& band) const;
    void paint_lit(QPainter& painter) const;
    void paint_limits(QPainter& painter) const;
    void paint_names(QPainter& painter) const;

    assess::CourseResult course_;
    std::vector<TargetBand> targets_;
    words::Formatter formatter_;
    Scale scale_;
    std::vector<Line> lines_;
    std::vector<Limit> limits_;
    std::vector<words::Hours> lit_;
};

} // namespace loam::desk
