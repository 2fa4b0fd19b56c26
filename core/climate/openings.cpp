#include "core/climate/openings.hpp"

#include <algorithm>
#include <cmath>

#include "core/units.hpp"

namespace loam::climate {

namespace {
constexpr double air_viscosity_m2_s = 1.56e-5; // at 25 degC, Cengel Table A-15; the screen loss is far less certain
constexpr double discharge = 0.61;
} // namespace

std::optional<double> open_lid_m3_s(double hydraulic_diameter_m, double density_ratio)
{
    if (!(density_ratio >= 0.0 && hydraulic_diameter_m >= 0.0))
        return std::nullopt;
    return 0.055 * std::sqrt(units::standard_gravity_m_s2 * density_ratio) * hydraulic_diameter_m *
           hydraulic_diameter_m * std::sqrt(hydraulic_diameter_m);
}

std::optional<double> screen_loss(double open_fraction, double wire_m, double face_velocity_m_s)
{
    if (!(open_fraction > 0.0 && open_fraction < 1.0 && wire_m > 0.0 && face_velocity_m_s > 0.0))
        return std::nullopt;
    const double reynolds = face_velocity_m_s * wire_m / air_viscosity_m2_s;
    const double square = open_fraction * open_fraction;
    return (18.0 / reynolds + 0.75 / std::log10(reynolds + 1.25) + 0.055 * std::log10(reynolds)) * (1.0 - square) /
           square;
}

std::optional<double> lid_exchange_m3_s(const Lid& lid, double density_ratio)
{
    const auto open = open_lid_m3_s(lid.hydraulic_diameter_m, density_ratio);
    if (!open || *open <= 0.0 || lid.area_m2 <= 0.0 || lid.open_fraction >= 1.0)
        return open;
    constexpr double open_loss = 102.0;
    const auto screened = [&](double flow) -> std::optional<double> {
        const auto loss = screen_loss(lid.open_fraction, lid.wire_m, 2.0 * flow / lid.area_m2);
        return loss ? std::optional(*open * std::sqrt(open_loss / (open_loss + 2.0 * *loss))) : std::nullopt;
    };
    double flow = *open; // the loss falls as the flow grows, so damped substitution converges
    for (int i = 0; i < 60; ++i) {
        const auto next = screened(flow);
        if (!next)
            return std::nullopt;
        const double change = *next - flow;
        flow += 0.7 * change;
        if (std::abs(change) < 1e-13 * *open)
            break;
    }
    return flow;
}

double stack_coefficient(const std::vector<Opening>& openings)
{
    if (openings.size() < 2)
        return 0.0;
    const auto through = [&](const Opening& opening, double neutral_m) {
        const double above_m = opening.height_m - neutral_m;
        const double flow =
            discharge * opening.area_m2 * std::sqrt(2.0 * units::standard_gravity_m_s2 * std::abs(above_m));
        return above_m < 0.0 ? -flow : flow;
    };
    const auto [lowest, highest] = std::minmax_element(
        openings.begin(), openings.end(), [](const Opening& a, const Opening& b) { return a.height_m < b.height_m; });
    double low_m = lowest->height_m;
    double high_m = highest->height_m;
    for (int i = 0; i < 80; ++i) {
        const double middle_m = 0.5 * (low_m + high_m);
        double net = 0.0;
        for (const Opening& opening : openings)
            net += through(opening, middle_m);
        (net > 0.0 ? low_m : high_m) = middle_m;
    }
    double outflow = 0.0;
    for (const Opening& opening : openings)
        outflow += std::max(0.0, through(opening, 0.5 * (low_m + high_m)));
    return outflow;
}

double doorway_coefficient(double area_m2)
{
    return discharge / 3.0 * area_m2 * std::sqrt(units::standard_gravity_m_s2 * std::sqrt(area_m2));
}

} // namespace loam::climate
