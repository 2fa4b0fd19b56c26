// Walls and top with their temperatures: the walls folded out around the floor, the top beside them, all to the scale
// and in the colours of the floor.
#pragma once

#include <QPainter>
#include <optional>
#include <vector>

#include "app/drawing/enclosure_drawing.hpp"
#include "app/drawing/floor_layer.hpp"
#include "core/climate/panel_field.hpp"

namespace loam::drawing {

// Of the case in view; empty: none known.
const std::vector<climate::PanelField>& panels_in_view(const Picture& picture);

// From the coldest to the hottest inside of the walls; nullopt: none known.
std::optional<Span> wall_span(const Picture& picture);

// The hottest inside of what is closed; nullopt: nothing is.
std::optional<std::size_t> hottest_cell(const climate::PanelField& panel);

// A wall or the top on the page, from the base pane to the top, and a place on it: along it, and over the base pane (on
// the top: y).
QRectF panel_rect(const Frame& frame, const plan::Shell& shell, climate::Plane plane);
QPointF on_panel(const Frame& frame, climate::Plane plane, double along_m, double up_m);

struct PanelPlace {
    const climate::PanelField* panel = nullptr;
    std::size_t cell = 0;
};
// nullopt where the point is on no wall and not on the top, or below the bed's surface.
std::optional<PanelPlace> panel_at(const QPointF& point, const Frame& frame, const Picture& picture);

void paint_panels(QPainter& painter, const Frame& frame, const Picture& picture, const Span& colours);

} // namespace loam::drawing
