#include "tests/catch.hpp"

#include <cmath>

#include "core/light/uv_field.hpp"

using namespace loam;
using namespace loam::light;

namespace {

UvLamp lamp_at(double x_m)
{
    UvLamp lamp;
    lamp.id = "lamp";
    lamp.at = {x_m, 0.3, 0.6};
    lamp.table = {{0.15, 7.111}, {0.3, 1.778}, {0.6, 0.444}};
    lamp.beam_deg = exactly(60.0);
    return lamp;
}

const Standing bed = {"bed", {0.0, 0.0, 1.2, 0.6}, 0.1};
const Patch floor_patch = {0.0, 0.0, 1.2, 0.6};

UvMap map_of(const std::vector<UvLamp>& lamps, double length_m, double width_m, double back_m)
{
    const UvGrid grid = uv_grid(length_m, width_m);
    return uv_map(prepared(lamps, {}), grid, std::vector<double>(grid.cells(), back_m));
}

FloorShare dark_share(const std::vector<UvLamp>& lamps, double back_m, const std::vector<Patch>& roofs, double limit)
{
    return light::dark_share(map_of(lamps, 1.2, 0.6, back_m), roofs, limit);
}

} // namespace

TEST_CASE("Under a lamp the animal's back comes as near as bed and back leave")
{
    const auto nearest = nearest_to_lamps({lamp_at(0.3)}, {}, {bed}, 0.08);
    REQUIRE(nearest.size() == 1);
    CHECK(nearest[0].distance_m == Approx(0.42));
    CHECK(nearest[0].standing == "bed");
    REQUIRE(nearest[0].uvi);
    CHECK(nearest[0].uvi->likely == Approx(0.16 / 0.42 / 0.42).epsilon(1e-3)); // table is 0.16 / d^2
}

TEST_CASE("A rock brings the animal nearer, if it stands near enough")
{
    const Standing rock = {"rock", {0.2, 0.2, 0.2, 0.2}, 0.25};
    const auto on_rock = nearest_to_lamps({lamp_at(0.3)}, {}, {bed, rock}, 0.08);
    CHECK(on_rock[0].standing == "rock");
    CHECK(on_rock[0].distance_m == Approx(0.27));
    const auto on_bed = nearest_to_lamps({lamp_at(1.1)}, {}, {bed, rock}, 0.08);
    CHECK(on_bed[0].standing == "bed");
}

TEST_CASE("From a rock beside the lamp the distance is the slant one")
{
    const Standing rock = {"rock", {0.6, 0.2, 0.2, 0.2}, 0.3};
    const auto nearest = nearest_to_lamps({lamp_at(0.3)}, {}, {rock}, 0.1);
    CHECK(nearest[0].distance_m == Approx(std::hypot(0.3, 0.2)));
    CHECK(nearest[0].back == Point{0.6, 0.3, 0.4});
}

TEST_CASE("A tube is near along its whole length")
{
    UvLamp tube = lamp_at(0.3);
    tube.length_m = 0.5;
    const Standing rock = {"rock", {0.6, 0.2, 0.2, 0.2}, 0.3};
    CHECK(nearest_to_lamps({tube}, {}, {rock}, 0.1)[0].distance_m == Approx(std::hypot(0.05, 0.2)));
}

TEST_CASE("Nearer than the table reaches the UV index is not known, never guessed")
{
    const Standing shelf = {"shelf", {0.2, 0.2, 0.2, 0.2}, 0.45};
    const auto nearest = nearest_to_lamps({lamp_at(0.3)}, {}, {bed, shelf}, 0.08);
    CHECK(nearest[0].distance_m == Approx(0.07));
    CHECK_FALSE(nearest[0].uvi);
    const Standing above = {"above", {0.2, 0.2, 0.2, 0.2}, 0.7};
    CHECK(nearest_to_lamps({lamp_at(0.3)}, {}, {above}, 0.08)[0].distance_m == Approx(0.0).margin(1e-12));
    CHECK(nearest_to_lamps({lamp_at(0.3)}, {}, {}, 0.08).empty());
}

TEST_CASE("A floor without lamps is dark, a roofed one too")
{
    const FloorShare none = dark_share({}, 0.1, {}, 0.3);
    CHECK(none == FloorShare{1.0, 1.0});
    const FloorShare roofed = dark_share({lamp_at(0.3)}, 0.1, {floor_patch}, 0.3);
    CHECK(roofed == FloorShare{1.0, 1.0});
}

TEST_CASE("Far from the lamp the floor is surely dark though its table does not reach there")
{
    const FloorShare share = dark_share({lamp_at(0.3)}, 0.1, {}, 0.3);
    CHECK(share.surely > 0.5);
    CHECK(share.surely < 1.0);
    CHECK(share.at_most >= share.surely);
    const FloorShare half_roofed = dark_share({lamp_at(0.3)}, 0.1, {{0.0, 0.0, 0.6, 0.6}}, 0.3);
    CHECK(half_roofed.surely > share.surely);
}

