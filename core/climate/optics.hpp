// Radiant properties of the inner faces, shared by long-wave and lamp light.
#pragma once

#include <vector>

#include "core/climate/model.hpp"

namespace loam::climate {

inline constexpr double water_emissivity = 0.96;       // common infrared tables
inline constexpr double water_lamp_absorptance = 0.93; // reflects some 5 to 8 % of lamp light. From memory

// Mesh passes its open share; its wires hang half way between inside and room, which is half as much again.
double mesh_emissivity(const Box& box);

// The sheets that a wall, a top pane or a cover shows to the inside and to the room.
const Sheet& inner_sheet(const Box& box, const Face& face);
const Sheet& outer_sheet(const Box& box, const Face& face);

// How a face takes lamp light. What it passes has left the box.
struct FaceOptics {
    double absorbed = 0.0;
    double passed = 0.0;
    double inner = 1.0; // share of what is absorbed that heats the inner face
};
FaceOptics face_optics(const Box& box, const Face& face, bool thermal);

// Share of a column that bowls cover.
double bowl_share(const Scene& scene, std::size_t column);

// Mean over each patch of a property that floor columns and faces have.
template <class OfColumn, class OfFace>
std::vector<double> patch_means(const Scene& scene, const OfColumn& of_column, const OfFace& of_face)
{
    const Geometry& g = scene.geometry;
    std::vector<double> sum(g.patches.size(), 0.0);
    for (std::size_t c = 0; c < g.columns(); ++c)
        sum[g.floor_patch[c]] += g.dx_m * g.dy_m * of_column(c);
    for (std::size_t f = 0; f < g.faces.size(); ++f)
        sum[g.faces[f].patch] += g.faces[f].area_m2 * of_face(f);
    for (std::size_t p = 0; p < sum.size(); ++p)
        sum[p] /= g.patches[p].area_m2();
    return sum;
}

// A watt drawn by a lamp: where it is released, by place in the solution.
std::vector<double> lamp_release(const Model& model, const Box& box, const Scene& scene, std::size_t lamp);

} // namespace loam::climate
