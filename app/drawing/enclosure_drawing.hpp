// One enclosure to scale: the plan (seen from above) over the section (seen from the front), sharing one scale and
// aligned along the length, with dimension lines, the predicted temperatures and the fittings.
#pragma once

#include <QColor>
#include <QFont>
#include <QHash>
#include <QLineF>
#include <QPainter>
#include <QRectF>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "app/words/numbers.hpp"
#include "core/assess/assessment.hpp"
#include "core/plan/plan.hpp"

namespace loam::drawing {

struct Inks {
    QColor paper, ink, faint, line, accent, glass;
    bool on_dark = false;

    static Inks light();
    static Inks print(); // black on white
    static Inks dark();
};

// What is laid over the floor.
enum class Layer { heat, uv, moisture };

// What the hand is about on the plan view.
struct InHand {
    QString id;
    std::vector<QLineF> guides; // what it came in line with, in metres on the floor
};

struct Picture {
    plan::Enclosure enclosure;
    const assess::EnclosureResult* result = nullptr; // nullptr: geometry only
    const assess::HeatCase* look = nullptr;          // of this very enclosure; goes before the case of the same name
    Layer layer = Layer::heat;
    bool unfolded = false; // walls and top too, where warmth is shown
    QString case_id = QStringLiteral("winter-day");
    QString highlighted; // element id
    bool stale = false;  // `result` is of an older enclosure
    std::optional<InHand> in_hand;
    bool grid = false;             // faint lines at round distances, on floor and section
    std::optional<QRectF> in_view; // the part of the area that is seen; absent: all of it. The legend stays in it.
    bool colours = true;           // false: for paper in black and white: isolines only, lines for hatches, no tint
    std::optional<double> pixels_per_m; // a scale that is set; absent: as large as the area lets it be
    QHash<QString, QString> marks;      // what stands at an element, by its id; empty: the names of the kinds
    words::Formatter formatter;
    Inks inks = Inks::light();
    QFont font;
};

// Where the two views lie on the page and how large one metre is.
struct Frame {
    QRectF plan;    // inner floor, seen from above; back on top
    QRectF section; // inner box from the base pane to the top, seen from the front
    QRectF legend;
    double pixels_per_m = 1.0;
    bool unfolded = false; // walls are folded out around the plan, and the top lies under the section
    QRectF top;
    double fold = 0.0; // between the plan and a wall
};

// Without walls.
Frame lay_out(const plan::Enclosure& enclosure, const QRectF& area, const QFont& font);
Frame lay_out(const Picture& picture, const QRectF& area);

// How large an area takes the drawing at a scale in this width: section beside the plan where it has the room, else
// below it, which may be wider than that.
QSizeF size_at(const plan::Enclosure& enclosure, double pixels_per_m, const QFont& font, double width);

void paint(QPainter& painter, const QRectF& area, const Picture& picture);

// The element drawn at this point of the area, topmost first; empty where there is none.
QString element_at(const QPointF& point, const QRectF& area, const Picture& picture);

// The same where the floor is seen from above; what is highlighted goes before what lies over it. Empty elsewhere.
QString thing_at(const QPointF& point, const QRectF& area, const Picture& picture);

} // namespace loam::drawing
