// What the species ask for while a course runs: bands over hours, for the chart.
#pragma once

#include <vector>

#include "app/words/courses.hpp"
#include "core/assess/assessment.hpp"

namespace loam::desk {

struct TargetBand {
    assess::Zone zone = assess::Zone::warm;
    bool every_zone = false; // at night one band holds for warm and cool side
    Target target_c;
    words::Hours when;
};

// By day the targets of the season's day while the lamps are on, by night those of its night. A fault's course has no
// night: it begins at any hour.
std::vector<TargetBand> target_bands(const assess::EnclosureResult& enclosure, const assess::CourseResult& course);

struct HumidityBand {
    Target target;
    words::Hours when;
};

// The same of the humidity: by day and by night as each case asks; a fault's course by what the season's day asks,
// whatever the hour.
std::vector<HumidityBand> humidity_bands(const assess::EnclosureResult& enclosure, const assess::CourseResult& course);

} // namespace loam::desk
