// The figures of one enclosure as rows of words: built apart from any widget, so that they can be tested as text.
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "app/desk/views/figure_row.hpp"
#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"

namespace loam::desk {

struct FigureGroup {
    QString name;
    std::vector<FigureRow> rows;
};

std::vector<FigureGroup> figure_groups(const assess::Assessment& assessment, const assess::EnclosureResult& enclosure,
                                       const words::Speaker& speaker);

} // namespace loam::desk
