#include "core/climate/panel_report.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/panels.hpp"

namespace loam::climate {

namespace {

// A rise over the room is as uncertain, in proportion, as another that the same lamps make. A small one says little
// of a large one, so that the width never shrinks.
Range like(const Range& known_c, double here_c, double room_c)
{
    const double known_rise_k = known_c.likely - room_c;
    const double factor = known_rise_k > 1.0 ? std::max(1.0, (here_c - room_c) / known_rise_k) : 1.0;
    return {here_c + factor * (known_c.low - known_c.likely), here_c,
            here_c + factor * (known_c.high - known_c.likely)};
}

bool under_mat(const Box& box, const Scene& scene, const PanelField& field, std::size_t cell)
{
    const Point at = centre_of(field, cell);
    const double along_m = field.plane == Plane::left || field.plane == Plane::right ? at.y_m : at.x_m;
    return std::any_of(box.mats.begin(), box.mats.end(), [&](const Mat& mat) {
        return plane_of(mat.place) == field.plane &&
               holds(above_bed(mat, scene.geometry), along_m, at.z_m - scene.geometry.bed_mean_m);
    });
}

// Over the base pane: standing up on its hind legs on whatever it climbs. A climber gets everywhere.
double reach_m(const Box& box, const Scene& scene)
{
    if (box.climbs)
        return box.height_m;
    double stands_m = 0.0;
    for (const Perch& perch : box.perches)
        stands_m = std::max(stands_m, perch.height_m);
    return scene.geometry.bed_mean_m + stands_m + box.animal_length_m;
}

} // namespace

void report_panels(const Box& box, const Balanced& at, double cell_m, CaseResult& result)
{
    result.panels = panel_fields(box, at.scene, at.model, at.solution, cell_m);
    const double room_c = at.model.room.celsius;
    const double reach = reach_m(box, at.scene);
    const auto raise = [&](std::optional<PanelPeak>& peak, const PanelField& field, std::size_t cell, double here_c) {
        if (!peak || here_c > peak->temperature_c.likely)
            peak = PanelPeak{exactly(here_c), centre_of(field, cell)};
    };
    for (const PanelField& field : result.panels)
        for (std::size_t i = 0; i < field.closed.size(); ++i) {
            if (field.closed[i] == 0)
                continue;
            if (field.plane == Plane::ceiling)
                raise(result.hottest_top, field, i, std::max(field.inside_c[i], field.outside_c[i]));
            else if (centre_of(field, i).z_m <= reach && !under_mat(box, at.scene, field, i))
                raise(result.hottest_wall, field, i, field.inside_c[i]);
        }
    for (std::optional<PanelPeak>* peak : {&result.hottest_wall, &result.hottest_top})
        if (*peak)
            (*peak)->temperature_c = like(result.hottest_pane_c, (*peak)->temperature_c.likely, room_c);
}

} // namespace loam::climate
