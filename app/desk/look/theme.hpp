// Light and dark palettes of the window. Calm paper tones; verdict colours are in app/drawing/verdict_mark.
#pragma once

#include <QApplication>

#include "app/desk/session/settings.hpp"

namespace loam::desk {

// Sets palette and style sheet of the whole application.
void apply_theme(QApplication& application, Theme theme);

// Whether the palette in use is dark.
bool is_dark(const QPalette& palette);

} // namespace loam::desk
