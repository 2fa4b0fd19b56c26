// Puts the parts of all enclosures together with what they share: stands, circuits, order, costs.
#pragma once

#include <vector>

#include "core/assess/stages.hpp"
#include "core/buying/need.hpp"

namespace loam::assess {

struct Part {
    Housed housed;
    const InstantStage* instant = nullptr;
    const ClimateStage* climate = nullptr; // nullptr: still to come
    const CourseStage* courses = nullptr;  // likewise
};

Assessment compose(const Context& context, const std::vector<Part>& parts);

// Water and watts of one enclosure, the watts by its climate where that is there. What is to be bought hangs on neither
// the climate nor the watts, so that an order needs no balance solved.
struct Supplies {
    PowerStage power;
    WaterStage water;
    YearStage year;
    RecordStage records;
};
Supplies supplies_of(const Context& context, const Part& part);

std::vector<buying::Need> all_needs(const Context& context, const std::vector<Part>& parts,
                                    const std::vector<Supplies>& supplies);

} // namespace loam::assess
