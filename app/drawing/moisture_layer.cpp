#include "app/drawing/moisture_layer.hpp"

#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/drawing/heat_layer.hpp"
#include "app/drawing/levels.hpp"
#include "app/words/verdicts.hpp"
#include "core/climate/condensation.hpp"

namespace loam::drawing {

namespace {

constexpr int most_lines = 6;
constexpr double hundred = 100.0;

QString percent(double humidity, const words::Formatter& formatter)
{
    return formatter.value(humidity, words::Quantity::fraction);
}

// Widened to steps of five per cent, and at least ten wide.
Span span_of(const std::vector<double>& humidity)
{
    constexpr double step = 0.05;
    double low = 1.0;
    double high = 0.0;
    for (const double here : humidity) {
        if (!std::isnan(here)) {
            low = std::min(low, here);
            high = std::max(high, here);
        }
    }
    low = std::floor(low / step) * step;
    high = std::ceil(high / step) * step;
    if (high - low < 2.0 * step) {
        low = std::max(0.0, high - 2.0 * step);
        high = low + 2.0 * step;
    }
    return {low, high, true};
}

std::vector<LevelLine> lines_of(const Span& span, const Target& target, const words::Formatter& formatter)
{
    std::vector<LevelLine> lines;
    if (target.min) {
        lines.push_back({*target.min, QObject::tr("at least %1").arg(percent(*target.min, formatter)), true});
    }
    if (target.max) {
        lines.push_back({*target.max, QObject::tr("at most %1").arg(percent(*target.max, formatter)), true});
    }
    for (const double level : round_levels(hundred * span.low, hundred * span.high, most_lines)) {
        const auto stands = [&](const LevelLine& line) { return std::abs(line.value - level / hundred) < 1e-6; };
        if (std::none_of(lines.begin(), lines.end(), stands)) {
            lines.push_back({level / hundred, percent(level / hundred, formatter), false});
        }
    }
    return lines;
}

const assess::HumidityCase* judged(const Picture& picture, const std::string& case_id)
{
    if (picture.result == nullptr) {
        return nullptr;
    }
    const auto& cases = picture.result->humidity;
    const auto found = std::find_if(cases.begin(), cases.end(),
                                    [&](const assess::HumidityCase& humidity) { return humidity.id == case_id; });
    return found != cases.end() ? &*found : nullptr;
}

QString with_humidity(const QString& place, const Range& humidity, const words::Formatter& formatter)
{
    return place + QStringLiteral("  ") + percent(humidity.likely, formatter);
}

// By the cool side the humidity is judged; what is being dragged is judged anew by the target of before.
FloorTag cool_tag(const Picture& picture, const assess::HeatCase& heat, const assess::HumidityCase* humidity)
{
    const Range& here = heat.detail.cool.humidity;
    const bool known = humidity != nullptr && humidity->relative_humidity;
    const bool dragged = &heat == picture.look;
    return {.area = heat.detail.cool.area,
            .caption = with_humidity(words::zone(assess::Zone::cool), here, picture.formatter),
            .verdict = !known    ? Verdict::not_known
                       : dragged ? judge(here, humidity->target).verdict
                                 : humidity->judgement.verdict,
            .over_area = false};
}

FloorTag warm_tag(const Picture& picture, const assess::HeatCase& heat)
{
    return {.area = heat.detail.warm.area,
            .caption = with_humidity(words::zone(assess::Zone::warm), heat.detail.warm.humidity, picture.formatter),
            .verdict = std::nullopt,
            .over_area = false};
}

QString condensation_note(const climate::CaseResult& detail, const words::Formatter& formatter)
{
    if (!detail.condensation) {
        return {};
    }
    const auto cold = climate::coldest_place(detail);
    return cold ? QObject::tr("condensation: %1, %2")
                      .arg(words::panel(cold->plane), whole_degrees(cold->inside_c, formatter))
                : QObject::tr("condensation: coldest pane, %1").arg(whole_degrees(detail.coldest_pane_c, formatter));
}

// The inner edge of a wall as the plan shows it, or of the top as the section does.
QLineF edge_of(climate::Plane plane, const Frame& frame)
{
    constexpr double inside_px = 6.0;
    const QRectF plan = frame.plan.adjusted(inside_px, inside_px, -inside_px, -inside_px);
    switch (plane) {
    case climate::Plane::front:
        return {plan.bottomLeft(), plan.bottomRight()};
    case climate::Plane::back:
        return {plan.topLeft(), plan.topRight()};
    case climate::Plane::left:
        return {plan.topLeft(), plan.bottomLeft()};
    case climate::Plane::right:
        return {plan.topRight(), plan.bottomRight()};
    case climate::Plane::floor:
    case climate::Plane::ceiling:
        break;
    }
    const QRectF section = frame.section.adjusted(inside_px, inside_px, -inside_px, -inside_px);
    return {section.topLeft(), section.topRight()};
}

} // namespace

std::optional<FloorLayer> moisture_on_floor(const Picture& picture)
{
    const assess::HeatCase* heat = case_in_view(picture);
    if (heat == nullptr || heat->detail.floor.humidity.empty()) {
        return std::nullopt;
    }
    const climate::FloorField& floor = heat->detail.floor;
    const assess::HumidityCase* humidity = judged(picture, heat->id);
    const Target target = humidity != nullptr ? humidity->target : Target{};
    FloorLayer layer;
    layer.values = floor.humidity;
    layer.grid = {floor.nx, floor.ny, floor.dx_m, floor.dy_m};
    layer.span = span_of(layer.values);
    layer.lines = lines_of(layer.span, target, picture.formatter);
    layer.tags = {warm_tag(picture, *heat), cool_tag(picture, *heat, humidity)};
    layer.low = percent(layer.span.low, picture.formatter);
    layer.high = percent(layer.span.high, picture.formatter);
    layer.legend =
        target.min || target.max
            ? QObject::tr("at ground level, target %1").arg(picture.formatter.target(target, words::Quantity::fraction))
            : QObject::tr("at ground level, likely");
    layer.note = condensation_note(heat->detail, picture.formatter);
    return layer;
}

void paint_drop(QPainter& painter, const QPointF& centre, const Inks& inks)
{
    constexpr double radius_px = 2.8;
    QPainterPath drop(centre - QPointF(0.0, 2.2 * radius_px));
    drop.quadTo(centre + QPointF(1.4 * radius_px, -0.2 * radius_px), centre + QPointF(0.0, radius_px));
    drop.quadTo(centre + QPointF(-1.4 * radius_px, -0.2 * radius_px), drop.elementAt(0));
    painter.setPen(QPen(inks.paper, 1.0));
    painter.setBrush(inks.accent);
    painter.drawPath(drop);
    painter.setBrush(Qt::NoBrush);
}

void paint_condensation(QPainter& painter, const Frame& frame, const Picture& picture)
{
    const assess::HeatCase* heat = picture.layer == Layer::moisture ? case_in_view(picture) : nullptr;
    const auto cold =
        heat != nullptr && heat->detail.condensation ? climate::coldest_place(heat->detail) : std::nullopt;
    if (!cold) {
        return;
    }
    constexpr double apart_px = 16.0;
    const QLineF edge = edge_of(cold->plane, frame);
    const int drops = std::max(2, static_cast<int>(edge.length() / apart_px));
    for (int drop = 0; drop <= drops; ++drop) {
        paint_drop(painter, edge.pointAt(static_cast<double>(drop) / drops), picture.inks);
    }
}

} // namespace loam::drawing
