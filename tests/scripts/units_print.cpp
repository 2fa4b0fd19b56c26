// Prints each conversion of core/units.hpp as
// "<expression for the units program>|<its target>|<our value>|<relative tolerance>".
#include <cstdio>

#include "core/units.hpp"

namespace {

// Both sides compute in doubles, by one or two operations.
constexpr double rounding = 1e-12;

void print(const char* from, const char* to, double value, double tolerance = rounding)
{
    std::printf("%s|%s|%.17g|%g\n", from, to, value, tolerance);
}

} // namespace

int main()
{
    using namespace loam::units;
    print("1 inch", "m", inch_m);
    print("1 foot", "m", foot_m);
    print("1 ft^2", "m^2", square_foot_m2);
    print("1 lb", "kg", pound_kg);
    print("1 oz", "kg", ounce_kg);
    print("1 usgallon", "l", us_gallon_l);
    print("1 usquart", "l", us_liquid_quart_l);
    print("1 dryquart", "l", us_dry_quart_l);
    print("1 usfluidounce", "l", us_fluid_ounce_l);
    print("1 ft^3", "l", cubic_foot_l);
    print("1 brgallon", "l", uk_gallon_l);
    print("1 gravity", "m/s^2", standard_gravity_m_s2);
    print("1 stefanboltzmann", "W/m^2 K^4", stefan_boltzmann_w_m2_k4, 5e-11); // CODATA prints ten digits
    print("1 atm", "Pa", standard_pressure_pa);
    print("tempC(0)", "K", kelvin_at_0_c);
    print("tempC(21.5)", "K", kelvin_from_celsius(21.5));
    print("tempK(300)", "tempC", celsius_from_kelvin(300.0));
    print("tempF(85)", "tempC", celsius_from_fahrenheit(85.0));
    print("tempF(-40)", "tempC", celsius_from_fahrenheit(-40.0));
    print("tempC(29.4)", "tempF", fahrenheit_from_celsius(29.4));
    return 0;
}
