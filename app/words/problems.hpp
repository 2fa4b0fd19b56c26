// What is wrong with a file, as a sentence with its place.
#pragma once

#include <QString>
#include <QStringList>

#include "core/json/problem.hpp"

namespace loam::words {

QString problem(const json::Problem& problem);          // "/site/room: “heatwave_c” is not a known key. …"
QString problem_sentence(const json::Problem& problem); // without the place
QStringList problems(const json::Problems& problems);

} // namespace loam::words
