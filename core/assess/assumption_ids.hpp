// The entries of resources/assumptions that assess and calendar ask the catalog for. A test holds the shipped files
// against this list. What a material, a device kind or a species sheet knows (thickness, beam, clearance, body size) is
// taken from there instead.
#pragma once

#include <array>
#include <string_view>

namespace loam::assess {

struct AssumptionId {
    std::string_view id;
    std::string_view unit;
};

inline constexpr auto assumption_ids = std::to_array<AssumptionId>({
    // Room, where the plan is silent
    {"room.winter.day_c", "degC"},
    {"room.winter.night_c", "degC"},
    {"room.winter.relative_humidity", "1"},
    {"room.summer.day_c", "degC"},
    {"room.summer.night_c", "degC"},
    {"room.summer.relative_humidity", "1"},
    {"room.heat_wave_c", "degC"},
    // Spread of a stated room temperature and humidity about the stated value (low, 0, high)
    {"room.stated_spread_k", "K"},
    {"room.stated_humidity_spread", "1"},
    // Accuracy of a thermometer, plus or minus; the high end counts
    {"reading.accuracy_k", "K"},
    // Shell and fittings; "panel.thickness_m.<material>" and "fitting.height_m.<kind>" beside these
    {"mesh.open_fraction", "1"},
    {"fitting.height_m", "m"},
    {"bowl.water_depth_m", "m"},
    {"bowl.fill_ratio", "1"},
    {"bowl.evaporation_l_m2d", "l/(m2 d)"},
    {"substrate.settling", "1"},
    // Equipment
    {"device.height_above_top_m", "m"}, // of a lamp on the box whose height is not stated
    {"device.air_gap_m", "m"},
    {"device.age_hours", "h"},
    {"control.hysteresis_k", "K"},   // of a thermostat that switches
    {"device.power_tolerance", "1"}, // factor on a stated power
    {"uv.light_behind_face_m", "m"}, // where a lamp's light seems to come from, for a single reading
    {"circuit.other_load_w", "W"},
    // Moisture and water
    {"moisture.misting_l_per_day", "l/d"},
    {"moisture.water_changes_per_day", "1/d"},
    {"conditioner.ml_per_l", "ml/l"},
    {"water.reject_l_per_l", "1"},
    {"bowl.length_ratio", "1"},
    {"bowl.turning_ratio", "1"},
    {"hide.entrance_m2", "m2"},
    {"hide.film_w_m2k", "W/(m2 K)"}, // in the still air of a hide
    // The cool season
    {"cool-season.wind_down_weeks", "weeks"},
    {"cool-season.warm_up_weeks", "weeks"},
    {"cool-season.stop_loss", "1"},
    {"cool-season.monthly_loss", "1"},
    {"cool-season.vet_check_weeks", "weeks"},
    {"proving.days", "d"}, // that a new box runs before the animal moves in
    // Measuring an animal, and weight that is lost
    {"measured.length_share", "1"}, // error of a measured length
    {"health.weight_loss", "1"},    // share lost: to be watched, to be shown to a vet
    // Hygiene and health, for the running costs
    {"health.vet_visits_per_year", "1/a"},
    {"hygiene.disinfectant_l_per_year", "l/a"},
    {"hygiene.gloves_per_year", "1/a"},
    {"care.calcium_g_per_month", "g/mo"},
    // The care calendar (core/calendar): days between
    {"care.look_over_days", "d"},
    {"care.weigh_days", "d"},
    {"care.first_weigh_days", "d"},
    {"care.settling_days", "d"},
    {"care.body_check_days", "d"},
    {"care.soak_days", "d"},
    {"hygiene.spot_clean_days", "d"},
    {"hygiene.disinfect_days", "d"},
    {"bed.turn_days", "d"},
    {"health.first_vet_check_days", "d"},
    {"health.quarantine_days", "d"},
    {"equipment.test_thermostat_days", "d"},
    {"equipment.test_residual_current_days", "d"},
    {"equipment.battery_days", "d"},
    {"equipment.clean_mister_days", "d"},
    {"light.read_uv_days", "d"},
    {"room.test_smoke_alarm_days", "d"},
    // Minutes and frequencies of care, for the hours a week
    {"care.look_min", "min"},
    {"care.feeding_min", "min"},
    {"care.feedings_per_week.land-turtle", "1/wk"},
    {"care.feedings_per_week.tortoise", "1/wk"},
    {"care.feedings_per_week.lizard", "1/wk"},
    {"care.feedings_per_week.snake", "1/wk"},
    {"care.feedings_per_week.frog", "1/wk"},
    {"care.water_change_min", "min"},
    {"care.misting_min", "min"},
    {"care.weekly_min", "min"},
    {"care.monthly_min", "min"},
    // Money
    {"budget.horizon_years", "a"},
    {"budget.discount_rate", "1/a"},
    {"budget.contingency", "1"},
    // Coefficients of the climate model; 1 is the published correlation
    {"model.film_factor", "1"},
    {"model.exchange_factor", "1"},
    {"model.leak_air_changes_per_h", "1/h"},
    {"model.evaporation_factor", "1"},
    {"model.mixing_w_m2k", "W/(m2 K)"},
    {"model.mesh_return", "1"},
    {"model.error_k", "K"},
});

} // namespace loam::assess
