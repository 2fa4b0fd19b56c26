// The assessment for people at a terminal, in at most 80 columns.
#pragma once

#include <QString>
#include <vector>

#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"

namespace loam::report {

QString text_report(const assess::Assessment& assessment, const words::Speaker& speaker);
QString text_shopping(const std::vector<assess::ShoppingLine>& lines, const words::Speaker& speaker);

} // namespace loam::report
