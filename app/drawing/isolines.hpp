// Lines of equal value through a field of cell-centre values (marching squares with linear interpolation).
#pragma once

#include <QPointF>
#include <vector>

namespace loam::drawing {

struct Grid {
    std::size_t columns = 0;
    std::size_t rows = 0;
    double step_x = 1.0; // distance of cell centres; the first lies at half a step
    double step_y = 1.0;
};

using Line = std::vector<QPointF>; // in the grid's own length unit

// All pieces of the line at `level`, joined end to end where they meet. Values that are not numbers bound no line.
std::vector<Line> isolines(const std::vector<double>& values, const Grid& grid, double level);

// Round levels (1, 2 or 5 times a power of ten apart) inside the span, at most `most` of them.
std::vector<double> round_levels(double low, double high, int most);

} // namespace loam::drawing
