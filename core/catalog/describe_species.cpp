#include "core/catalog/describe.hpp"
#include "core/catalog/names.hpp"

namespace loam::catalog {

static void describe(json::Archive& archive, Temperatures& temperatures)
{
    within<limits::temperature_c>(archive, {"basking_surface_c", "Surface under the lamp; absent: no basking spot"},
                                  temperatures.basking_surface_c);
    within<limits::temperature_c>(archive, {"warm_c", "Shaded thermometer at ground level, warm side"},
                                  temperatures.warm_c);
    within<limits::temperature_c>(archive, {"cool_c", "Shaded thermometer at ground level, cool side"},
                                  temperatures.cool_c);
    within<limits::temperature_c>(archive, {"night_c", "Ground level at night, healthy and not brumating"},
                                  temperatures.night_c);
    within<limits::temperature_c>(archive, {"harmful_c", "An animal comes to harm below min or above max"},
                                  temperatures.harmful_c);
}

static void describe(json::Archive& archive, HumidityNeed& need)
{
    within<limits::share>(archive, {"adult", "Relative humidity at ground level, 0 to 1"}, need.adult);
    within<limits::share>(archive, {"juvenile", "The same for young animals"}, need.juvenile);
    archive.number({"juvenile_below_length_m", "Shorter animals count as young, m"}, need.juvenile_below_length_m,
                   limits::body_length_m);
    archive.flag({"humid_hide", "Needs a hide that is kept damp"}, need.humid_hide);
    archive.object({"source", "Where the need comes from"}, need.source);
}

static void describe(json::Archive& archive, UvNeed& need)
{
    archive.integer({"ferguson_zone", "Zone of exposure, 1 to 4"}, need.ferguson_zone, {1.0, 4.0});
    archive.object({"source", "Who assigned the zone"}, need.source);
}

static void describe(json::Archive& archive, GrowthSpan& span)
{
    archive.number({"from_age_years", "Age at which the span begins"}, span.from_age_years, limits::years);
    archive.number({"to_age_years", "Age at which it ends; absent: without end"}, span.to_age_years, limits::years);
    archive.number({"slow_per_year", "Slow bound, share of the present length per year"}, span.slow_per_year,
                   limits::ratio);
    archive.number({"fast_per_year", "Fast bound, share of the present length per year"}, span.fast_per_year,
                   limits::ratio);
    archive.object({"source", "Where the rates were published"}, span.source);
    refuse_unless_ordered(archive, {"slow_per_year", span.slow_per_year}, {"fast_per_year", span.fast_per_year});
    if (span.to_age_years) {
        refuse_unless_ordered(archive, {"from_age_years", span.from_age_years}, {"to_age_years", *span.to_age_years});
    }
}

static void describe(json::Archive& archive, Diet& diet)
{
    within<limits::amount>(archive, {"monthly_cost_units", "Units of the food item that an adult eats a month"},
                           diet.monthly_cost_units);
    archive.text({"food_item", "Need kind of the price list, for example food.greens"}, diet.food_item, {1, 80});
    refuse_unless_need_kind(archive, "food_item", diet.food_item);
}

static void describe(json::Archive& archive, CoolSeasonNeed& need)
{
    within<limits::temperature_c>(archive, {"cold_c", "Of the place it rests in"}, need.cold_c);
    within<limits::amount>(archive, {"cold_weeks", "Weeks at that temperature"}, need.cold_weeks);
}

static void describe_body(json::Archive& archive, Species& species)
{
    archive.choice({"measure", "What of the body the lengths are"}, species.measure, body_measure_names);
    within<limits::body_length_m>(archive, {"adult_length_m", "Adult length in the measure, m"},
                                  species.adult_length_m);
    within<limits::body_length_m>(archive, {"adult_total_length_m", "Snout to tail tip, m"},
                                  species.adult_total_length_m);
    within<limits::body_mass_kg>(archive, {"adult_mass_kg", "Adult mass, kg"}, species.adult_mass_kg);
    within<limits::body_length_m>(archive, {"hatchling_length_m", "Length at hatching or birth, m"},
                                  species.hatchling_length_m);
    within<limits::years>(archive, {"lifespan_years", "Life span in captivity, years"}, species.lifespan_years);
    archive.number({"back_height_ratio", "Height of the back over the measure"}, species.back_height_ratio,
                   limits::share);
    archive.object({"back_height_source", "Where that ratio comes from"}, species.back_height_source);
}

static void describe_housing(json::Archive& archive, Species& species)
{
    archive.object({"temperatures", "degC"}, species.temperatures);
    archive.object({"humidity", "Relative humidity, 0 to 1"}, species.humidity);
    archive.object({"uv", "UV-B need; absent: none known"}, species.uv);
    within<limits::hours_of_day>(archive, {"photoperiod_h", "Hours of light a day"}, species.photoperiod_h);
    within<limits::bed_depth_m>(archive, {"substrate_depth_m", "Settled depth of the bed, m"},
                                species.substrate_depth_m);
    archive.texts({"substrates", "Suited materials by id, best first"}, species.substrates, an_id, {0, 40});
    archive.texts({"rules", "Ids of the space rules that apply to it"}, species.rules, an_id, {0, 40});
    archive.list({"growth", "Published growth; absent: none"}, species.growth, {0, 20});
    within<limits::per_day>(archive, {"water_changes_per_day", "Changes of the drinking water a day"},
                            species.water_changes_per_day);
    within<limits::ratio>(archive, {"bowl_water_depth_ratio", "Depth of the water over the measure"},
                          species.bowl_water_depth_ratio);
}

void describe(json::Archive& archive, Species& species)
{
    archive.text({"id", "Scientific name, kebab-case"}, species.id, an_id);
    archive.text({"scientific_name", "Scientific name"}, species.scientific_name, a_name);
    archive.text({"common_name", "English name"}, species.common_name, a_name);
    archive.choice({"group", "Kind of animal"}, species.group, group_names);
    archive.choice({"habit", "How it lives"}, species.habit, habit_names);
    describe_body(archive, species);
    archive.flag({"solitary", "Keeping one alone is sound"}, species.solitary);
    archive.flag({"males_fight", "Two males fight"}, species.males_fight);
    archive.object({"social_source", "Where the two come from"}, species.social_source);
    describe_housing(archive, species);
    archive.flag({"brumates", "Rests through the winter"}, species.brumates);
    archive.object({"brumation_source", "Where that comes from"}, species.brumation_source);
    archive.object({"cool_season", "How it rests in the cold; absent: no figures"}, species.cool_season);
    archive.object({"diet", "What it eats, for the running cost"}, species.diet);
    archive.texts({"notes", "Codes of cautions particular to it"}, species.notes, an_id, {0, 40});
    archive.extras(species.extras);
}

} // namespace loam::catalog
