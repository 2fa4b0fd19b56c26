// Readings between cell centres, and lines through the bed. A bilinear field is read exactly (closed form).
#include "app/drawing/field_reading.hpp"

#include <algorithm>

#include "app/drawing/probe.hpp"
#include "app/drawing/section_lines.hpp"
#include "tests/catch.hpp"

using namespace loam;
using namespace loam::drawing;

namespace {

// 1.0 m by 0.4 m in cells of 0.1 m; the bed 0.1 m deep in rows of 0.02 m.
climate::CaseResult sloping()
{
    climate::CaseResult detail;
    climate::FloorField& floor = detail.floor;
    floor.nx = 10;
    floor.ny = 4;
    floor.dx_m = 0.1;
    floor.dy_m = 0.1;
    for (std::size_t row = 0; row < floor.ny; ++row) {
        for (std::size_t column = 0; column < floor.nx; ++column) {
            const double x_m = (static_cast<double>(column) + 0.5) * 0.1;
            const double y_m = (static_cast<double>(row) + 0.5) * 0.1;
            floor.surface_c.push_back(20.0 + 10.0 * x_m + 5.0 * y_m + 8.0 * x_m * y_m);
            floor.ground_c.push_back(18.0 + x_m);
            floor.operative_c.push_back(19.0 + y_m);
            floor.humidity.push_back(0.5 + 0.1 * y_m);
            floor.beam_w_m2.push_back(100.0 * x_m);
        }
    }
    climate::SectionField& section = detail.section;
    section.nx = 10;
    section.nz = 5;
    for (std::size_t row = 0; row < section.nz; ++row) {
        section.z_m.push_back((static_cast<double>(row) + 0.5) * 0.02);
        for (std::size_t column = 0; column < section.nx; ++column) {
            const double x_m = (static_cast<double>(column) + 0.5) * 0.1;
            section.temperature_c.push_back(30.0 + 4.0 * x_m - 50.0 * section.z_m.back());
        }
    }
    return detail;
}

double level_bed(double)
{
    return 0.1;
}

} // namespace

TEST_CASE("A bilinear field is read exactly between the centres of its cells")
{
    const climate::CaseResult detail = sloping();
    const auto reading = read_floor(detail.floor, 0.42, 0.17);
    REQUIRE(reading);
    CHECK(reading->surface_c == Approx(20.0 + 4.2 + 0.85 + 8.0 * 0.42 * 0.17).epsilon(1e-12));
    CHECK(reading->ground_c == Approx(18.42).epsilon(1e-12));
    CHECK(reading->operative_c == Approx(19.17).epsilon(1e-12));
    CHECK(reading->beam_w_m2 == Approx(42.0).epsilon(1e-12));
    CHECK(read_floor(detail.floor, 0.01, 0.2)->ground_c == Approx(18.05)); // the outermost centre, not beyond
}

TEST_CASE("Outside the field there is no reading")
{
    const climate::CaseResult detail = sloping();
    CHECK_FALSE(read_floor(detail.floor, -0.01, 0.2));
    CHECK_FALSE(read_floor(detail.floor, 0.5, 0.41));
    CHECK_FALSE(read_floor(detail.floor, 1.01, 0.2));
    CHECK_FALSE(read_floor({}, 0.5, 0.2));
    CHECK_FALSE(read_bed_c(detail, level_bed, 0.5, 0.101));
    CHECK_FALSE(read_bed_c(detail, level_bed, 1.2, 0.05));
    CHECK_FALSE(read_bed_c({}, level_bed, 0.5, 0.05));
}

TEST_CASE("The bed is read exactly where it is linear, and air over a sloping bed is never mixed in")
{
    climate::CaseResult detail = sloping();
    CHECK(*read_bed_c(detail, level_bed, 0.42, 0.035) == Approx(30.0 + 1.68 - 1.75).epsilon(1e-12));
    CHECK(*read_bed_c(detail, level_bed, 0.42, 0.0) == Approx(30.0 + 1.68 - 0.5)); // as at the lowest centre
    const auto ramp = [](double x_m) { return 0.1 * x_m; };
    for (std::size_t row = 0; row < 5; ++row) {
        for (std::size_t column = 0; column < 10; ++column) {
            const double x_m = (static_cast<double>(column) + 0.5) * 0.1;
            double& here_c = detail.section.temperature_c[row * 10 + column];
            here_c = detail.section.z_m[row] > ramp(x_m) ? -100.0 : 25.0; // air so cold that it would show
        }
    }
    for (double x_m = 0.15; x_m <= 1.0; x_m += 0.05) { // left of it the lowest cell is air
        CHECK(*read_bed_c(detail, ramp, x_m, ramp(x_m)) == Approx(25.0));
    }
}

TEST_CASE("Lines through the bed lie where the bed has that temperature, and run out to base and surface")
{
    const climate::CaseResult detail = sloping();
    const std::vector<Line> lines = section_isolines(detail, 29.5);
    REQUIRE(lines.size() == 1);
    double lowest_m = 1.0;
    double highest_m = 0.0;
    for (const QPointF& point : lines.front()) {
        lowest_m = std::min(lowest_m, point.y());
        highest_m = std::max(highest_m, point.y());
        if (point.y() >= 0.01 && point.y() <= 0.09) {
            CHECK(30.0 + 4.0 * point.x() - 50.0 * point.y() == Approx(29.5).epsilon(1e-9));
        }
    }
    CHECK(lowest_m >= 0.0);
    CHECK(highest_m <= 0.1 + 1e-12);
    climate::CaseResult upright = sloping();
    for (std::size_t row = 0; row < 5; ++row) {
        for (std::size_t column = 0; column < 10; ++column) {
            upright.section.temperature_c[row * 10 + column] = static_cast<double>(column);
        }
    }
    const std::vector<Line> straight = section_isolines(upright, 4.5);
    REQUIRE(straight.size() == 1);
    const auto [low, high] = std::minmax_element(straight[0].begin(), straight[0].end(),
                                                 [](const QPointF& a, const QPointF& b) { return a.y() < b.y(); });
    CHECK(low->y() == Approx(0.0).margin(1e-12));
    CHECK(high->y() == Approx(0.1));
}

TEST_CASE("The readout never covers the place it speaks of, and stays on the sheet")
{
    const QRectF sheet(0, 0, 800, 400);
    const QSizeF size(180, 60);
    for (double x = 0.0; x <= 800.0; x += 20.0) {
        for (double y = 0.0; y <= 400.0; y += 20.0) {
            const QRectF box = readout_box({x, y}, size, sheet);
            CHECK_FALSE(box.adjusted(-4, -4, 4, 4).contains(QPointF(x, y)));
            CHECK(sheet.contains(box));
        }
    }
}
