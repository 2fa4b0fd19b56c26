#include "app/report/field_csv.hpp"

#include "app/report/csv.hpp"
#include "app/report/json_values.hpp"

namespace loam::report {

namespace {

void add_rows(const std::string& enclosure, const assess::HeatCase& heat, std::string& csv)
{
    const climate::FloorField& floor = heat.detail.floor;
    for (std::size_t row = 0; row < floor.ny; ++row) {
        for (std::size_t column = 0; column < floor.nx; ++column) {
            const std::size_t cell = row * floor.nx + column;
            csv += csv_row({csv_cell(enclosure), csv_cell(heat.id),
                            csv_cell(number((static_cast<double>(column) + 0.5) * floor.dx_m)),
                            csv_cell(number((static_cast<double>(row) + 0.5) * floor.dy_m)),
                            csv_cell(number(floor.surface_c.at(cell))), csv_cell(number(floor.ground_c.at(cell))),
                            csv_cell(number(floor.operative_c.at(cell))), csv_cell(number(floor.beam_w_m2.at(cell)))});
        }
    }
}

} // namespace

std::string field_csv(const assess::Assessment& assessment)
{
    std::string csv = csv_row({"enclosure", "case", "x_m", "y_m", "surface_c", "ground_c", "operative_c", "beam_w_m2"});
    for (const assess::EnclosureResult& enclosure : assessment.enclosures) {
        for (const assess::HeatCase& heat : enclosure.heat) {
            if (heat.known && !heat.detail.floor.ground_c.empty()) {
                add_rows(enclosure.id, heat, csv);
            }
        }
    }
    return csv;
}

} // namespace loam::report
