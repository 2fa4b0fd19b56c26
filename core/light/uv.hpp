// The UV index that reaches a point, from the lamp's own readings. It never comes from watts, and never from outside
// what those readings reach.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/explain.hpp"

namespace loam::light {

struct Point {
    double x_m = 0.0;
    double y_m = 0.0;
    double z_m = 0.0;
    friend bool operator==(const Point&, const Point&) = default;
};

struct Patch {
    double x_m = 0.0;
    double y_m = 0.0;
    double length_m = 0.0;
    double width_m = 0.0;
    friend bool operator==(const Patch&, const Patch&) = default;
};

// A meter reading straight below the lamp, or a line of its maker's table.
struct UvPoint {
    double distance_m = 0.0;
    double uvi = 0.0;
    friend bool operator==(const UvPoint&, const UvPoint&) = default;
};

struct UvLamp {
    std::string id;
    Point at;              // centre of the face; it shines straight down
    double length_m = 0.0; // of a tube along x; 0: a point
    std::vector<UvPoint> table;
    std::optional<Range> beam_deg;                 // full width at half maximum; absent: not known
    std::optional<double> reference_open_fraction; // of the mesh in the way when the table was taken; absent: none
    bool above_top = false;                        // shines through the top of the box
    Range burnt_h = exactly(0.0);                  // hours since the table held
    double read_at_h = 0.0;                        // hours it had burnt when the table was taken
    std::optional<Range> decay_per_1000_h;         // share of UV lost; absent: not known
    Range reading_factor = {0.9, 1.0, 1.1};        // truth over table: 10 % for hand-held meters, from memory
    Range light_behind_m = exactly(0.0);           // where its light seems to come from, behind the face
    friend bool operator==(const UvLamp&, const UvLamp&) = default;
};

enum class TopKind { open, mesh, pane };

// What lies between the box and a lamp above it.
struct Top {
    TopKind kind = TopKind::open;
    double height_m = 0.0;
    std::optional<Range> open_fraction; // of a mesh; absent: not known
    std::vector<Patch> covers;          // glass, boards, towels: no UV-B passes
    friend bool operator==(const Top&, const Top&) = default;
};

// Open fraction of a mesh of unknown weave: 30 to 50 % lost. Common practice, no source.
inline constexpr Range unknown_mesh = {0.5, 0.6, 0.7};

// What: share of UV-B that the top lets through relative to what lay in the way when the table was taken.
// Method: open fraction over the reference's; where the mesh is not known a loss of 30 to 50 %; a pane passes nothing.
// Range: fractions in (0, 1].
// Source: square-mesh geometry at normal incidence (derived); the loss of 30 to 50 % is common practice, no source;
//   soda-lime glass passes only above about 330 nm (Ropp 1993, by a secondary page). Burger, Gehrmann & Ferguson 2007,
//   Zoo Biology 26:417-423, measured meshes; its figures were not at hand.
Range top_transmission(const Top& top, std::optional<double> reference_open_fraction);

// What: share that a mesh of square weave passes at a slant, relative to straight on; `cosine` of the angle.
// Method: (1 - r / cos) / (1 - r), r = 1 - sqrt(open fraction): wires of a plane weave, tilted about one set of them.
// Range: open fraction in (0, 1], cosine in (0, 1]; 0 where the wires hide all.
// Source: geometry (derived). Wires shine back some, which is not in it.
double mesh_at_slant(double open_fraction, double cosine);

// What: share of its UV that a lamp still has after its hours.
// Method: (1 - decay)^(hours / 1000), the ends paired for the widest range.
// Range: decay in [0, 1). Hours below zero tell what it had that long before its readings were taken, by the same law.
// Source: no published decay curve was found; the form is ours, the figures are the caller's.
Range ageing(const Range& burnt_h, const Range& decay_per_1000_h);

// What: UV index at a point from one lamp, as a meter that faces the lamp reads it.
// Method: point lamp: its readings at the slant distance times the beam's falloff cos^n(angle), n = -ln 2 / ln
//   cos(beam/2). Tube: its readings at the distance from its axis, times the shape of a diffuse line source relative
//   to its middle, times the beam's falloff across the tube. Then top, by the same angle, and ageing; spreads combine
//   as independent. What a cover hides of the lamp from the point does not shine.
// Range: points below the face, distance within the readings' reach, beam between 0 and 180 degrees. Where the beam is
//   not known: within 10 degrees of the axis (common practice, no source). Where decay is not known: only a lamp with
//   no hours burnt. Otherwise nullopt.
// Source: Keitz 1971 (from memory) for the line source, derivation repeated; cosine-power beam (derived).
std::optional<Range> uvi_from(const UvLamp& lamp, const Top& top, const Point& point);

// What: UV index at a point from all lamps together. nullopt: some lamp's part is not known.
std::optional<Range> uvi_at(const std::vector<UvLamp>& lamps, const Top& top, const Point& point);

// What: an upper bound of the UV index at a point that also holds beyond the far end of a table and off the beam:
//   light falls with distance and away from the axis. nullopt: nearer than the table reaches, or no table.
std::optional<double> uvi_at_most(const std::vector<UvLamp>& lamps, const Top& top, const Point& point);

} // namespace loam::light
