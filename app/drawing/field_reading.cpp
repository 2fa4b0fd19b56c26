#include "app/drawing/field_reading.hpp"

#include <algorithm>
#include <cmath>

namespace loam::drawing {

namespace {

// Between which two cells a place lies, and how far along.
struct Between {
    std::size_t below = 0;
    std::size_t above = 0;
    double part = 0.0;
};

Between between_centres(double place, double step, std::size_t cells)
{
    const double index = std::clamp(place / step - 0.5, 0.0, static_cast<double>(cells - 1));
    const auto below = static_cast<std::size_t>(index);
    return {below, std::min(below + 1, cells - 1), index - static_cast<double>(below)};
}

} // namespace

std::optional<FloorReading> read_floor(const climate::FloorField& floor, double x_m, double y_m)
{
    const double length_m = static_cast<double>(floor.nx) * floor.dx_m;
    const double width_m = static_cast<double>(floor.ny) * floor.dy_m;
    if (floor.surface_c.empty() || x_m < 0.0 || y_m < 0.0 || x_m > length_m || y_m > width_m) {
        return std::nullopt;
    }
    const Between x = between_centres(x_m, floor.dx_m, floor.nx);
    const Between y = between_centres(y_m, floor.dy_m, floor.ny);
    const auto at = [&](const std::vector<double>& values) {
        const double front =
            std::lerp(values.at(y.below * floor.nx + x.below), values.at(y.below * floor.nx + x.above), x.part);
        const double back =
            std::lerp(values.at(y.above * floor.nx + x.below), values.at(y.above * floor.nx + x.above), x.part);
        return std::lerp(front, back, y.part);
    };
    return FloorReading{at(floor.surface_c), at(floor.ground_c), at(floor.operative_c), at(floor.humidity),
                        at(floor.beam_w_m2)};
}

double section_step_m(const climate::CaseResult& detail)
{
    return detail.floor.dx_m;
}

std::optional<double> read_bed_c(const climate::CaseResult& detail, const BedTop& bed_top_m, double x_m, double z_m)
{
    const climate::SectionField& section = detail.section;
    const double step_m = section_step_m(detail);
    if (section.nx == 0 || section.nz == 0 || x_m < 0.0 || x_m > static_cast<double>(section.nx) * step_m ||
        z_m < 0.0 || z_m > bed_top_m(x_m)) {
        return std::nullopt;
    }
    // In one column; its cells over the bed hold air and don't count.
    const auto in_column = [&](std::size_t column) {
        const double top_m = bed_top_m((static_cast<double>(column) + 0.5) * step_m);
        const auto value = [&](std::size_t row) { return section.temperature_c.at(row * section.nx + column); };
        std::size_t row = 0;
        while (row + 1 < section.nz && section.z_m[row + 1] <= std::min(top_m, z_m)) {
            ++row;
        }
        const bool next = row + 1 < section.nz && section.z_m[row + 1] <= top_m;
        if (!next || z_m <= section.z_m[row]) {
            return value(row);
        }
        return std::lerp(value(row), value(row + 1),
                         (z_m - section.z_m[row]) / (section.z_m[row + 1] - section.z_m[row]));
    };
    const Between x = between_centres(x_m, step_m, section.nx);
    return std::lerp(in_column(x.below), in_column(x.above), x.part);
}

} // namespace loam::drawing
