// Parts of the build sheet. Parts bear numbers on the drawing; the lists say what they are.
#pragma once

#include <QHash>

#include "app/sheets/contents.hpp"

namespace loam::sheets {

// Numbers from 1: fittings, devices, covers, in the order of the plan.
QHash<QString, QString> marks_of(const plan::Enclosure& enclosure);

// A box to be drawn to scale, and what of the page's height the drawing may take at most (0 to 1).
struct ToScale {
    const plan::Enclosure& enclosure;
    const Request& request;
    double share = 0.0;
};

// Plan and section to scale in black on white.
Figure scale_drawing(const ToScale& drawn);
// The scale of that drawing, 1:n, from ISO 5455 and between; for inches one at which an inch is a whole number of
// inches and 12, 24 a foot.
double scale_of(const ToScale& drawn);

// What scale, and how to check it on the paper.
QString scale_sentence(const ToScale& drawn);

void add_parts(Content& content, const plan::Enclosure& enclosure, const assess::EnclosureResult& result,
               const Request& request, const words::Speaker& speaker);
void add_wiring(Content& content, const plan::Enclosure& enclosure, const Request& request);
void add_order_of_assembly(Content& content, const plan::Enclosure& enclosure);

} // namespace loam::sheets
