#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"room.winter.day_c", QT_TRANSLATE_NOOP("sentences", "the room on a winter day")},
    {"room.winter.night_c", QT_TRANSLATE_NOOP("sentences", "the room on a winter night")},
    {"room.winter.relative_humidity", QT_TRANSLATE_NOOP("sentences", "the room's humidity in winter")},
    {"room.summer.day_c", QT_TRANSLATE_NOOP("sentences", "the room on a summer day")},
    {"room.summer.night_c", QT_TRANSLATE_NOOP("sentences", "the room on a summer night")},
    {"room.summer.relative_humidity", QT_TRANSLATE_NOOP("sentences", "the room's humidity in summer")},
    {"room.heat_wave_c", QT_TRANSLATE_NOOP("sentences", "the room in a heat wave")},
    {"room.power_cut.hours", QT_TRANSLATE_NOOP("sentences", "the length of a power cut")},
    {"room.power_cut.room_c", QT_TRANSLATE_NOOP("sentences", "the room in a power cut")},
    {"room.stated_spread_k", QT_TRANSLATE_NOOP("sentences", "how far a room strays from what is stated")},
    {"room.stated_humidity_spread",
     QT_TRANSLATE_NOOP("sentences", "how far a room's humidity strays from what is stated")},
    {"circuit.other_load_w", QT_TRANSLATE_NOOP("sentences", "what else runs on the circuit")},
    {"strip.rating_a", QT_TRANSLATE_NOOP("sentences", "what a strip may carry")},
    {"strip.timed_outlets", QT_TRANSLATE_NOOP("sentences", "timed outlets of a strip")},
    {"strip.always_on_outlets", QT_TRANSLATE_NOOP("sentences", "always-on outlets of a strip")},
    {"mesh.open_fraction", QT_TRANSLATE_NOOP("sentences", "the open share of the mesh")},
    {"panel.thickness_factor", QT_TRANSLATE_NOOP("sentences", "the thickness of a panel")},
    {"panel.thickness_m", QT_TRANSLATE_NOOP("sentences", "the thickness of a panel")},
    {"hide.entrance_m2", QT_TRANSLATE_NOOP("sentences", "how large the entrance of a hide is")},
    {"hide.film_w_m2k", QT_TRANSLATE_NOOP("sentences", "how still the air in a hide is")},
    {"fitting.height_m", QT_TRANSLATE_NOOP("sentences", "the height of a fitting")},
    {"bowl.water_depth_m", QT_TRANSLATE_NOOP("sentences", "the depth of water in a bowl")},
    {"control.hysteresis_k", QT_TRANSLATE_NOOP("sentences", "switching difference of a thermostat")},
    {"bowl.fill_ratio", QT_TRANSLATE_NOOP("sentences", "how full a bowl is")},
    {"bowl.evaporation_l_m2d", QT_TRANSLATE_NOOP("sentences", "how much water evaporates from a bowl")},
    {"moisture.misting_l_per_day", QT_TRANSLATE_NOOP("sentences", "how much is misted")},
    {"moisture.water_changes_per_day", QT_TRANSLATE_NOOP("sentences", "how often the water is changed")},
    {"water.reject_l_per_l", QT_TRANSLATE_NOOP("sentences", "what reverse osmosis sends to the drain")},
    {"bowl.length_ratio", QT_TRANSLATE_NOOP("sentences", "the length of a bowl over that of the shell")},
    {"bowl.turning_ratio", QT_TRANSLATE_NOOP("sentences", "the width of a bowl over the length of the shell")},
    {"cool-season.wind_down_weeks", QT_TRANSLATE_NOOP("sentences", "the weeks without food before the cold")},
    {"cool-season.warm_up_weeks", QT_TRANSLATE_NOOP("sentences", "the weeks of warming up after the cold")},
    {"cool-season.stop_loss", QT_TRANSLATE_NOOP("sentences", "the loss of weight that ends a winter rest")},
    {"cool-season.monthly_loss", QT_TRANSLATE_NOOP("sentences", "the loss of weight in a month of rest")},
    {"cool-season.vet_check_weeks", QT_TRANSLATE_NOOP("sentences", "how long a vet's check counts")},
    {"conditioner.ml_per_l", QT_TRANSLATE_NOOP("sentences", "the dose of conditioner")},
    {"lamp.height_above_top_m", QT_TRANSLATE_NOOP("sentences", "the height of a lamp above the top")},
    {"device.height_above_top_m", QT_TRANSLATE_NOOP("sentences", "the height of a lamp above the top")},
    {"device.age_hours", QT_TRANSLATE_NOOP("sentences", "how long a lamp has burnt")},
    {"uv.light_behind_face_m", QT_TRANSLATE_NOOP("sentences", "how the UV of a lamp falls with distance")},
    {"device.air_gap_m", QT_TRANSLATE_NOOP("sentences", "the air gap under a mat")},
    {"mat.air_gap_m", QT_TRANSLATE_NOOP("sentences", "the air gap under a mat")},
    {"device.power_tolerance", QT_TRANSLATE_NOOP("sentences", "how far a device strays from its rated power")},
    {"reading.accuracy_k", QT_TRANSLATE_NOOP("sentences", "the accuracy of a thermometer")},
    {"substrate.settling", QT_TRANSLATE_NOOP("sentences", "how much a bed settles")},
    {"coir.expansion_l_per_kg", QT_TRANSLATE_NOOP("sentences", "how far coir expands")},
    {"quart.l", QT_TRANSLATE_NOOP("sentences", "which quart a bag means")},
    {"water.conditioner_ml_per_l", QT_TRANSLATE_NOOP("sentences", "the dose of conditioner")},
    {"proving.days", QT_TRANSLATE_NOOP("sentences", "how long a new box is proved")},
    {"measured.length_share", QT_TRANSLATE_NOOP("sentences", "the error of a measured length")},
    {"health.weight_loss", QT_TRANSLATE_NOOP("sentences", "the loss of weight that is a matter for a vet")},
    {"health.vet_visits_per_year", QT_TRANSLATE_NOOP("sentences", "visits to the vet in a year")},
    {"care.look_over_days", QT_TRANSLATE_NOOP("sentences", "days between two looks at the animals")},
    {"care.weigh_days", QT_TRANSLATE_NOOP("sentences", "days between two weighings")},
    {"care.first_weigh_days", QT_TRANSLATE_NOOP("sentences", "days between two weighings of a new animal")},
    {"care.settling_days", QT_TRANSLATE_NOOP("sentences", "how long an animal counts as new")},
    {"care.body_check_days", QT_TRANSLATE_NOOP("sentences", "days between two checks of the body")},
    {"care.soak_days", QT_TRANSLATE_NOOP("sentences", "days between two baths")},
    {"hygiene.spot_clean_days", QT_TRANSLATE_NOOP("sentences", "days between two rounds of spot cleaning")},
    {"hygiene.disinfect_days", QT_TRANSLATE_NOOP("sentences", "days between two disinfections")},
    {"bed.turn_days", QT_TRANSLATE_NOOP("sentences", "days until the bed is turned again")},
    {"health.first_vet_check_days", QT_TRANSLATE_NOOP("sentences", "days until a new animal sees a vet")},
    {"health.quarantine_days", QT_TRANSLATE_NOOP("sentences", "the days of a quarantine")},
    {"equipment.test_thermostat_days", QT_TRANSLATE_NOOP("sentences", "days between two tests of a thermostat")},
    {"equipment.test_residual_current_days",
     QT_TRANSLATE_NOOP("sentences", "days between two tests of a residual-current device")},
    {"equipment.battery_days", QT_TRANSLATE_NOOP("sentences", "how long the battery of a thermometer lasts")},
    {"equipment.clean_mister_days", QT_TRANSLATE_NOOP("sentences", "days between two cleanings of a mister")},
    {"light.read_uv_days", QT_TRANSLATE_NOOP("sentences", "days between two readings of the UV")},
    {"room.test_smoke_alarm_days", QT_TRANSLATE_NOOP("sentences", "days between two tests of the smoke alarm")},
    {"hygiene.disinfectant_l_per_year", QT_TRANSLATE_NOOP("sentences", "disinfectant in a year")},
    {"hygiene.gloves_per_year", QT_TRANSLATE_NOOP("sentences", "gloves in a year")},
    {"care.calcium_g_per_month", QT_TRANSLATE_NOOP("sentences", "calcium in a month")},
    {"care.look_min", QT_TRANSLATE_NOOP("sentences", "minutes for the daily look")},
    {"care.feeding_min", QT_TRANSLATE_NOOP("sentences", "minutes for a feeding")},
    {"care.feedings_per_week.land-turtle", QT_TRANSLATE_NOOP("sentences", "feedings of a land turtle in a week")},
    {"care.feedings_per_week.tortoise", QT_TRANSLATE_NOOP("sentences", "feedings of a tortoise in a week")},
    {"care.feedings_per_week.lizard", QT_TRANSLATE_NOOP("sentences", "feedings of a lizard in a week")},
    {"care.feedings_per_week.snake", QT_TRANSLATE_NOOP("sentences", "feedings of a snake in a week")},
    {"care.feedings_per_week.frog", QT_TRANSLATE_NOOP("sentences", "feedings of a frog in a week")},
    {"care.water_change_min", QT_TRANSLATE_NOOP("sentences", "minutes for a change of water")},
    {"care.misting_min", QT_TRANSLATE_NOOP("sentences", "minutes for a misting by hand")},
    {"care.weekly_min", QT_TRANSLATE_NOOP("sentences", "minutes for the weekly care")},
    {"care.monthly_min", QT_TRANSLATE_NOOP("sentences", "minutes for the monthly care")},
    {"budget.horizon_years", QT_TRANSLATE_NOOP("sentences", "the years looked at")},
    {"budget.discount_rate", QT_TRANSLATE_NOOP("sentences", "the discount rate")},
    {"budget.contingency", QT_TRANSLATE_NOOP("sentences", "the reserve for what always comes on top")},
    {"model.film_factor", QT_TRANSLATE_NOOP("sentences", "how well air takes heat from surfaces")},
    {"model.exchange_factor", QT_TRANSLATE_NOOP("sentences", "how fast air passes through the top")},
    {"model.evaporation_factor", QT_TRANSLATE_NOOP("sentences", "how fast water evaporates")},
    {"model.leak_air_changes_per_h", QT_TRANSLATE_NOOP("sentences", "how leaky the box is")},
    {"model.mixing_w_m2k", QT_TRANSLATE_NOOP("sentences", "how well the air in the box mixes")},
    {"model.mesh_return",
     QT_TRANSLATE_NOOP("sentences", "how much of the heat that the mesh catches comes back into the box")},
    {"model.error_k", QT_TRANSLATE_NOOP("sentences", "what the model itself leaves open")},

    // Inputs of the climate balance that belong to no single thing
    {"room.temperature", QT_TRANSLATE_NOOP("sentences", "the temperature of the room")},
    {"room.relative-humidity", QT_TRANSLATE_NOOP("sentences", "the humidity of the room")},
    {"mesh.open-fraction", QT_TRANSLATE_NOOP("sentences", "the open share of the mesh")},
    {"bed.dampness", QT_TRANSLATE_NOOP("sentences", "how damp the bed is")},
    {"mesh.return",
     QT_TRANSLATE_NOOP("sentences", "how much of the heat that the mesh catches comes back into the box")},
    {"misting", QT_TRANSLATE_NOOP("sentences", "how much is misted")},
    {"model.film-factor", QT_TRANSLATE_NOOP("sentences", "how well air takes heat from surfaces")},
    {"model.exchange-factor", QT_TRANSLATE_NOOP("sentences", "how fast air passes through the top")},
    {"model.leak", QT_TRANSLATE_NOOP("sentences", "how leaky the box is")},
    {"model.evaporation-factor", QT_TRANSLATE_NOOP("sentences", "how fast water evaporates")},
    {"model.mixing", QT_TRANSLATE_NOOP("sentences", "how well the air in the box mixes")},
    {"model.error", QT_TRANSLATE_NOOP("sentences", "what the model itself leaves open")},
};

