// Measures of a page that laying out and painting share. Lengths in points. Internal to app/sheets.
#pragma once

#include <QtGlobal>
#include <qnamespace.h>

namespace loam::sheets {

inline constexpr double gap_pt = 5.0;
inline constexpr double cell_gap_pt = 10.0;
inline constexpr double row_pad_pt = 2.3;
inline constexpr double tick_pt = 11.0;
inline constexpr double tick_space_pt = tick_pt + 8.0;
inline constexpr double footer_pt = 32.0;     // two lines of small print
inline constexpr double group_space_pt = 5.0; // over a group's heading
inline constexpr int wrap = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop;

} // namespace loam::sheets