TEST_CASE("A lamp without a table leaves the whole floor in doubt")
{
    UvLamp unmeasured = lamp_at(0.3);
    unmeasured.table.clear();
    CHECK(dark_share({unmeasured}, 0.1, {}, 0.3) == FloorShare{0.0, 1.0});
}

TEST_CASE("A spot whose range straddles the limit is neither surely dark nor surely lit")
{
    UvLamp lamp = lamp_at(0.3);
    lamp.reading_factor = {0.6, 1.0, 1.4};
    const double uvi = uvi_at({lamp}, {}, {0.3, 0.3, 0.1})->likely;
    lamp.at.x_m = lamp.at.y_m = 0.005;
    const UvMap spot = map_of({lamp}, 0.01, 0.01, 0.1); // one cell
    REQUIRE(spot.grid.cells() == 1);
    CHECK(light::dark_share(spot, {}, uvi) == FloorShare{0.0, 1.0});
    CHECK(light::dark_share(spot, {}, 0.5 * uvi) == FloorShare{0.0, 0.0});
    CHECK(light::dark_share(spot, {}, 1.5 * uvi) == FloorShare{1.0, 1.0});
}

TEST_CASE("The surely lit floor is the disc that the law of the lamp gives")
{
    // Without a beam's falloff (nearly 180 degrees) and error, 0.16 / d^2 >= 0.32 within d = 0.7071 m of the face;
    // 0.5 m below it that is a disc of radius 0.5 m, area 0.7854 m2, by hand.
    UvLamp lamp = lamp_at(1.0);
    lamp.at.y_m = 1.0;
    lamp.table = {{0.4, 1.0}, {1.6, 0.0625}};
    lamp.beam_deg = exactly(179.9999);
    lamp.reading_factor = exactly(1.0);
    const FloorShare share = light::dark_share(map_of({lamp}, 2.0, 2.0, 0.1), {}, 0.32);
    CHECK((1.0 - share.at_most) * 4.0 == Approx(0.7854).epsilon(0.05)); // the falloff still costs a little
    CHECK((1.0 - share.surely) * 4.0 == Approx(0.7854).epsilon(0.05));
    CHECK(share.surely == share.at_most);
}

TEST_CASE("A map has cells of 25 mm, on a large floor as many as make 1600")
{
    const UvGrid small = uv_grid(0.9, 0.45);
    CHECK(small.nx == 36);
    CHECK(small.ny == 18);
    CHECK(small.dx_m == Approx(0.025));
    const UvGrid large = uv_grid(2.4, 1.2);
    CHECK(large.cells() >= 1600);
    CHECK(large.cells() < 1800);
    CHECK(static_cast<double>(large.nx) * large.dx_m == Approx(2.4));
}

TEST_CASE("The map of a lamp is what it gives at each back, and is not known outside its readings")
{
    const std::vector<UvLamp> lamps = {lamp_at(0.3)};
    const UvGrid grid = uv_grid(1.2, 0.6);
    std::vector<double> back_m(grid.cells(), 0.15);
    back_m[0] = 0.5; // on a shelf in the corner
    const UvMap map = uv_map(prepared(lamps, {}), grid, back_m);
    std::size_t unknown = 0;
    for (std::size_t cell = 0; cell < grid.cells(); ++cell) {
        CHECK(map.uvi[cell] == uvi_at(lamps, {}, {grid.x_m(cell), grid.y_m(cell), back_m[cell]}));
        unknown += map.uvi[cell] ? 0 : 1;
        CHECK((!map.uvi[cell] || map.at_most[cell] == map.uvi[cell]->high));
    }
    CHECK(unknown > 0); // more than 0.6 m from the face
    const auto strongest = strongest_cell(map);
    REQUIRE(strongest);
    CHECK(std::abs(grid.x_m(*strongest) - 0.3) < 0.0126);
    CHECK(std::abs(grid.y_m(*strongest) - 0.3) < 0.0126);
    CHECK_FALSE(strongest_cell(map_of({UvLamp{}}, 1.0, 0.5, 0.1)));
}

TEST_CASE("A map of two lamps is the sum of their maps, and mirrors with the lamp")
{
    const UvMap left = map_of({lamp_at(0.5)}, 1.2, 0.6, 0.2);
    const UvMap right = map_of({lamp_at(0.7)}, 1.2, 0.6, 0.2);
    const UvMap both = map_of({lamp_at(0.5), lamp_at(0.7)}, 1.2, 0.6, 0.2);
    for (std::size_t cell = 0; cell < left.grid.cells(); ++cell) {
        const std::size_t row = cell / left.grid.nx;
        const std::size_t mirrored = row * left.grid.nx + (left.grid.nx - 1 - cell % left.grid.nx);
        REQUIRE(left.uvi[cell].has_value() == right.uvi[mirrored].has_value());
        if (left.uvi[cell]) {
            CHECK(left.uvi[cell]->likely == Approx(right.uvi[mirrored]->likely));
        }
        if (both.uvi[cell]) {
            CHECK(both.uvi[cell]->likely == Approx(left.uvi[cell]->likely + right.uvi[cell]->likely));
        }
    }
}