// Inputs of the climate balance that belong to a thing, {0}
constexpr Sentence property_rows[] = {
    {"conductivity", QT_TRANSLATE_NOOP("sentences", "how well {0} conducts heat")},
    {"conductivity-per-water", QT_TRANSLATE_NOOP("sentences", "how well damp {0} conducts heat")},
    {"emissivity", QT_TRANSLATE_NOOP("sentences", "how well {0} gives off radiant heat")},
    {"lamp-transmittance", QT_TRANSLATE_NOOP("sentences", "how much lamp light {0} lets through")},
    {"lamp-absorptance", QT_TRANSLATE_NOOP("sentences", "how much lamp light {0} takes up")},
    {"leak", QT_TRANSLATE_NOOP("sentences", "how much air {0} lets through")},
    {"water-damp", QT_TRANSLATE_NOOP("sentences", "how damp {0} is kept")},
    {"water-dry", QT_TRANSLATE_NOOP("sentences", "how far {0} dries out under a lamp")},
    {"wetness", QT_TRANSLATE_NOOP("sentences", "how wet the surface of {0} is")},
    {"power", QT_TRANSLATE_NOOP("sentences", "the power of {0}")},
    {"radiant-share", QT_TRANSLATE_NOOP("sentences", "how much of its power {0} radiates")},
    {"convective-share", QT_TRANSLATE_NOOP("sentences", "how much of its power {0} gives to the air")},
    {"beam", QT_TRANSLATE_NOOP("sentences", "how wide the beam of {0} is")},
};

} // namespace

Sentences property_names()
{
    return property_rows;
}

Sentences assumption_names()
{
    return rows;
}

} // namespace loam::words
