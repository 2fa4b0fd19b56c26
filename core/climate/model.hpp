// The numbers of one balance: everything that the residual needs, with each uncertain input at one value.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/climate/bricks.hpp"
#include "core/climate/cast.hpp"
#include "core/climate/films.hpp"
#include "core/climate/geometry.hpp"
#include "core/climate/openings.hpp"
#include "core/climate/stencil.hpp"

namespace loam::climate {

inline constexpr double water_heat_j_m3k = 4.18e6; // Cengel, Heat Transfer, Table A-9, 25 degC

// Places in the solution: brick temperatures first, then the few that everything shares. Temperatures in degC,
// humidity ratios in kg/kg, powers in W, irradiation of patches in W/m2.
struct Layout {
    std::size_t bricks = 0;
    std::size_t bowls = 0;
    std::size_t powers = 0; // devices whose thermostat works
    std::size_t patches = 0;
    std::size_t faces = 0; // those with a pane or a cover

    std::size_t lower_air() const { return bricks; }
    std::size_t upper_air() const { return bricks + 1; }
    std::size_t lower_vapour() const { return bricks + 2; }
    std::size_t upper_vapour() const { return bricks + 3; }
    std::size_t bowl(std::size_t b) const { return bricks + 4 + b; }
    std::size_t power(std::size_t p) const { return bricks + 4 + bowls + p; }
    std::size_t irradiation(std::size_t p) const { return bricks + 4 + bowls + powers + p; }
    std::size_t face_inside(std::size_t f) const { return bricks + 4 + bowls + powers + patches + 2 * f; }
    std::size_t face_outside(std::size_t f) const { return face_inside(f) + 1; }
    std::size_t size() const { return bricks + 4 + bowls + powers + patches + 2 * faces; }
};

// A thermometer's reading: linear in temperatures of the solution, plus shares of the radiant temperature of patches.
struct Reading {
    std::vector<std::pair<std::size_t, double>> temperatures;
    std::vector<std::pair<std::size_t, double>> radiant; // place of the irradiation
    double constant_c = 0.0;
};

struct Device {
    std::string id;
    double installed_w = 0.0;                            // may be drawn now
    double fixed_w = 0.0;                                // drawn where no thermostat works
    std::optional<std::size_t> regulated = std::nullopt; // its place among the powers
    double setpoint_c = 0.0;
    Reading probe = {};
    std::vector<std::pair<std::size_t, double>> release; // where a watt drawn goes, shares
    double released = 0.0;                               // their sum
};

struct FloorModel {
    std::vector<double> exposed_m2; // per column, without bowls
    std::vector<double> dryness;    // per column, 1 where the lamp keeps it dry
    double emissivity = 0.0;
    double wetness = 0.0; // of the damp surface, stretched by the model's factor
    double mist_kg_s_m2 = 0.0;
    std::vector<double> film_kg_s_m2 = {}; // the same per column, of pulses; empty: spread evenly
    double mist_at(std::size_t column) const { return film_kg_s_m2.empty() ? mist_kg_s_m2 : film_kg_s_m2[column]; }
    Film film;
};

struct UndersideModel {
    double emissivity = 0.0;
    Film film;
};

struct BowlModel {
    double area_m2 = 0.0;
    std::vector<std::pair<std::size_t, double>> columns; // area on each
    double evaporation_kg_s_m2_pa = 0.0;
    Film film;
};

struct FaceModel {
    FaceKind kind = FaceKind::wall;
    std::size_t patch = 0;
    double area_m2 = 0.0;
    bool upper = false;
    std::optional<std::size_t> place = std::nullopt; // among the faces with temperatures; absent for mesh
    double resistance_m2k_w = 0.0;
    double emissivity_inside = 0.0; // of mesh: the share that sees the room
    double emissivity_outside = 0.0;
    Film inside = {};
    Film outside = {};
};

struct AirModel {
    Lid lid; // area 0 where there is no mesh
    double exchange_factor = 1.0;
    double stack_m3_s = 0.0;   // times sqrt(density ratio)
    double doorway_m3_s = 0.0; // the same, of vents at one height
    double leak_kg_s = 0.0;    // each way, half from either air
    double mixing_kg_s = 0.0;  // still air
    double floor_diameter_m = 0.0;
};

struct RoomModel {
    double celsius = 0.0;
    double humidity_ratio = 0.0;
    double density_kg_m3 = 0.0;
};

struct Model {
    Layout layout;
    std::size_t nx = 0;
    std::size_t nz = 0;
    double cell_m2 = 0.0;
    std::vector<std::size_t> floor_patch;
    std::vector<double> patch_m2;
    RoomModel room;
    std::vector<Link> links;
    Stencil stencil;                // the same by direction
    std::vector<double> stored_j_k; // per brick, in a kelvin of it
    std::vector<double> side_w_k;   // per brick, through the wall beside the bed to the room
    FloorModel floor;
    UndersideModel underside;
    std::vector<BowlModel> bowls;
    std::vector<FaceModel> faces;
    Square longwave; // irradiation per emission
    AirModel air;
    std::vector<Device> devices;

    std::size_t columns() const { return floor_patch.size(); }
    std::size_t surface(std::size_t column) const { return column * nz + nz - 1; }
    std::size_t underside_of(std::size_t column) const { return column * nz; }
};

// What stays while inputs vary within their ranges.
struct Scene {
    Geometry geometry;
    std::vector<double> exponents; // of the lamps' beams
    std::vector<Cast> casts;
    std::vector<double> dryness; // per column
};

// Which parts of a model an input reaches.
struct Parts {
    bool conduction = false;
    bool longwave = false;
    bool shortwave = false;
    bool beam = false; // needs `recast`, then shortwave
    bool rest = false; // films, air, moisture, room: cheap
};

std::optional<Scene> make_scene(const Box& box, const Cells& cells);
// The scene with those lamps cast anew that are told to be new, by their place and the exponent of their beam; `box`
// may differ from the scene's in its lamps alone. Its dryness stays as it was.
using IsNew = std::function<bool(std::size_t lamp, double exponent)>;
std::optional<Scene> cast_where(const Box& box, Scene scene, const IsNew& is_new);
// Per column, 0 where the bed stays damp to 1 where the lamps keep it dry.
std::vector<double> dryness_of(const Box& box, const Scene& scene);
// The same with the lamps' beams as wide as `box` now has them, the lamps where they were.
std::optional<Scene> recast(const Box& box, const Scene& scene);
// nullopt where a value is outside the range of its equation.
std::optional<Model> make_model(const Box& box, const Case& now, const Scene& scene);
// Renews parts of a model made for the same box at other values.
bool renew(Model& model, const Box& box, const Case& now, const Scene& scene, const Parts& parts);

// The parts, one file each.
bool set_conduction(Model& model, const Box& box, const Scene& scene);
bool set_longwave(Model& model, const Box& box, const Scene& scene);
bool set_devices(Model& model, const Box& box, const Case& now, const Scene& scene);
bool set_air_and_moisture(Model& model, const Box& box, const Case& now, const Scene& scene);

// Radiant properties of the floor: of the top layer, or of the pane where there is no bed.
struct FloorOptics {
    double emissivity = 0.0;
    double lamp_absorptance = 0.0;
};
FloorOptics floor_optics(const Box& box);

// W/m2 of lamp light (with all lamps at full) on each column of the floor.
std::vector<double> full_irradiance_w_m2(const Box& box, const Scene& scene);
// Share of what strikes a region from above that passes it.
double region_transmittance(const Box& box, std::size_t region, const Lamp& lamp);

} // namespace loam::climate
