#include "app/drawing/isolines.hpp"

#include <cmath>
#include <limits>

#include "app/drawing/colour_map.hpp"
#include "tests/catch.hpp"

using namespace loam::drawing;

TEST_CASE("A line through a sloping plane is straight and lies where the plane has that value")
{
    const Grid grid{5, 4, 0.1, 0.2};
    std::vector<double> values;
    for (std::size_t row = 0; row < grid.rows; ++row) {
        for (std::size_t column = 0; column < grid.columns; ++column) {
            values.push_back(20.0 + 10.0 * (static_cast<double>(column) + 0.5) * grid.step_x);
        }
    }
    const std::vector<Line> lines = isolines(values, grid, 22.0);
    REQUIRE(lines.size() == 1);
    for (const QPointF& point : lines.front()) {
        CHECK(point.x() == Approx(0.2));
    }
}

TEST_CASE("A hill gives one closed line, its length that of the circle within the grid's step")
{
    const Grid grid{41, 41, 0.05, 0.05};
    std::vector<double> values;
    for (std::size_t row = 0; row < grid.rows; ++row) {
        for (std::size_t column = 0; column < grid.columns; ++column) {
            const double x = (static_cast<double>(column) - 20.0) * grid.step_x;
            const double y = (static_cast<double>(row) - 20.0) * grid.step_y;
            values.push_back(-std::hypot(x, y));
        }
    }
    const std::vector<Line> lines = isolines(values, grid, -0.6);
    REQUIRE(lines.size() == 1);
    double length = 0.0;
    for (std::size_t i = 1; i < lines.front().size(); ++i) {
        const QPointF step = lines.front()[i] - lines.front()[i - 1];
        length += std::hypot(step.x(), step.y());
    }
    CHECK(length == Approx(2.0 * 3.14159265 * 0.6).epsilon(0.01));
}

TEST_CASE("A field that is level has no lines, and no levels between equal ends")
{
    CHECK(isolines(std::vector<double>(9, 21.0), {3, 3, 1.0, 1.0}, 21.5).empty());
    CHECK(round_levels(21.0, 21.0, 5).empty());
    CHECK(round_levels(20.0, 31.0, 6) == std::vector<double>{20, 22, 24, 26, 28, 30});
}

TEST_CASE("A line through a cell's very centre is one line")
{
    // x - y over nine centres: the diagonal x = y passes through three of them.
    const std::vector<double> values{0, 1, 2, -1, 0, 1, -2, -1, 0};
    CHECK(isolines(values, {3, 3, 1.0, 1.0}, 0.0).size() == 1);
}

TEST_CASE("Warmer is always lighter, so that the map prints in grey")
{
    double before = -1.0;
    for (int step = 0; step <= 20; ++step) {
        const QColor colour = colour_at(step / 20.0);
        const double grey = 0.2126 * colour.redF() + 0.7152 * colour.greenF() + 0.0722 * colour.blueF();
        CHECK(grey > before);
        before = grey;
    }
}

TEST_CASE("Where a value is not known no line runs")
{
    const Grid grid{8, 4, 1.0, 1.0};
    std::vector<double> values;
    for (std::size_t cell = 0; cell < 32; ++cell) {
        const std::size_t column = cell % grid.columns;
        values.push_back(column == 3 ? std::numeric_limits<double>::quiet_NaN() : static_cast<double>(column) + 0.5);
    }
    CHECK(isolines(values, grid, 3.0).empty()); // it would have run up to the unknown column
    CHECK(isolines(values, grid, 6.2).size() == 1);
}

TEST_CASE("What is not known has no colour")
{
    const QImage image = field_image({1.0, std::numeric_limits<double>::quiet_NaN()}, 2, 1, {0.0, 2.0});
    CHECK(image.pixelColor(0, 0).alpha() == 255);
    CHECK(image.pixelColor(1, 0).alpha() == 0);
}
