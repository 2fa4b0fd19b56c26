// The two boxes of the Help menu.
#pragma once

class QWidget;

namespace loam::desk {

void show_about(QWidget* parent);
void show_cautions(QWidget* parent);

} // namespace loam::desk
