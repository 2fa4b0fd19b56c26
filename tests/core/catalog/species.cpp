#include <algorithm>
#include <set>

#include "shipped.hpp"
#include "tests/catch.hpp"

using namespace loam;
using namespace loam::catalog;

namespace {

const std::vector<Species>& all()
{
    return shipped::catalog().species;
}

const Species& species(const std::string& id)
{
    const Species* const found = shipped::catalog().find_species(id);
    INFO(id);
    REQUIRE(found != nullptr);
    return *found;
}

// "Genus species subspecies" as an id.
std::string kebab(std::string name)
{
    for (char& c : name) {
        c = c == ' ' ? '-' : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    }
    return name;
}

} // namespace

TEST_CASE("at least sixteen species are shipped, of all five groups")
{
    CHECK(all().size() >= 16);
    std::set<Group> groups;
    for (const Species& each : all()) {
        groups.insert(each.group);
    }
    CHECK(groups.size() == 5);
}

TEST_CASE("the species that plans were promised are there")
{
    for (const char* id : {"terrapene-carolina-triunguis", "terrapene-ornata", "testudo-hermanni",
                           "chelonoidis-carbonarius", "pogona-vitticeps", "eublepharis-macularius",
                           "pantherophis-guttatus", "python-regius", "dendrobates-tinctorius"}) {
        species(id);
    }
}

TEST_CASE("a species is called by its scientific name")
{
    for (const Species& each : all()) {
        CHECK(each.id == kebab(each.scientific_name));
        CHECK_FALSE(each.common_name.empty());
    }
}

TEST_CASE("every species has at least two space rules, so that one source alone never decides")
{
    for (const Species& each : all()) {
        INFO(each.id);
        CHECK(each.rules.size() >= 2);
        CHECK_FALSE(each.substrates.empty());
    }
}

TEST_CASE("what a species needs to be judged has both ends where a target needs them")
{
    for (const Species& each : all()) {
        INFO(each.id);
        const Temperatures& t = each.temperatures;
        REQUIRE(t.warm_c.has_value());
        REQUIRE(t.cool_c.has_value());
        CHECK((t.warm_c->min && t.warm_c->max));
        CHECK((t.cool_c->min && t.cool_c->max));
        CHECK((t.night_c && t.night_c->min));
        CHECK((t.harmful_c && t.harmful_c->max));
        CHECK((each.humidity.adult && each.humidity.adult->min && each.humidity.adult->max));
        CHECK((each.adult_length_m.min && each.adult_length_m.max));
        CHECK((each.photoperiod_h.min && each.photoperiod_h.max));
        CHECK(each.substrate_depth_m.min.has_value());
        CHECK((each.lifespan_years.min || each.lifespan_years.max));
        CHECK(each.water_changes_per_day.min.has_value());
    }
}

TEST_CASE("the zones of a species get no warmer from basking spot to night, and none reaches what harms it")
{
    for (const Species& each : all()) {
        INFO(each.id);
        const Temperatures& t = each.temperatures;
        CHECK(*t.cool_c->max <= *t.warm_c->max);
        CHECK(*t.cool_c->min <= *t.warm_c->min);
        CHECK(*t.night_c->min <= *t.warm_c->max);
        CHECK(*t.warm_c->max < *t.harmful_c->max);
        if (t.basking_surface_c) {
            CHECK(*t.basking_surface_c->max >= *t.warm_c->max);
        }
        if (t.harmful_c->min) {
            CHECK(*t.harmful_c->min < *t.night_c->min);
        }
    }
}

TEST_CASE("sizes are of the order of the animal")
{
    for (const Species& each : all()) {
        INFO(each.id);
        CHECK(each.back_height_ratio > 0.0);
        if (each.hatchling_length_m && each.hatchling_length_m->max) {
            CHECK(*each.hatchling_length_m->max < *each.adult_length_m.max);
        }
        if (each.adult_total_length_m && each.adult_total_length_m->max) {
            CHECK(*each.adult_total_length_m->max > *each.adult_length_m.max);
        }
        const bool shelled = each.group == Group::land_turtle || each.group == Group::tortoise;
        CHECK(shelled == (each.measure == space::BodyMeasure::carapace));
        CHECK((each.group != Group::snake || each.measure == space::BodyMeasure::total));
    }
}

