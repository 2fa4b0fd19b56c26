// One reading on a track: its target hatched, where it stands now (a ring) and where a trial would bring it (a dot),
// with the figures and the verdict beside it.
#pragma once

#include <QWidget>

#include "app/words/numbers.hpp"
#include "app/words/verdicts.hpp"
#include "core/explain.hpp"

namespace loam::desk {

struct TrackReading {
    QString name; // "warm side, winter day"; said to who can't see the track
    words::Quantity quantity = words::Quantity::temperature;
    words::Subject subject = words::Subject::temperature;
    Target target;
    std::optional<Range> now;
    std::optional<Range> then; // absent: nothing is tried
};

// "52% → 68%"; "52%" where nothing is tried.
QString track_figures(const TrackReading& reading, const words::Formatter& formatter);
// Of what is tried, else of what is.
Judgement track_judgement(const TrackReading& reading);

class ReadingTrack : public QWidget {
    Q_OBJECT

public:
    explicit ReadingTrack(QWidget* parent = nullptr);

    void show_reading(const TrackReading& reading, const words::Formatter& formatter);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Scale {
        double low = 0.0;
        double high = 1.0;
    };
    Scale scale() const;
    void paint_target(QPainter& painter, const QRectF& track) const;
    void paint_range(QPainter& painter, const QRectF& track, const Range& range) const;
    double x_of(const QRectF& track, double value) const;

    TrackReading reading_;
    words::Formatter formatter_;
    Scale scale_;
};

} // namespace loam::desk
