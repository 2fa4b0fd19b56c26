#include "tests/catch.hpp"

#include "core/climate/air.hpp"
#include "core/climate/films.hpp"

using namespace loam::climate;

TEST_CASE("the vertical plate meets the textbooks' worked examples")
{
    // Source: Incropera Example 9.2, as coded in the `ht` library: Ra 1.813e9, Pr 0.69.
    CHECK(*vertical_nusselt(0.69 * 2.63e9, 0.69) == Approx(147.16).epsilon(1e-4));
    CHECK(147.16 * 0.0338 / 0.71 == Approx(7.0).epsilon(2e-3));
    // Source: Cengel, problem 9-19E: 102.6.
    CHECK(*vertical_nusselt(5.503e8, 0.7256) == Approx(102.6).epsilon(1e-3));
}

// Source: tests of the `ht` library (McAdams' horizontal plates).
TEST_CASE("the horizontal plate meets the values of an independent library")
{
    CHECK(*buoyant_nusselt(5.54 * 3.21e8) == Approx(181.73).epsilon(1e-4));
    CHECK(*layered_nusselt(5.54 * 3.21e8) == Approx(55.446).epsilon(1e-4));
    CHECK(*buoyant_nusselt(0.01 * 3.21e8) == Approx(22.857).epsilon(1e-4));
    CHECK(*layered_nusselt(0.01 * 3.21e8) == Approx(11.4285).epsilon(1e-4));
}

// Source: the same correlations worked by an independent script with Cengel's Table A-15.
TEST_CASE("films of box size are what the correlations give with the air table")
{
    const auto film = [](Facing facing, double length_m, double face_c, double air_c) {
        return *film_w_m2k({facing, length_m, 1.0}, face_c, air_c);
    };
    CHECK(film(Facing::vertical, 0.45, 24, 22) == Approx(2.105).epsilon(3e-3));
    CHECK(film(Facing::vertical, 0.45, 30, 22) == Approx(3.142).epsilon(2e-3));
    CHECK(film(Facing::vertical, 0.60, 26, 22) == Approx(2.487).epsilon(2e-3));
    CHECK(film(Facing::up, 0.12857, 30, 25) == Approx(3.418).epsilon(2e-3));
    CHECK(film(Facing::up, 0.12857, 35, 25) == Approx(4.055).epsilon(2e-3));
    CHECK(film(Facing::down, 0.12857, 30, 25) == Approx(1.709).epsilon(2e-3));
    CHECK(film(Facing::up, 0.12857, 20, 25) < film(Facing::up, 0.12857, 30, 25));
}

TEST_CASE("a film's slopes are its slopes, and its factor multiplies it")
{
    const Film film{Facing::up, 0.13, 1.0};
    const auto value = film_value(film, 31.0, 25.0);
    CHECK(value->per_face_k ==
          Approx((*film_w_m2k(film, 31.01, 25.0) - *film_w_m2k(film, 30.99, 25.0)) / 0.02).epsilon(1e-4));
    CHECK(*film_w_m2k({Facing::up, 0.13, 1.3}, 31.0, 25.0) == Approx(1.3 * value->w_m2k));
}

// Source: Cengel, Heat Transfer, Table A-15.
TEST_CASE("air is the air of the table, linear between rows, and unknown outside")
{
    CHECK(air_at(25.0)->conductivity_w_mk == Approx(0.02551));
    CHECK(air_at(45.0)->viscosity_m2_s == Approx(1.75e-5));
    CHECK_FALSE(air_at(-21.0));
    CHECK_FALSE(air_at(201.0));
    CHECK_FALSE(film_w_m2k({Facing::up, 0.1, 1.0}, 500.0, 20.0));
}
