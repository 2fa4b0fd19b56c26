#include "app/desk/views/reading_track.hpp"

#include <QPainter>
#include <algorithm>

#include "app/desk/look/theme.hpp"
#include "app/drawing/enclosure_drawing.hpp"
#include "app/drawing/verdict_mark.hpp"

namespace loam::desk {

namespace {

constexpr double track_px = 10.0;
constexpr double edge_px = 8.0;

// So wide at least, that a small change stays small to the eye.
double least_span(words::Quantity quantity)
{
    return quantity == words::Quantity::fraction ? 0.5 : 12.0;
}

} // namespace

QString track_figures(const TrackReading& reading, const words::Formatter& formatter)
{
    if (!reading.now) {
        return QObject::tr("not known");
    }
    const QString now = formatter.value(reading.now->likely, reading.quantity);
    return reading.then ? QObject::tr("%1 → %2").arg(now, formatter.value(reading.then->likely, reading.quantity))
                        : now;
}

Judgement track_judgement(const TrackReading& reading)
{
    const std::optional<Range>& shown = reading.then ? reading.then : reading.now;
    return shown ? judge(*shown, reading.target) : Judgement{};
}

ReadingTrack::ReadingTrack(QWidget* parent) : QWidget(parent) {}

QSize ReadingTrack::sizeHint() const
{
    return {220, fontMetrics().height() + 22};
}

QSize ReadingTrack::minimumSizeHint() const
{
    return {150, fontMetrics().height() + 20};
}

void ReadingTrack::show_reading(const TrackReading& reading, const words::Formatter& formatter)
{
    reading_ = reading;
    formatter_ = formatter;
    scale_ = scale();
    const QString target = formatter.target(reading.target, reading.quantity);
    const QString verdict = words::verdict(track_judgement(reading), reading.subject);
    setAccessibleName(reading.name);
    setAccessibleDescription(QObject::tr("%1; target %2; %3").arg(track_figures(reading, formatter), target, verdict));
    setToolTip(QObject::tr("%1: %2\nNow %3\nTarget %4")
                   .arg(reading.name, verdict, formatter.range(reading.now, reading.quantity), target));
    update();
}

// The same for now and then, so that a marker moves and the track does not.
ReadingTrack::Scale ReadingTrack::scale() const
{
    std::vector<double> values;
    for (const std::optional<double>& bound : {reading_.target.min, reading_.target.max}) {
        if (bound) {
            values.push_back(*bound);
        }
    }
    for (const std::optional<Range>& range : {reading_.now, reading_.then}) {
        if (range) {
            values.insert(values.end(), {range->low, range->high});
        }
    }
    if (values.empty()) {
        return {};
    }
    const auto [low, high] = std::minmax_element(values.begin(), values.end());
    const double middle = (*low + *high) / 2.0;
    const double half = std::max(least_span(reading_.quantity), 1.1 * (*high - *low)) / 2.0;
    Scale scale{middle - half, middle + half};
    if (reading_.quantity == words::Quantity::fraction) {
        scale = {std::max(0.0, scale.low), std::min(1.0, scale.high)};
    }
    return scale;
}

double ReadingTrack::x_of(const QRectF& track, double value) const
{
    const double share = (value - scale_.low) / (scale_.high - scale_.low);
    return track.left() + track.width() * std::clamp(share, 0.0, 1.0);
}

void ReadingTrack::paint_target(QPainter& painter, const QRectF& track) const
{
    if (!reading_.target.min && !reading_.target.max) {
        return;
    }
    const double left = x_of(track, reading_.target.min.value_or(scale_.low));
    const double right = x_of(track, reading_.target.max.value_or(scale_.high));
    const QRectF band(left, track.top(), right - left, track.height());
    QColor ink = drawing::verdict_colour(Verdict::fits, is_dark(palette()));
    painter.setPen(QPen(ink, 1.2));
    if (reading_.target.min) {
        painter.drawLine(band.topLeft(), band.bottomLeft());
    }
    if (reading_.target.max) {
        painter.drawLine(band.topRight(), band.bottomRight());
    }
    ink.setAlphaF(0.55F);
    painter.fillRect(band, QBrush(ink, Qt::BDiagPattern));
}

void ReadingTrack::paint_range(QPainter& painter, const QRectF& track, const Range& range) const
{
    QColor ink = palette().color(QPalette::Text);
    ink.setAlphaF(0.22F);
    const double left = x_of(track, range.low);
    painter.fillRect(QRectF(left, track.center().y() - 2.0, x_of(track, range.high) - left, 4.0), ink);
}

void ReadingTrack::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool dark = is_dark(palette());
    const QFontMetricsF metrics(font());
    const QColor text = palette().color(QPalette::Text);
    const Judgement judgement = track_judgement(reading_);
    const double mark = metrics.height() * 0.75;
    drawing::paint_verdict_mark(painter, QRectF(edge_px, (metrics.height() - mark) / 2.0 + 1.0, mark, mark),
                                judgement.verdict, dark);
    painter.setPen(text);
    const QString figures = track_figures(reading_, formatter_);
    const QRectF line(edge_px + mark + 6.0, 1.0, width() - 2.0 * edge_px - mark - 6.0, metrics.height());
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, figures);
    painter.setPen(palette().color(QPalette::PlaceholderText));
    const double rest = line.width() - metrics.horizontalAdvance(figures) - 10.0;
    const QString verdict = words::verdict(judgement, reading_.subject);
    const bool fits = metrics.horizontalAdvance(verdict) <= rest; // else without its direction, which the track shows
    painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter,
                     metrics.elidedText(fits ? verdict : words::verdict(judgement.verdict), Qt::ElideRight, rest));
    const QRectF track(edge_px, metrics.height() + 6.0, width() - 2.0 * edge_px, track_px);
    painter.setPen(QPen(palette().color(QPalette::Mid), 1.0));
    painter.setBrush(palette().base());
    painter.drawRect(track);
    paint_target(painter, track);
    if (!reading_.now) {
        return;
    }
    const QColor accent = (dark ? drawing::Inks::dark() : drawing::Inks::light()).accent;
    paint_range(painter, track, reading_.then ? *reading_.then : *reading_.now);
    const QPointF now(x_of(track, reading_.now->likely), track.center().y());
    if (reading_.then) {
        const QPointF then(x_of(track, reading_.then->likely), track.center().y());
        painter.setPen(QPen(accent, 2.0));
        painter.drawLine(now, then);
        painter.setPen(QPen(palette().color(QPalette::Base), 1.0));
        painter.setBrush(accent);
        painter.drawEllipse(then, 5.5, 5.5);
    }
    painter.setPen(QPen(text, 1.8));
    painter.setBrush(reading_.then ? QBrush(Qt::NoBrush) : QBrush(palette().base()));
    painter.drawEllipse(now, 5.0, 5.0);
}

} // namespace loam::desk
