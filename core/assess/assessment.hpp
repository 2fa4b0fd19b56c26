// What we conclude of a plan: nothing but data. Ranges stay ranges; what is not known is an absent optional.
#pragma once

#include <array>
#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/assess/calibration_result.hpp"
#include "core/assess/record_result.hpp"
#include "core/assess/uv_result.hpp"
#include "core/catalog/prices.hpp"
#include "core/catalog/rule.hpp"
#include "core/climate/course.hpp"
#include "core/climate/dry_spell.hpp"
#include "core/climate/steady.hpp"
#include "core/climate/switching.hpp"
#include "core/explain.hpp"
#include "core/money.hpp"
#include "core/plan/site.hpp"
#include "core/season/eligibility.hpp"
#include "core/season/rest.hpp"

namespace loam::assess {

// An input that the plan does not give, with the bracket that was used instead.
struct Assumed {
    std::string where; // JSON Pointer
    std::string unit;
    std::optional<Range> bracket; // absent: nothing could be assumed, what hangs on it is not known
    Source source;
    friend bool operator==(const Assumed&, const Assumed&) = default;
};

struct RuleResult {
    std::string id;
    std::string title;
    std::string species;
    catalog::RuleKind kind = catalog::RuleKind::welfare;
    std::string jurisdiction;
    std::optional<double> required_m2; // absent: not applicable or not computable
    std::optional<double> required_length_m;
    std::optional<double> required_width_m;
    std::optional<double> required_height_m;
    std::optional<double> required_grown_m2; // for the expected adults
    Source source;
    Judgement judgement;                        // for the animals as they are
    Judgement judgement_grown;                  // for the adults
    std::optional<double> broken_in_years_fast; // earliest year in which growth breaks it; 0: broken now
    std::optional<double> broken_in_years_slow;
    friend bool operator==(const RuleResult&, const RuleResult&) = default;
};

struct SpaceResult {
    double floor_m2 = 0.0;
    double usable_floor_m2 = 0.0;
    std::optional<double> required_floor_m2;
    std::string governing_rule; // id; empty: none applies
    Judgement judgement;
    std::optional<double>
        outgrown_in_years; // earliest, by the governing rule; absent: not within the life span or not known
    std::vector<RuleResult> rules;
    friend bool operator==(const SpaceResult&, const SpaceResult&) = default;
};

struct SubstrateResult {
    std::string layer; // id
    std::string material;
    double settled_l = 0.0;
    Range expanded_l; // to fill in, before settling
    Range dry_kg;
    Range damp_kg;
    friend bool operator==(const SubstrateResult&, const SubstrateResult&) = default;
};

struct MassResult {
    double shell_kg = 0.0;
    Range substrate_kg; // damp
    double water_kg = 0.0;
    double fittings_kg = 0.0; // of those whose mass is given
    double animals_kg = 0.0;
    Range total_kg;
    Range pressure_kpa; // under the footprint
    friend bool operator==(const MassResult&, const MassResult&) = default;
};

enum class Zone { basking, warm, cool };

struct ZoneResult {
    Zone zone = Zone::warm;
    climate::Measure measure = climate::Measure::ground;
    Range temperature_c;
    Target target_c;
    std::string species; // whose target it is
    Judgement judgement;
    climate::Rect area;
    std::string limited_by; // the input that widens the range most
    double limited_share = 0.0;
    friend bool operator==(const ZoneResult&, const ZoneResult&) = default;
};

struct HeatCase {
    std::string id;     // "winter-day", …
    bool known = false; // the balance converged
    double power_w = 0.0;
    double loss_w = 0.0;
    std::vector<ZoneResult> zones;
    std::optional<Range> floor_share_in_band; // from the coolest to the warmest that the species asks for
    climate::CaseResult detail;
    friend bool operator==(const HeatCase&, const HeatCase&) = default;
};

// The air in a hide that is kept moist.
struct DampHideResult {
    std::string id; // of the fitting
    Range relative_humidity;
    friend bool operator==(const DampHideResult&, const DampHideResult&) = default;
};

struct HumidityCase {
    std::string id;
    std::optional<Range> relative_humidity; // at ground level on the cool side, by which it is judged
    std::optional<Range> warm_side;         // the same on the warm side
    std::optional<Range> air;               // of the lower air
    std::vector<DampHideResult> hides;
    Target target;
    Range evaporation_l_per_day;
    std::optional<Range> misting_needed_l_per_day;
    Judgement judgement;
    friend bool operator==(const HumidityCase&, const HumidityCase&) = default;
};

struct DevicePower {
    std::string id;
    Range connected_w;
    Range daily_kwh_winter;
    Range daily_kwh_summer;
    double hours_per_day = 0.0;
    std::array<Range, 12> month_kwh{};
    Range year_kwh;
    friend bool operator==(const DevicePower&, const DevicePower&) = default;
};

struct PowerResult {
    Range connected_w;
    Range daily_kwh; // mean of winter and summer
    std::int64_t timed_outlets = 0;
    std::int64_t always_on_outlets = 0;
    std::vector<DevicePower> devices;
    std::array<Range, 12> month_kwh{};
    std::array<std::optional<Money>, 12> month_cost; // of the likely kWh; absent: the tariff is not known
    Range year_kwh;
    friend bool operator==(const PowerResult&, const PowerResult&) = default;
};

struct BowlResult {
    std::string id;
    Range volume_l;
    Range water_depth_m;
    Target depth_m;      // by the sheets, for the animals here; without an end: no ratio is known
    Range carried_kg;    // full, with the bowl's own weight where it is stated
    Judgement judgement; // the worse of size and depth; not known where nothing is asked for
    friend bool operator==(const BowlResult&, const BowlResult&) = default;
};

struct WaterResult {
    Range daily_l;
    Range bowl_l; // all bowls filled once
    Range changes_per_day;
    Range changed_l_per_day;
    Range top_up_l_per_day;
    Range misted_l_per_day;
    Range treated_l_per_day;
    std::optional<Range> conditioner_ml_per_day; // absent: none needed or dose not known
    std::optional<Range> conditioner_ml_per_fill;
    std::optional<Range> drawn_l_per_day;     // from the mains; absent: the source is not stated
    std::optional<Range> cartridges_per_year; // absent: no filter, or what one is good for is not stated
    std::optional<plan::WaterSource> source;  // absent: not stated
    std::optional<MoneyRange> price_per_year; // of what is drawn; absent: price or source not stated
    bool by_climate = false;                  // what tops up is the solved box's evaporation, not the bracket
    // To be poured into the bed to keep it as damp as planned, beyond what is misted; below nought it gets wetter.
    // Absent: the climate is not solved, or there is no bed.
    std::optional<Range> bed_l_per_day;
    std::vector<BowlResult> bowls;
    friend bool operator==(const WaterResult&, const WaterResult&) = default;
};

struct PhotoperiodResult {
    std::optional<double> hours; // planned
    Target target_h;
    Judgement judgement;
    std::optional<double> day_length_midsummer_h; // at the site
    std::optional<double> day_length_midwinter_h;
    friend bool operator==(const PhotoperiodResult&, const PhotoperiodResult&) = default;
};

// Lamps on and off on one day of the year, HH:MM.
struct LightTimes {
    double hours = 0.0;
    std::string on;
    std::string off;
    friend bool operator==(const LightTimes&, const LightTimes&) = default;
};

struct LightDay {
    int month = 1;
    int day = 1;
    std::optional<double> sky_h;          // day length at the site; absent: latitude not known
    std::optional<LightTimes> planned;    // absent: not stated, or the lamps are off for a rest
    std::optional<LightTimes> by_the_sky; // as long as the sky's day, held within what the sheets ask for
    double running_share = 1.0;           // of usual hours and heat: less while all animals rest
    friend bool operator==(const LightDay&, const LightDay&) = default;
};

struct CoolSeasonResult {
    std::string animal;
    std::string species;
    bool asked = false; // the keeper has asked for it
    season::Eligibility eligibility;
    std::optional<season::Rest> rest; // only where asked and eligible
    std::vector<season::Week> weeks;
    std::vector<season::WeighIn> weigh_ins;
    double mass_kg = 0.0; // that the weights go by
    double stop_loss = 0.0;
    double monthly_loss = 0.0;
    std::string vet_checked; // YYYY-MM-DD; empty: not stated
    bool vet_check_counts = false;
    Source cold_source;
    Source loss_source;
    Source species_source; // why it rests, or does not
    friend bool operator==(const CoolSeasonResult&, const CoolSeasonResult&) = default;
};

// How long it takes until the least extreme place of the box passes what a species bears.
struct TimeToLimit {
    std::string species;
    Direction direction = Direction::above; // above: the coolest place grows too hot; below: the warmest too cold
    double limit_c = 0.0;
    std::optional<double> earliest_h; // from the far end of the range; absent: not within the course
    std::optional<double> likely_h;
    Source source;
    friend bool operator==(const TimeToLimit&, const TimeToLimit&) = default;
};

// A thermostat that switches on and off, in one of a day's two states.
struct SwitchingResult {
    std::string device;
    bool lamps_on = true;
    double hysteresis_k = 0.0;
    bool assumed = false; // the plan does not say the hysteresis, or not that it switches
    climate::Switching cycle;
    friend bool operator==(const SwitchingResult&, const SwitchingResult&) = default;
};

// What runs over hours. Readings are likely values; their range is that of the steady case it starts from.
struct CourseResult {
    std::string id; // days: winter, summer; drills: power-cut, lamp-out, mat-stuck-on, heat-wave, covers-off; warm-up
    climate::Course course; // hours count from switching on, or from the fault
    Range basking_spread_k; // low and high against likely, which is 0
    Range warm_spread_k;
    Range cool_spread_k;
    Range humidity_spread; // likewise; what it is laid about stays within 0..1
    std::vector<TimeToLimit> limits;
    std::vector<SwitchingResult> switching; // of a day
    friend bool operator==(const CourseResult&, const CourseResult&) = default;
};

// The bed dries while nobody waters or mists it; the bowls are kept filled.
struct DrySpellResult {
    std::string season; // winter, summer
    climate::DrySpell course;
    std::optional<double> least_humidity; // what the species ask for, 0..1; absent: no sheet says
    // Until it is too dry by day; absent: nothing to compare with. What is longer than the course counts as its length:
    bool holds_throughout = false; // the likely value
    bool may_hold_longer = false;  // the high end
    std::optional<Range> days;
    friend bool operator==(const DrySpellResult&, const DrySpellResult&) = default;
};

struct EnclosureResult {
    std::string id;
    std::string name;
    Judgement overall; // the worst of its findings
    SpaceResult space;
    std::vector<SubstrateResult> substrate;
    MassResult mass;
    std::vector<HeatCase> heat; // empty until the climate stage has run
    std::vector<HumidityCase> humidity;
    std::vector<CourseResult> days; // these three are empty until the course stage has run
    std::vector<CourseResult> drills;
    std::vector<DrySpellResult> dry_spells;       // like the days
    std::optional<CourseResult> warm_up;          // the test run: from a box as warm as the winter room
    std::optional<CalibrationResult> calibration; // absent: no readings, or the climate stage has not run
    UvResult uv;
    PowerResult power;
    WaterResult water;
    PhotoperiodResult photoperiod;
    std::vector<LightDay> light_year; // the 1st and the 16th of each month
    bool light_with_the_sky = false;
    bool hemisphere_known = false;              // else a month's energy may be that of winter or of summer
    std::vector<CoolSeasonResult> cool_seasons; // one for each group of animals whose species is known
    std::vector<RecordResult> records;          // of the animals that were measured over time
    friend bool operator==(const EnclosureResult&, const EnclosureResult&) = default;
};

struct CircuitResult {
    std::string id;
    Range load_w;
    std::optional<Range> load_fraction; // of what may hang on it continuously
    Judgement judgement;
    friend bool operator==(const CircuitResult&, const CircuitResult&) = default;
};

struct StripResult {
    std::string id;
    Range load_w;
    std::int64_t timed_used = 0;
    std::int64_t always_on_used = 0;
    Judgement judgement;
    friend bool operator==(const StripResult&, const StripResult&) = default;
};

struct StandResult {
    std::string id;
    Range load_kg;
    std::optional<double> rated_kg;
    Judgement judgement;
    friend bool operator==(const StandResult&, const StandResult&) = default;
};

struct ShoppingLine {
    std::string need;      // the kind of need, for example "substrate.coir-chips"
    std::string item;      // id of the price list; empty: nothing in it serves the need
    std::string item_name; // as in the price list
    std::string pack;      // name of the pack
    catalog::Category category = catalog::Category::other;
    std::string unit;
    double amount_needed = 0.0; // net of what is owned
    double amount_owned = 0.0;
    std::int64_t packs = 0;
    Range left_over;
    std::optional<MoneyRange> pack_price; // absent: no price known, never zero
    std::optional<MoneyRange> line_total;
    std::vector<std::string> enclosures; // ids
    std::string why;                     // a code that app/words knows
    std::string where;                   // plan element it comes from
    std::string channel;                 // where it is bought; empty: nowhere
    std::string instead_of;              // what is out of stock, and would have been bought
    friend bool operator==(const ShoppingLine&, const ShoppingLine&) = default;
};

enum class CostKind { electricity, replacement, substrate, food, water, health, other };

struct CostLine {
    CostKind kind = CostKind::other;
    std::string item; // item id or device id
    std::string name;
    MoneyRange per_year;
    std::optional<double> every_months;
    friend bool operator==(const CostLine&, const CostLine&) = default;
};

struct Replacement {
    std::string item;
    std::string name;
    std::string where;                    // device or layer id
    std::chrono::year_month_day earliest; // if it lasts only the short life, or is as old as it may be
    std::chrono::year_month_day due;
    MoneyRange price;
    bool uv_fades = false; // its UV falls below what its animals need before it is worn out
    friend bool operator==(const Replacement&, const Replacement&) = default;
};

struct HorizonYear {
    std::int64_t year = 0; // 0 is the startup
    MoneyRange spent;
    MoneyRange cumulative;
    friend bool operator==(const HorizonYear&, const HorizonYear&) = default;
};

struct CostMonth {
    std::chrono::year_month month;
    MoneyRange electricity;
    MoneyRange replaced; // whole prices, in the month in which the likely life ends
    MoneyRange others;
    MoneyRange spent;
    friend bool operator==(const CostMonth&, const CostMonth&) = default;
};

// What one place brings, and what is paid for it beside the goods.
struct DeliveryCost {
    std::string channel;
    MoneyRange goods;
    MoneyRange delivery;
    MoneyRange tax;
    bool below_minimum = false; // the place takes no order of so little
    friend bool operator==(const DeliveryCost&, const DeliveryCost&) = default;
};

// Of the animal that may live longest; see life_cost().
struct LifeCost {
    std::string animal;
    Range years;            // left to it
    bool or_longer = false; // its sheet names no longest life
    MoneyRange cost;        // to start and to run over those years, two significant figures
    friend bool operator==(const LifeCost&, const LifeCost&) = default;
};

struct Costs {
    Currency currency;
    bool prices_match_currency = true;    // false: the price list is in another currency, nothing is costed
    MoneyRange startup;                   // goods, deliveries with their tax, own lines, and what is set aside
    std::vector<DeliveryCost> deliveries; // of the places where something is bought
    MoneyRange running_per_year;
    std::optional<MoneyRange> electricity_per_year; // absent: the tariff is not known
    std::vector<CostLine> lines;
    std::vector<HorizonYear> horizon;
    std::vector<Replacement> replacements; // within the first year, by date
    std::optional<Money> net_present_cost; // of the typical prices
    std::optional<Money> equivalent_annual_cost;
    std::vector<CostMonth> months; // twelve, from the one of the assessment's day
    std::int64_t animals = 0;
    std::optional<MoneyRange> running_per_animal; // a year; absent without animals
    std::optional<LifeCost> life;
    std::vector<std::string> unpriced; // needs without a price
    bool without_electricity = false;  // used, but its tariff is not known: it is in none of the sums
    std::string price_date;
    bool price_illustrative = true;
    friend bool operator==(const Costs&, const Costs&) = default;
};

struct Assessment {
    std::string plan_title;
    std::chrono::year_month_day date;
    std::vector<Assumed> assumed;
    std::vector<EnclosureResult> enclosures;
    std::vector<CircuitResult> circuits;
    std::vector<StripResult> strips;
    std::vector<StandResult> stands;
    std::vector<ShoppingLine> shopping;
    Costs costs;
    std::vector<Finding> findings; // most serious first
    bool complete = false;         // false while the climate stage is still to come
    friend bool operator==(const Assessment&, const Assessment&) = default;
};

} // namespace loam::assess
