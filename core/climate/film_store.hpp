// Misted water that lies on the bed, between one misting and the next.
#pragma once

#include <vector>

#include "core/climate/model.hpp"

namespace loam::climate {

class FilmStore {
public:
    explicit FilmStore(std::size_t columns) : kg_m2_(columns, 0.0) {}

    // What runs off or sinks in is no film any more: beyond half a millimetre, own estimate.
    void spray(double kg_m2);
    // Offers all of it to the next step.
    void offer(double seconds, FloorModel& floor) const;
    // Takes off what a step has evaporated, as its end has it.
    void dry(const Model& model, const std::vector<double>& values, double seconds);

    const std::vector<double>& kg_m2() const { return kg_m2_; }

private:
    std::vector<double> kg_m2_;
};

} // namespace loam::climate
