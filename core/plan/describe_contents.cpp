#include "core/plan/describe.hpp"
#include "core/plan/limits.hpp"
#include "core/plan/names.hpp"

namespace loam::plan {

void describe(json::Archive& archive, CoolSeason& season)
{
    constexpr json::TextRule day{.max_length = 10, .pattern = json::iso_date};
    archive.text({"begins", "The first day without food, YYYY-MM-DD."}, season.begins, day);
    archive.integer({"cold_weeks", "Weeks in the cold, without winding down and warming up."}, season.cold_weeks,
                    {.min = 1.0, .max = 30.0});
    archive.text({"vet_checked", "The day of the vet's check before it, YYYY-MM-DD."}, season.vet_checked, day);
    archive.extras(season.extras);
}

void describe(json::Archive& archive, Measurement& measurement)
{
    archive.text(limits::id_key, measurement.id, limits::id);
    archive.text({"date", "The day it was measured, YYYY-MM-DD."}, measurement.date,
                 {.max_length = 10, .pattern = json::iso_date});
    archive.number({"length_m", "By the species' own measure, in m."}, measurement.length_m, limits::length_m);
    archive.number({"mass_kg", "Mass of one animal in kg."}, measurement.mass_kg,
                   {.min = 0.0, .max = 500.0, .exclusive_min = true});
    archive.extras(measurement.extras);
}

void describe(json::Archive& archive, Animal& animal)
{
    archive.text(limits::id_key, animal.id, limits::id);
    archive.text({"species", "Scientific name in kebab-case."}, animal.species,
                 {.min_length = 1, .max_length = 80, .pattern = json::kebab_id});
    archive.integer({"count", "How many animals of this species, sex and size."}, animal.count,
                    {.min = 1.0, .max = 200.0});
    archive.choice({"sex", "Their sex."}, animal.sex, sex_names);
    archive.number({"length_m", "By the species' own measure (carapace, snout to vent or total), in m."},
                   animal.length_m, limits::length_m);
    archive.number({"mass_kg", "Mass of one animal in kg."}, animal.mass_kg,
                   {.min = 0.0, .max = 500.0, .exclusive_min = true});
    archive.number({"age_years", "Age in years."}, animal.age_years, {.min = 0.0, .max = 300.0});
    archive.choice({"condition", "Whether it is well, by the keeper or a vet."}, animal.condition, condition_names);
    archive.object({"cool_season", "A rest in the cold that the keeper asks for."}, animal.cool_season);
    archive.list({"measurements", "What was measured over time; the newest counts before length_m and mass_kg."},
                 animal.measurements, {.max_items = 2000});
    archive.extras(animal.extras);
}

void describe(json::Archive& archive, SubstrateLayer& layer)
{
    archive.text(limits::id_key, layer.id, limits::id);
    archive.text({"material", "coir-fine, coir-chips, topsoil, play-sand, peat, bark, sphagnum or one of your own."},
                 layer.material, limits::material);
    archive.number({"depth_m", "Settled depth in m; of a sloping bed at its left end."}, layer.depth_m,
                   {.min = 0.0, .max = 1.0, .exclusive_min = true});
    archive.number({"depth_at_right_m", "Settled depth at the right end of a bed that slopes, in m."},
                   layer.depth_at_right_m, {.min = 0.0, .max = 1.0});
    archive.number({"water_fraction", "Volume of water over volume of bed, 0 to 1."}, layer.water_fraction,
                   limits::fraction);
    archive.extras(layer.extras);
}

void describe(json::Archive& archive, Fitting& fitting)
{
    archive.text(limits::id_key, fitting.id, limits::id);
    archive.choice({"kind", "What it is."}, fitting.kind, fitting_kind_names);
    archive.number({"x_m", "Left edge in m."}, fitting.x_m, limits::position_m);
    archive.number({"y_m", "Front edge in m."}, fitting.y_m, limits::position_m);
    archive.number({"length_m", "Extent along x in m."}, fitting.length_m, limits::length_m);
    archive.number({"width_m", "Extent along y in m."}, fitting.width_m, limits::length_m);
    archive.number({"height_m", "Height in m."}, fitting.height_m, limits::length_m);
    archive.number({"rotation_deg", "Turned about its centre, counter-clockwise seen from above, in degrees."},
                   fitting.rotation_deg, {.min = -360.0, .max = 360.0});
    archive.number({"mass_kg", "Mass in kg."}, fitting.mass_kg, {.min = 0.0, .max = 2000.0});
    archive.number({"water_depth_m", "Depth of the water in a bowl, in m."}, fitting.water_depth_m,
                   {.min = 0.0, .max = 1.0});
    archive.flag({"walkable", "Whether the animal can walk over it or through it."}, fitting.walkable);
    archive.extras(fitting.extras);
}

void describe(json::Archive& archive, Reading& reading)
{
    archive.text(limits::id_key, reading.id, limits::id);
    archive.choice({"measure", "What was read: a surface, a shaded thermometer at ground level, or an operative "
                               "temperature (black globe)."},
                   reading.measure, measure_names);
    archive.number({"x_m", "Place along the length in m."}, reading.x_m, limits::position_m);
    archive.number({"y_m", "Place towards the back in m."}, reading.y_m, limits::position_m);
    archive.number({"value_c", "What it read, in degC."}, reading.value_c, {.min = -40.0, .max = 150.0});
    archive.number({"accuracy_k", "Plus or minus, in K."}, reading.accuracy_k, {.min = 0.0, .max = 20.0});
    archive.choice({"lamps", "Whether the lamps were on."}, reading.lamps, lamp_state_names);
    archive.number({"room_c", "Room air at the time, in degC."}, reading.room_c, limits::air_c);
    archive.text({"date", "The day it was read, YYYY-MM-DD."}, reading.date,
                 {.max_length = 10, .pattern = json::iso_date});
    archive.extras(reading.extras);
}

} // namespace loam::plan
