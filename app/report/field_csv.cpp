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
            csv += csv_row({csv_cell(enclosure), csv_cell(heat.id), "floor",
                            csv_cell(number((static_cast<double>(column) + 0.5) * floor.dx_m)),
                            csv_cell(number((static_cast<double>(row) + 0.5) * floor.dy_m)), "",
                            csv_cell(number(floor.surface_c.at(cell))), "", csv_cell(number(floor.ground_c.at(cell))),
                            csv_cell(number(floor.operative_c.at(cell))), csv_cell(number(floor.beam_w_m2.at(cell))),
                            csv_cell(number(floor.humidity.at(cell)))});
        }
    }
}

const char* part_name(climate::Plane plane)
{
    switch (plane) {
    case climate::Plane::front:
        return "front";
    case climate::Plane::back:
        return "back";
    case climate::Plane::left:
        return "left";
    case climate::Plane::right:
        return "right";
    case climate::Plane::floor:
    case climate::Plane::ceiling:
        break;
    }
    return "top";
}

// Walls and what closes the top. `surface_c` is the inner face.
void add_panel(const std::string& enclosure, const assess::HeatCase& heat, const climate::PanelField& panel,
               std::string& csv)
{
    for (std::size_t cell = 0; cell < panel.closed.size(); ++cell) {
        if (panel.closed[cell] == 0) {
            continue;
        }
        const climate::Point at = climate::centre_of(panel, cell);
        csv += csv_row({csv_cell(enclosure), csv_cell(heat.id), part_name(panel.plane), csv_cell(number(at.x_m)),
                        csv_cell(number(at.y_m)), csv_cell(number(at.z_m)), csv_cell(number(panel.inside_c[cell])),
                        csv_cell(number(panel.outside_c[cell])), "", "", "", ""});
    }
}

} // namespace

std::string field_csv(const assess::Assessment& assessment)
{
    std::string csv = csv_row({"enclosure", "case", "part", "x_m", "y_m", "z_m", "surface_c", "outside_c", "ground_c",
                               "operative_c", "beam_w_m2", "relative_humidity"});
    for (const assess::EnclosureResult& enclosure : assessment.enclosures) {
        for (const assess::HeatCase& heat : enclosure.heat) {
            if (heat.known && !heat.detail.floor.ground_c.empty()) {
                add_rows(enclosure.id, heat, csv);
                for (const climate::PanelField& panel : heat.detail.panels) {
                    add_panel(enclosure.id, heat, panel, csv);
                }
            }
        }
    }
    return csv;
}

} // namespace loam::report
