// The drawing as a file of its own: SVG, to be scaled and edited, or PNG.
#pragma once

#include <QByteArray>
#include <QString>

#include "app/drawing/enclosure_drawing.hpp"

class QWidget;

namespace loam::desk {

// As on paper: light, whole, with nothing chosen. Text stays text.
QByteArray drawing_as_svg(drawing::Picture picture, const QString& title);
QByteArray drawing_as_png(drawing::Picture picture); // twice the pixels of the SVG's size

// Asks for a path; the ending chooses the kind. Replaces the file in one step, or says why not. The path, empty where
// nothing was written.
QString export_drawing_asking(const drawing::Picture& picture, const QString& title, QWidget* parent);

} // namespace loam::desk
