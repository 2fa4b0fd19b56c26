// What kind of figure a number is, and in which unit each system shows it.
#pragma once

#include <QString>
#include <optional>
#include <string_view>

#include "app/words/units.hpp"

namespace loam::words {

enum class Quantity {
    number,
    length,                 // m: cm, in
    thickness,              // m: mm, in
    area,                   // m2: m², sq ft
    small_area,             // m2: cm², sq in
    volume,                 // l: L, qt
    dose,                   // ml: mL, fl oz
    mass,                   // kg: kg, lb
    small_mass,             // kg: g, oz
    temperature,            // degC: °C, °F
    temperature_difference, // K: K, °F
    power,                  // W
    energy,                 // kWh
    flux,                   // W/m2
    pressure,               // kPa: kPa, psi
    fraction,               // 0..1: %
    conductivity,           // W/(m K)
    conductance,            // W/K: W/K, BTU/(h °F)
    current,                // A
    voltage,                // V
    hours,
    days,
    weeks,
    months,
    years,
    angle, // deg
    uv_index,
    count
};

struct DisplayUnit {
    QString symbol;      // "cm"; empty for a pure number
    double factor = 1.0; // shown = stored * factor + offset
    double offset = 0.0;
    int decimals = 0;
    bool spaced = true; // "12 cm" but "40%"
};

// A unit's symbol as it is read: those that are words ("years") in the reader's language, the others as they are.
QString spoken(const QString& symbol);

// Of both systems: the metric one.
DisplayUnit display_unit(Quantity quantity, UnitSystem system);
// Whether the two systems show it in different units.
bool has_two_units(Quantity quantity);

// The quantity that a short form of core's ("m", "degC", "K", "W/m2", "1") stands for; nullopt for a currency
// or an unknown form.
std::optional<Quantity> quantity_of(std::string_view unit);

} // namespace loam::words
