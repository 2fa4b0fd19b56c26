#include "core/plan/describe.hpp"
#include "core/plan/limits.hpp"
#include "core/plan/names.hpp"

namespace loam::plan {

void describe(json::Archive& archive, RoomCase& room_case)
{
    archive.number({"day_c", "Room air by day in degC."}, room_case.day_c, limits::air_c);
    archive.number({"night_c", "Room air by night in degC."}, room_case.night_c, limits::air_c);
    archive.number({"relative_humidity", "Relative humidity of the room air, 0 to 1."}, room_case.relative_humidity,
                   limits::fraction);
    archive.extras(room_case.extras);
}

void describe(json::Archive& archive, PowerCut& power_cut)
{
    archive.number({"hours", "Length of the longest power cut to be prepared for, in hours."}, power_cut.hours,
                   {.min = 0.0, .max = 720.0});
    archive.number({"room_c", "What the room falls to meanwhile, in degC."}, power_cut.room_c, limits::air_c);
    archive.extras(power_cut.extras);
}

void describe(json::Archive& archive, Room& room)
{
    archive.object_or_default({"winter", "The room in the coldest weeks."}, room.winter);
    archive.object_or_default({"summer", "The room in an ordinary summer."}, room.summer);
    archive.number({"heat_wave_c", "Room air on the hottest afternoon, in degC."}, room.heat_wave_c, limits::air_c);
    archive.object({"power_cut", "A power cut in winter."}, room.power_cut);
    archive.choice({"sun_reaches", "Whether direct sun ever falls on an enclosure."}, room.sun_reaches,
                   sun_reaches_names);
    archive.number({"loss_w_k",
                    "What the room loses to the outside for each kelvin, in W/K; with it, what all boxes give "
                    "off warms the room where nothing regulates it, in summer. Absent: the temperatures "
                    "stated are taken as read with the boxes running."},
                   room.loss_w_k, {.min = 0.0, .max = 10000.0, .exclusive_min = true});
    archive.extras(room.extras);
}

void describe(json::Archive& archive, Circuit& circuit)
{
    archive.text(limits::id_key, circuit.id, limits::id);
    archive.number({"voltage_v", "Nominal voltage in V."}, circuit.voltage_v, {.min = 90.0, .max = 260.0});
    archive.number({"rating_a", "Rating of the breaker or fuse in A."}, circuit.rating_a,
                   {.min = 0.0, .max = 125.0, .exclusive_min = true});
    archive.number({"other_load_w", "Everything else that runs on this circuit, in W."}, circuit.other_load_w,
                   {.min = 0.0, .max = 30000.0});
    archive.extras(circuit.extras);
}

void describe(json::Archive& archive, Strip& strip)
{
    constexpr json::Bounds outlets{.min = 0.0, .max = 50.0};
    archive.text(limits::id_key, strip.id, limits::id);
    archive.text({"circuit", "The id of the circuit that feeds it."}, strip.circuit, limits::id);
    archive.number({"rating_a", "Rated current in A."}, strip.rating_a,
                   {.min = 0.0, .max = 125.0, .exclusive_min = true});
    archive.integer({"timed_outlets", "Outlets behind its timer."}, strip.timed_outlets, outlets);
    archive.integer({"always_on_outlets", "Outlets that are always on."}, strip.always_on_outlets, outlets);
    archive.text({"fed_from", "The id of another strip that this one is plugged into."}, strip.fed_from, limits::id);
    archive.flag({"residual_current_protected", "Whether a residual-current device protects it."},
                 strip.residual_current_protected);
    archive.extras(strip.extras);
}

void describe(json::Archive& archive, Stand& stand)
{
    archive.text(limits::id_key, stand.id, limits::id);
    archive.number({"rated_load_kg", "The load that its maker allows, in kg."}, stand.rated_load_kg,
                   {.min = 0.0, .max = 5000.0, .exclusive_min = true});
    archive.extras(stand.extras);
}

void describe(json::Archive& archive, Water& water)
{
    archive.choice({"source", "Where the animals' water comes from."}, water.source, water_source_names);
    archive.number({"reject_l_per_l", "Of reverse osmosis: litres to the drain for each litre made."},
                   water.reject_l_per_l, {.min = 0.0, .max = 50.0});
    archive.number({"cartridge_l", "Litres that one cartridge or set of filters is good for, by its maker."},
                   water.cartridge_l, {.min = 0.0, .max = 100000.0, .exclusive_min = true});
    archive.flag({"conditioned", "Whether conditioner goes into it."}, water.conditioned);
    archive.decimal({"price_per_m3", "Price of a cubic metre in the plan's currency, the drain included, kept as "
                                     "written."},
                    water.price_per_m3, {.min = 0.0, .max = 100000.0});
    archive.extras(water.extras);
}

void describe(json::Archive& archive, Site& site)
{
    archive.number({"latitude_deg", "Latitude in degrees, north positive."}, site.latitude_deg,
                   {.min = -90.0, .max = 90.0});
    archive.decimal({"electricity_price_per_kwh", "Price of one kWh in the plan's currency, kept as written."},
                    site.electricity_price_per_kwh, {.min = 0.0, .max = 100000.0});
    archive.object_or_default({"water", "The animals' water."}, site.water);
    archive.object_or_default({"room", "The room that the enclosures stand in."}, site.room);
    archive.list({"circuits", "Circuits of the house."}, site.circuits, {.max_items = 50});
    archive.list({"strips", "Outlet strips and single outlets."}, site.strips, {.max_items = 100});
    archive.list({"stands", "What enclosures stand on."}, site.stands, {.max_items = 50});
    archive.extras(site.extras);
}

} // namespace loam::plan
