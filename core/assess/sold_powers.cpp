#include "core/assess/sold_powers.hpp"

#include <algorithm>
#include <array>

namespace loam::assess {

namespace {

constexpr std::array flood_w{15.0, 25.0, 40.0, 50.0, 60.0, 75.0, 100.0, 120.0, 150.0, 160.0, 200.0, 250.0, 300.0};
constexpr std::array mercury_vapour_w{80.0, 100.0, 125.0, 160.0};
constexpr std::array metal_halide_w{35.0, 50.0, 70.0};
constexpr std::array ceramic_w{25.0, 40.0, 60.0, 100.0, 150.0, 250.0};
constexpr std::array panel_w{15.0, 25.0, 40.0, 60.0, 80.0, 100.0, 150.0};
constexpr std::array mat_w{4.0, 7.0, 11.0, 15.0, 20.0, 25.0, 35.0, 45.0, 60.0};

} // namespace

std::span<const double> powers_sold(plan::DeviceKind kind)
{
    switch (kind) {
    case plan::DeviceKind::flood_lamp:
        return flood_w;
    case plan::DeviceKind::mercury_vapour_lamp:
        return mercury_vapour_w;
    case plan::DeviceKind::metal_halide_lamp:
        return metal_halide_w;
    case plan::DeviceKind::ceramic_heater:
        return ceramic_w;
    case plan::DeviceKind::radiant_panel:
        return panel_w;
    case plan::DeviceKind::heat_mat:
        return mat_w;
    case plan::DeviceKind::uv_tube:
    case plan::DeviceKind::uv_compact:
    case plan::DeviceKind::led_strip:
    case plan::DeviceKind::mister:
    case plan::DeviceKind::fan:
        break; // not there to heat
    }
    return {};
}

std::optional<double> sold_at_most(plan::DeviceKind kind, double power_w)
{
    const auto sold = powers_sold(kind);
    const auto above = std::upper_bound(sold.begin(), sold.end(), power_w);
    return above == sold.begin() ? std::nullopt : std::optional(*(above - 1));
}

} // namespace loam::assess
