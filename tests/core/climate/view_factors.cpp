#include "tests/catch.hpp"

#include "core/climate/enclosure.hpp"
#include "core/climate/view_factors.hpp"

using namespace loam::climate;

// Source: Howell, A Catalog of Radiation Heat Transfer Configuration Factors, C-11 and C-14.
TEST_CASE("rectangles see each other as the catalogue says")
{
    const auto opposed = [](double a, double b, double c) { return parallel_view({0, a}, {0, b}, {0, a}, {0, b}, c); };
    CHECK(opposed(1, 1, 1) == Approx(0.19982).margin(1e-5));
    CHECK(opposed(2, 2, 1) == Approx(0.41525).margin(1e-5));
    CHECK(opposed(1, 2, 1) == Approx(0.28588).margin(1e-5));
    CHECK(opposed(0.6, 0.45, 0.45) == Approx(0.23740).margin(1e-5));
    CHECK(perpendicular_view({0, 1}, {0, 1}, {0, 1}, {0, 1}) == Approx(0.20004).margin(1e-5));
    CHECK(perpendicular_view({0, 0.45}, {0, 0.6}, {0, 0.45}, {0, 0.6}) == Approx(0.21872).margin(1e-5));
    CHECK(perpendicular_view({0, 0.6}, {0, 0.45}, {0, 0.45}, {0, 0.45}) == Approx(0.16258).margin(1e-5));
}

TEST_CASE("every patch of a box sees the whole of its surroundings, and what it sees sees it")
{
    const auto patches =
        box_patches({.length_m = 0.914, .width_m = 0.457, .height_m = 0.36, .along_x = 3, .along_y = 2});
    const Square views = view_matrix(patches);
    for (std::size_t p = 0; p < views.size; ++p) {
        double sum = 0.0;
        for (std::size_t q = 0; q < views.size; ++q) {
            sum += views(p, q);
            CHECK(views(p, q) >= 0.0);
        }
        CHECK(sum == Approx(1.0).epsilon(1e-9));
    }
}

// Source: net radiation of an isothermal gray enclosure: the irradiation is the black body's, whatever the
// reflectances (Kirchhoff).
TEST_CASE("an even enclosure is a black one")
{
    const Square views = view_matrix(box_patches({.length_m = 1, .width_m = 0.5, .height_m = 0.4, .along_x = 2}));
    std::vector<double> reflectance;
    for (std::size_t p = 0; p < views.size; ++p)
        reflectance.push_back(0.05 + 0.8 * static_cast<double>(p) / static_cast<double>(views.size));
    const Square spread = interreflection(views, reflectance);
    for (std::size_t p = 0; p < views.size; ++p) {
        double irradiation = 0.0;
        for (std::size_t q = 0; q < views.size; ++q)
            irradiation += spread(p, q) * (1.0 - reflectance[q]);
        CHECK(irradiation == Approx(1.0).epsilon(1e-9));
    }
}
