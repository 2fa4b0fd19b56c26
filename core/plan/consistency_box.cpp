#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/json/number_text.hpp"
#include "core/json/pointer.hpp"
#include "core/plan/consistency.hpp"
#include "core/plan/names.hpp"
#include "core/plan/problem_codes.hpp"

namespace loam::plan {

namespace {

// An extent along one axis.
struct Span {
    double from_m = 0.0;
    double to_m = 0.0;
};

// Touching the box's face from outside counts as outside for a rectangle; a point may lie on the face.
bool misses(const Span& span, double box_m)
{
    const bool is_point = span.from_m == span.to_m;
    return is_point ? span.to_m < 0.0 || span.from_m > box_m : span.to_m <= 0.0 || span.from_m >= box_m;
}

Span from_edge(double edge_m, std::optional<double> extent_m)
{
    return {edge_m, edge_m + extent_m.value_or(0.0)};
}

Span about_centre(double centre_m, std::optional<double> extent_m)
{
    const double half_m = extent_m.value_or(0.0) / 2.0;
    return {centre_m - half_m, centre_m + half_m};
}

bool is_outside(const Cover& cover, const Shell& shell)
{
    return misses(from_edge(cover.x_m, cover.length_m), shell.length_m) ||
           misses(from_edge(cover.y_m, cover.width_m), shell.width_m);
}

// A turned rectangle is outside where the upright rectangle around it is: a corner that only looks inside is left to
// the assessment.
bool is_outside(const Fitting& fitting, const Shell& shell)
{
    const double angle = fitting.rotation_deg.value_or(0.0) * std::numbers::pi / 180.0;
    const double along_x_m = std::abs(fitting.length_m * std::cos(angle)) + std::abs(fitting.width_m * std::sin(angle));
    const double along_y_m = std::abs(fitting.length_m * std::sin(angle)) + std::abs(fitting.width_m * std::cos(angle));
    return misses(about_centre(fitting.x_m + fitting.length_m / 2.0, along_x_m), shell.length_m) ||
           misses(about_centre(fitting.y_m + fitting.width_m / 2.0, along_y_m), shell.width_m);
}

bool is_outside(const Device& device, const Shell& shell)
{
    const Span height = from_edge(device.z_m.value_or(0.0), device.z_m ? device.width_m : std::nullopt);
    switch (device.place.value_or(Place::overhead)) {
    case Place::back_wall:
    case Place::front_wall:
        return misses(from_edge(device.x_m, device.length_m), shell.length_m) || misses(height, shell.height_m);
    case Place::left_wall:
    case Place::right_wall:
        return misses(from_edge(device.y_m, device.length_m), shell.width_m) || misses(height, shell.height_m);
    case Place::under_base:
    case Place::in_bed:
        return misses(from_edge(device.x_m, device.length_m), shell.length_m) ||
               misses(from_edge(device.y_m, device.width_m), shell.width_m);
    case Place::overhead:
        break;
    }
    if (device.kind == DeviceKind::heat_mat) {
        return misses(from_edge(device.x_m, device.length_m), shell.length_m) ||
               misses(from_edge(device.y_m, device.width_m), shell.width_m);
    }
    return misses(about_centre(device.x_m, device.length_m), shell.length_m) ||
           misses(about_centre(device.y_m, device.width_m), shell.width_m);
}

} // namespace

void Consistency::check_box(const Enclosure& enclosure, const std::string& where)
{
    const auto& photoperiod = enclosure.photoperiod;
    if (photoperiod && photoperiod->on == photoperiod->off && is_sound(where + "/photoperiod")) {
        refuse(where + "/photoperiod/off", problem::no_day_or_night, {photoperiod->on});
    }
    check_panels(enclosure, where);
    for (const std::string_view side : {"/shell/length_m", "/shell/width_m", "/shell/height_m"}) {
        if (!is_sound(where + std::string(side))) {
            return;
        }
    }
    check_bed(enclosure, where);
    check_inside(enclosure, where);
}

void Consistency::check_panels(const Enclosure& enclosure, const std::string& where)
{
    const std::vector<Panel>& panels = enclosure.shell.panels;
    for (std::size_t i = 0; i < panels.size(); ++i) {
        const auto first = std::find_if(panels.begin(), panels.begin() + static_cast<std::ptrdiff_t>(i),
                                        [&](const Panel& other) { return other.wall == panels[i].wall; });
        const std::string here = json::pointer_to(where + "/shell/panels", i) + "/wall";
        if (first != panels.begin() + static_cast<std::ptrdiff_t>(i) && is_sound(here)) {
            refuse(here, problem::two_panels, {std::string(name_of(panels[i].wall)), first->id});
        }
    }
}

void Consistency::check_bed(const Enclosure& enclosure, const std::string& where)
{
    if (!is_sound(where + "/substrate")) {
        return;
    }
    double left_m = 0.0;
    double right_m = 0.0;
    for (const SubstrateLayer& layer : enclosure.substrate) {
        left_m += layer.depth_m;
        right_m += layer.depth_at_right_m.value_or(layer.depth_m);
    }
    const double deepest_m = std::max(left_m, right_m);
    if (deepest_m >= enclosure.shell.height_m) {
        refuse(where + "/substrate", problem::bed_fills_box,
               {json::number_text(deepest_m), json::number_text(enclosure.shell.height_m)});
    }
}

void Consistency::check_inside(const Enclosure& enclosure, const std::string& where)
{
    const auto check = [&](const auto& elements, const std::string& list) {
        for (std::size_t i = 0; i < elements.size(); ++i) {
            const std::string element = json::pointer_to(where + list, i);
            if (is_outside(elements[i], enclosure.shell) && is_sound(element)) {
                refuse(element, problem::outside_box, {elements[i].id});
            }
        }
    };
    check(enclosure.shell.top.covers, "/shell/top/covers");
    check(enclosure.fittings, "/fittings");
    check(enclosure.equipment, "/equipment");
}

} // namespace loam::plan
