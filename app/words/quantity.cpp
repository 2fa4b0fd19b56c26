#include "app/words/quantity.hpp"

#include "core/units.hpp"

#include <utility>

namespace loam::words {

namespace {

DisplayUnit metric_unit(Quantity quantity)
{
    switch (quantity) {
    case Quantity::length:
        return {QStringLiteral("cm"), 100.0, 0.0, 1};
    case Quantity::thickness:
        return {QStringLiteral("mm"), 1000.0, 0.0, 1};
    case Quantity::area:
        return {QStringLiteral("m²"), 1.0, 0.0, 2};
    case Quantity::small_area:
        return {QStringLiteral("cm²"), 1e4, 0.0, 0};
    case Quantity::volume:
        return {QStringLiteral("L"), 1.0, 0.0, 1};
    case Quantity::dose:
        return {QStringLiteral("mL"), 1.0, 0.0, 0};
    case Quantity::mass:
        return {QStringLiteral("kg"), 1.0, 0.0, 1};
    case Quantity::small_mass:
        return {QStringLiteral("g"), 1000.0, 0.0, 0};
    case Quantity::temperature:
    case Quantity::temperature_difference:
        // A difference of 1 K is one of 1 °C; "K" would have to be explained to most keepers.
        return {QStringLiteral("°C"), 1.0, 0.0, 1};
    case Quantity::flux:
        return {QStringLiteral("W/m²"), 1.0, 0.0, 0};
    case Quantity::pressure:
        return {QStringLiteral("kPa"), 1.0, 0.0, 1};
    case Quantity::conductivity:
        return {QStringLiteral("W/(m·K)"), 1.0, 0.0, 3};
    case Quantity::conductance:
        return {QStringLiteral("W/K"), 1.0, 0.0, 0};
    default:
        return {};
    }
}

// Source of the factors: core/units.hpp.
DisplayUnit us_unit(Quantity quantity)
{
    constexpr double inch_m = units::inch_m;
    constexpr double watt_m2_per_btu_h_ft2 = 3.154590745; // NIST SP 811, from memory
    constexpr double watt_k_per_btu_h_f = 0.5275279263;   // NIST SP 811, from memory
    constexpr double kilopascal_per_psi = units::pound_kg * units::standard_gravity_m_s2 / (inch_m * inch_m) / 1000.0;
    switch (quantity) {
    case Quantity::length:
        return {QStringLiteral("in"), 1.0 / inch_m, 0.0, 1};
    case Quantity::thickness:
        return {QStringLiteral("in"), 1.0 / inch_m, 0.0, 3};
    case Quantity::area:
        return {QStringLiteral("sq ft"), 1.0 / units::square_foot_m2, 0.0, 1};
    case Quantity::small_area:
        return {QStringLiteral("sq in"), 1.0 / (inch_m * inch_m), 0.0, 0};
    case Quantity::volume:
        return {QStringLiteral("qt"), 1.0 / units::us_liquid_quart_l, 0.0, 1};
    case Quantity::dose:
        return {QStringLiteral("fl oz"), 0.001 / units::us_fluid_ounce_l, 0.0, 2};
    case Quantity::mass:
        return {QStringLiteral("lb"), 1.0 / units::pound_kg, 0.0, 1};
    case Quantity::small_mass:
        return {QStringLiteral("oz"), 1.0 / units::ounce_kg, 0.0, 1};
    case Quantity::temperature:
        return {QStringLiteral("°F"), 1.8, 32.0, 1};
    case Quantity::temperature_difference:
        return {QStringLiteral("°F"), 1.8, 0.0, 1};
    case Quantity::flux:
        return {QStringLiteral("BTU/(h·sq ft)"), 1.0 / watt_m2_per_btu_h_ft2, 0.0, 1};
    case Quantity::conductance:
        return {QStringLiteral("BTU/(h·°F)"), 1.0 / watt_k_per_btu_h_f, 0.0, 0};
    case Quantity::pressure:
        return {QStringLiteral("psi"), 1.0 / kilopascal_per_psi, 0.0, 2};
    default:
        return metric_unit(quantity);
    }
}

DisplayUnit shared_unit(Quantity quantity)
{
    switch (quantity) {
    case Quantity::power:
        return {QStringLiteral("W"), 1.0, 0.0, 0};
    case Quantity::energy:
        return {QStringLiteral("kWh"), 1.0, 0.0, 2};
    case Quantity::fraction:
        return {QStringLiteral("%"), 100.0, 0.0, 0};
    case Quantity::current:
        return {QStringLiteral("A"), 1.0, 0.0, 1};
    case Quantity::voltage:
        return {QStringLiteral("V"), 1.0, 0.0, 0};
    case Quantity::hours:
        return {QStringLiteral("h"), 1.0, 0.0, 1};
    case Quantity::days:
        return {QStringLiteral("days"), 1.0, 0.0, 0};
    case Quantity::weeks:
        return {QStringLiteral("weeks"), 1.0, 0.0, 0};
    case Quantity::months:
        return {QStringLiteral("months"), 1.0, 0.0, 1};
    case Quantity::years:
        return {QStringLiteral("years"), 1.0, 0.0, 1};
    case Quantity::angle:
        return {QStringLiteral("°"), 1.0, 0.0, 0, false};
    case Quantity::number:
        return {{}, 1.0, 0.0, 2};
    case Quantity::uv_index:
        return {{}, 1.0, 0.0, 1};
    case Quantity::count:
        return {{}, 1.0, 0.0, 0};
    default:
        return {};
    }
}

bool differs_by_system(Quantity quantity)
{
    return !metric_unit(quantity).symbol.isEmpty();
}

struct ShortForm {
    std::string_view unit;
    Quantity quantity;
};

constexpr ShortForm short_forms[] = {
    {"m", Quantity::length},
    {"m2", Quantity::area},
    {"l", Quantity::volume},
    {"L", Quantity::volume},
    {"ml", Quantity::dose},
    {"kg", Quantity::mass},
    {"degC", Quantity::temperature},
    {"K", Quantity::temperature_difference},
    {"W", Quantity::power},
    {"kWh", Quantity::energy},
    {"W/m2", Quantity::flux},
    {"kPa", Quantity::pressure},
    {"W/(m.K)", Quantity::conductivity},
    {"W/mK", Quantity::conductivity},
    {"A", Quantity::current},
    {"V", Quantity::voltage},
    {"h", Quantity::hours},
    {"d", Quantity::days},
    {"weeks", Quantity::weeks},
    {"mo", Quantity::months},
    {"month", Quantity::months},
    {"a", Quantity::years},
    {"year", Quantity::years},
    {"deg", Quantity::angle},
    {"1", Quantity::number},
    {"", Quantity::number},
    {"each", Quantity::number},
};

} // namespace

DisplayUnit display_unit(Quantity quantity, UnitSystem system)
{
    if (!differs_by_system(quantity)) {
        return shared_unit(quantity);
    }
    return system == UnitSystem::us ? us_unit(quantity) : metric_unit(quantity);
}

bool has_two_units(Quantity quantity)
{
    return display_unit(quantity, UnitSystem::metric).symbol != display_unit(quantity, UnitSystem::us).symbol;
}

std::optional<Quantity> quantity_of(std::string_view unit)
{
    for (const ShortForm& form : short_forms) {
        if (form.unit == unit) {
            return form.quantity;
        }
    }
    return std::nullopt;
}

} // namespace loam::words
