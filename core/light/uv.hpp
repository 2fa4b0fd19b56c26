// The UV index that reaches a point, from the lamp's own distance table. It never comes from watts, and never from
// outside that table.
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
    std::optional<Range> decay_per_1000_h;         // share of UV lost; absent: not known
    Range reading_factor = {0.9, 1.0, 1.1};        // truth over table: 10 % for hand-held meters, from memory
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

// What: UV index straight below a lamp at a distance (m), bare of mesh and ageing as the table is.
// Method: piecewise power law: linear in log UVI over log distance between neighbouring points.
// Range: two or more points with distances and indices > 0 and distinct distances (any order; readings of zero are
//   left out), and a distance between the first and the last; one single point holds at its own distance only (to 1
//   mm). Otherwise nullopt.
// Source: our own interpolation; a point source has exponent 2, a long tube 1 (Keitz 1971, Light Calculations and
//   Measurements, from memory).
std::optional<double> uvi_below(const std::vector<UvPoint>& table, double distance_m);

// What: an upper bound of the same that also holds beyond the far end: the reading there, since light falls.
// Range: nullopt nearer than the table reaches, or where it holds no reading.
std::optional<double> uvi_below_at_most(const std::vector<UvPoint>& table, double distance_m);

// What: distance (m) straight below at which the table reads this index: nearer than that it is more.
// Range: the table must fall with distance and span the index; otherwise nullopt.
std::optional<double> distance_of_uvi(const std::vector<UvPoint>& table, double uvi);

// What: share of UV-B that the top lets through relative to what lay in the way when the table was taken.
// Method: open fraction over the reference's; where the mesh is not known a loss of 30 to 50 %; a pane passes nothing.
// Range: fractions in (0, 1].
// Source: square-mesh geometry at normal incidence (derived); the loss of 30 to 50 % is common practice, no source;
//   soda-lime glass passes only above about 330 nm (Ropp 1993, by a secondary page). Burger, Gehrmann & Ferguson 2007,
//   Zoo Biology 26:417-423, measured meshes; its figures were not at hand.
Range top_transmission(const Top& top, std::optional<double> reference_open_fraction);

// What: share of its UV that a lamp still has after its hours.
// Method: (1 - decay)^(hours / 1000), the ends paired for the widest range. Range: decay in [0, 1), hours >= 0.
// Source: no published decay curve was found; the form is ours, the figures are the caller's.
Range ageing(const Range& burnt_h, const Range& decay_per_1000_h);

// What: UV index at a point from one lamp, as a meter that faces the lamp reads it.
// Method: point lamp: table at the slant distance times the beam's falloff cos^n(angle), n = -ln 2 / ln cos(beam/2).
//   Tube: table at the distance from its axis, times the shape of a diffuse line source relative to its middle, times
//   the beam's falloff across the tube. Then top and ageing; spreads combine as independent. What a cover hides of
//   the lamp from the point does not shine.
// Range: points below the face, distance within the table, beam between 0 and 180 degrees. Where the beam is not
//   known: within 10 degrees of the axis (common practice, no source). Where decay is not known: only a lamp with no
//   hours burnt. Otherwise nullopt.
// Source: Keitz 1971 (from memory) for the line source, derivation repeated; cosine-power beam (derived).
std::optional<Range> uvi_from(const UvLamp& lamp, const Top& top, const Point& point);

// What: UV index at a point from all lamps together. nullopt: some lamp's part is not known.
std::optional<Range> uvi_at(const std::vector<UvLamp>& lamps, const Top& top, const Point& point);

// What: an upper bound of the UV index at a point that also holds beyond the far end of a table and off the beam:
//   light falls with distance and away from the axis. nullopt: nearer than the table reaches, or no table.
std::optional<double> uvi_at_most(const std::vector<UvLamp>& lamps, const Top& top, const Point& point);

} // namespace loam::light
