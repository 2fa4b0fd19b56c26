// Temperatures of walls and top on small cells.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "core/climate/box.hpp"
#include "core/climate/enclosure.hpp"

namespace loam::climate {

// Likely values on one wall or the top, row by row. Along: x, on the left and right wall y. Up: from the bed's mean
// surface, on the top y. Cell centres at ((i + 0.5) along, (j + 0.5) up).
struct PanelField {
    Plane plane = Plane::front;
    std::size_t columns = 0;
    std::size_t rows = 0;
    double along_m = 0.0;
    double up_m = 0.0;
    double from_z_m = 0.0;            // of the lower edge, or of the top, over the base pane
    double across_m = 0.0;            // y of the front and back wall, x of the left and right one
    std::vector<double> inside_c;     // the face that the animals see
    std::vector<double> outside_c;    // the one that the room sees, a mat's side where there is one
    std::vector<std::uint8_t> closed; // 0: mesh or nothing; its temperatures are the room's
    friend bool operator==(const PanelField&, const PanelField&) = default;
};

Point centre_of(const PanelField& field, std::size_t cell);

} // namespace loam::climate
