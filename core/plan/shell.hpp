// The box itself. Enclosure coordinates: the origin is the front-left corner of the inner face of the base pane,
// x along the length, y towards the back, z up from the base pane (not from the substrate).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/json/node.hpp"

namespace loam::plan {

// A rectangle on a horizontal face, by its front-left corner.
struct Cover {
    std::string id;
    std::string material; // glass, acrylic, towel, foil, board or a user's own
    double x_m = 0.0;
    double y_m = 0.0;
    double length_m = 0.0;
    double width_m = 0.0;
    json::Extras extras;
    friend bool operator==(const Cover&, const Cover&) = default;
};

enum class TopKind { mesh, glass, board, open };

struct Top {
    TopKind kind = TopKind::mesh;
    std::optional<double> open_fraction; // of a mesh: free area over whole area, 0..1
    std::optional<double> thickness_m;   // of a glass or board top
    std::vector<Cover> covers;
    json::Extras extras;
    friend bool operator==(const Top&, const Top&) = default;
};

struct Vent {
    std::string id;
    double free_area_m2 = 0.0;
    double height_above_base_m = 0.0;
    json::Extras extras;
    friend bool operator==(const Vent&, const Vent&) = default;
};

enum class Wall { front, back, left, right };

// A wall that is not made as the others are: a glass front, a door.
struct Panel {
    std::string id;
    Wall wall = Wall::front;
    std::string material = "float-glass";
    std::optional<double> thickness_m;
    json::Extras extras;
    friend bool operator==(const Panel&, const Panel&) = default;
};

enum class Side { inside, outside };

// What lies flat against a whole wall: a backdrop inside, insulation outside. Several lie upon each other in the order
// of the list, away from the wall; outside ones are cut out around a mat.
struct Lining {
    std::string id;
    Wall wall = Wall::back;
    Side side = Side::inside;
    std::string material = "cork";
    std::optional<double> thickness_m;
    json::Extras extras;
    friend bool operator==(const Lining&, const Lining&) = default;
};

struct Shell {
    double length_m = 1.2; // inner
    double width_m = 0.6;  // inner, front to back
    double height_m = 0.5; // inner, base pane to top
    std::string walls = "float-glass";
    std::optional<double> wall_thickness_m;
    std::string base = "float-glass";
    std::optional<double> base_thickness_m;
    std::vector<Panel> panels;
    std::vector<Lining> linings;
    Top top;
    std::vector<Vent> vents;
    json::Extras extras;
    friend bool operator==(const Shell&, const Shell&) = default;
};

} // namespace loam::plan
