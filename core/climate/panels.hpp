// Walls and top on small cells; only the module's own files include this.
#pragma once

#include <vector>

#include "core/climate/model.hpp"
#include "core/climate/newton.hpp"
#include "core/climate/panel_field.hpp"

namespace loam::climate {

// What: the temperatures of both faces of each wall and of the top, on cells no wider than `cell_m`.
// Method: each cell's own balance, given the airs, the irradiation of the patch it lies in and the film of its face as
// the joint balance has them: lamp light as it falls on the cell, mats where they lie, conduction through the sheets
// and along them (the two halves of their thickness), edges insulated; block Gauss-Seidel to 0.005 K. A face's mean is
// the joint balance's value to within the curvature of radiation, some 0.1 K.
// Range: that of `solution`, which has converged.
std::vector<PanelField> panel_fields(const Box& box, const Scene& scene, const Model& model, const Solution& solution,
                                     double cell_m);

// The parts, one file each.

// A plane as cells, each in a patch and, where it is closed, in a face.
struct PanelCells {
    Plane plane = Plane::front;
    std::size_t columns = 0;
    std::size_t rows = 0;
    double along_m = 0.0;
    double up_m = 0.0;
    std::vector<std::size_t> patch;
    std::vector<std::size_t> face; // of the scene's faces
    std::vector<Point> at;         // over the base pane
    std::size_t size() const { return patch.size(); }
    double cell_m2() const { return along_m * up_m; }
};
PanelCells lay_panel(const Box& box, const Scene& scene, Plane plane, double cell_m);

// What each cell takes up, W/m2.
struct PanelHeat {
    std::vector<double> inside_w_m2;
    std::vector<double> outside_w_m2;
};
PanelHeat panel_heat(const Box& box, const Scene& scene, const Model& model, const std::vector<double>& solution,
                     const PanelCells& cells);

} // namespace loam::climate
