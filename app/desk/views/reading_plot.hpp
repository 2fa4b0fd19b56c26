// What thermometers read against what was expected: one line for each reading, degrees across.
#pragma once

#include <QWidget>
#include <vector>

#include "app/words/numbers.hpp"
#include "core/assess/calibration_result.hpp"

namespace loam::desk {

class ReadingPlot : public QWidget {
    Q_OBJECT

public:
    explicit ReadingPlot(QWidget* parent = nullptr);

    void show_calibration(const assess::CalibrationResult& calibration, const words::Formatter& formatter);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override; // a tool tip for each line

private:
    struct Scale {
        double low_c = 0.0;
        double high_c = 1.0;
        double step_c = 1.0;
    };
    Scale scale() const;
    QRectF plot() const;
    double x_of(double celsius) const;
    double y_of(std::size_t row) const;
    QString name_of(const assess::ReadingResult& reading) const;
    void paint_grid(QPainter& painter) const;
    void paint_row(QPainter& painter, std::size_t row) const;
    void paint_key(QPainter& painter) const;

    std::vector<assess::ReadingResult> readings_;
    words::Formatter formatter_;
    Scale scale_;
};

} // namespace loam::desk