TEST_CASE("frogs have no basking spot in the sheet of the dart frogs, and drown in no bowl deeper than themselves")
{
    // Stichting Sauria 2005 through a zoo nutrition page (secondary): dart frogs have no basking, 28 degC at most.
    const Species& frog = species("dendrobates-tinctorius");
    CHECK_FALSE(frog.temperatures.basking_surface_c.has_value());
    CHECK(*frog.temperatures.harmful_c->max <= 30.0);
    for (const Species& each : all()) {
        if (each.group == Group::frog && each.bowl_water_depth_ratio.max) {
            INFO(each.id);
            CHECK(*each.bowl_water_depth_ratio.max <= 1.0); // trade book: no deeper than the frog at rest (secondary)
        }
    }
}

TEST_CASE("the bearded dragon's sheet holds the published bands")
{
    // RSPCA species page (confirmed): basking 38 to 42, cool side 22 to 26 degC.
    const Species& dragon = species("pogona-vitticeps");
    CHECK(*dragon.temperatures.basking_surface_c->min >= 35.0);
    CHECK(*dragon.temperatures.basking_surface_c->max == Approx(42.0));
    CHECK(*dragon.temperatures.cool_c->min == Approx(22.0));
    REQUIRE(dragon.uv.has_value());
    CHECK(dragon.uv->ferguson_zone >= 3);
}

TEST_CASE("box turtles grow as Stickel and Bunck measured, and no curve is invented below their ages")
{
    // Stickel and Bunck 1989, J. Herpetology 23:216-223, abstract (confirmed): males of 8 to 13 years 6.7 % a year,
    // females 5.3 %; at 14 to 19 years 2.3 % and 3.4 %.
    const Species& turtle = species("terrapene-carolina-carolina");
    REQUIRE_FALSE(turtle.growth.empty());
    for (const GrowthSpan& span : turtle.growth) {
        CHECK(span.from_age_years >= 8.0);
        CHECK(span.slow_per_year <= span.fast_per_year);
    }
    CHECK(turtle.growth[0].slow_per_year == Approx(0.053));
    CHECK(turtle.growth[0].fast_per_year == Approx(0.067));
}

TEST_CASE("tropical species do not brumate")
{
    // Common practice and secondary pages: sulcata, red-foot and leopard tortoise never.
    for (const char* id : {"centrochelys-sulcata", "chelonoidis-carbonarius", "stigmochelys-pardalis", "python-regius",
                           "dendrobates-tinctorius"}) {
        INFO(id);
        CHECK_FALSE(species(id).brumates);
    }
    CHECK(species("testudo-hermanni").brumates);
}

TEST_CASE("only species that rest have temperatures for a rest, far under their cool side and above what harms")
{
    // Cold: a club page on Testudo, about 5 degC, stable 3 to 7, Horsfield's 3 to 5 (secondary).
    int resting = 0;
    for (const Species& one : all()) {
        if (!one.cool_season) {
            continue;
        }
        ++resting;
        INFO(one.id);
        CHECK(one.brumates);
        const Band& cold = one.cool_season->cold_c;
        REQUIRE((cold.min && cold.max && one.cool_season->cold_weeks.min && one.cool_season->cold_weeks.max));
        CHECK(*cold.min >= 3.0);
        CHECK(*cold.max <= 7.0);
        REQUIRE((one.temperatures.cool_c && one.temperatures.cool_c->min));
        CHECK(*cold.max < *one.temperatures.cool_c->min - 10.0);
        if (one.temperatures.harmful_c && one.temperatures.harmful_c->min) {
            CHECK(*cold.min >= *one.temperatures.harmful_c->min);
        }
    }
    CHECK(resting == 6);
    CHECK(*species("testudo-horsfieldii").cool_season->cold_c.max == 5.0);
}
