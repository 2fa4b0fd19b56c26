// What is laid over the floor: the chosen layer's field as colours and labelled lines, its tags and its legend. A layer
// says what its values are; how they look is decided once, here.
#pragma once

#include <QPainter>
#include <QString>
#include <optional>
#include <vector>

#include "app/drawing/colour_map.hpp"
#include "app/drawing/enclosure_drawing.hpp"
#include "app/drawing/isolines.hpp"
#include "app/drawing/shapes.hpp"

namespace loam::drawing {

// A place with its outline and a tag with its figure, and its verdict where it is judged. An area without extent has no
// outline.
struct FloorTag {
    climate::Rect area;
    QString caption;
    std::optional<Verdict> verdict; // absent: nothing is judged here
    bool over_area = false;         // else at the front edge, so that tags don't meet
};

struct LevelLine {
    double value = 0.0;
    QString caption;
    bool bound = false; // of a target: drawn stronger
};

struct FloorLayer {
    std::vector<double> values; // row by row from the front left; not a number: not known
    Grid grid;
    Span span; // of the colours
    std::vector<LevelLine> lines;
    std::vector<FloorTag> tags;
    QString low, high; // the ends of the legend
    QString legend;
    QString note; // beside the legend; its mark is painted with what it tells of
};

// nullopt: the chosen layer has nothing to show.
std::optional<FloorLayer> floor_layer(const Picture& picture);

void paint_floor(QPainter& painter, const Frame& frame, const Picture& picture, const FloorLayer& layer);
// After everything else, each where it covers no tag and no fitting; a line without such a place goes unlabelled.
void paint_line_labels(QPainter& painter, const Frame& frame, const Picture& picture, const FloorLayer& layer,
                       const std::vector<Shape>& shapes);
// Where the tags stand: nothing else is written there.
std::vector<QRectF> tag_boxes(const Frame& frame, const FloorLayer& layer, const QFont& font);
void paint_tags(QPainter& painter, const Frame& frame, const Picture& picture, const FloorLayer& layer);
void paint_legend(QPainter& painter, const Frame& frame, const Picture& picture, const FloorLayer& layer);

} // namespace loam::drawing
