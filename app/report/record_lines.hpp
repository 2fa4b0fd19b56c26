// What an animal's measurements tell, in a few lines.
#pragma once

#include <QStringList>

#include "app/words/speaker.hpp"
#include "core/assess/record_result.hpp"

namespace loam::report {

QStringList record_lines(const assess::RecordResult& record, const words::Speaker& speaker);

} // namespace loam::report
