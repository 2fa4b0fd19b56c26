// Unit conversions at the edges of the program. Inside it everything is SI; these functions are the only place
// where another unit's factor stands. All factors are exact by definition unless said otherwise.
// Source: NIST Special Publication 811 (2008), Appendix B (from memory; checked in the tests against the `units`
// program).
#pragma once

namespace loam::units {

inline constexpr double kelvin_at_0_c = 273.15;
inline constexpr double inch_m = 0.0254;
inline constexpr double foot_m = 12.0 * inch_m;
inline constexpr double square_foot_m2 = foot_m * foot_m;
inline constexpr double pound_kg = 0.45359237;
inline constexpr double ounce_kg = pound_kg / 16.0;
inline constexpr double us_gallon_l = 3.785411784;
inline constexpr double us_liquid_quart_l = us_gallon_l / 4.0;
// A US bushel is 2150.42 cubic inches and holds 32 dry quarts.
inline constexpr double us_dry_quart_l = 2150.42 * inch_m * inch_m * inch_m * 1000.0 / 32.0;
inline constexpr double us_fluid_ounce_l = us_gallon_l / 128.0;
inline constexpr double cubic_foot_l = foot_m * foot_m * foot_m * 1000.0;
inline constexpr double uk_gallon_l = 4.54609;
inline constexpr double standard_gravity_m_s2 = 9.80665;
inline constexpr double stefan_boltzmann_w_m2_k4 = 5.670374419e-8; // CODATA 2018
inline constexpr double standard_pressure_pa = 101325.0;

constexpr double kelvin_from_celsius(double celsius)
{
    return celsius + kelvin_at_0_c;
}
constexpr double celsius_from_kelvin(double kelvin)
{
    return kelvin - kelvin_at_0_c;
}
constexpr double celsius_from_fahrenheit(double fahrenheit)
{
    return (fahrenheit - 32.0) / 1.8;
}
constexpr double fahrenheit_from_celsius(double celsius)
{
    return celsius * 1.8 + 32.0;
}

} // namespace loam::units
