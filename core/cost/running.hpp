// What a year costs, line by line.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/explain.hpp"
#include "core/money.hpp"

namespace loam::cost {

inline constexpr double days_per_year = 365.25;
inline constexpr double months_per_year = 12.0;
// A shorter life is no useful life but a mistake; it also keeps the list of replacements finite.
inline constexpr double shortest_life_months = 0.03; // about a day

enum class Kind { electricity, replacement, substrate, food, water, health, other };

// What is used up evenly: electricity (price per kWh), food, conditioner, vet visits, permits.
struct Consumption {
    Kind kind = Kind::other;
    std::string item;
    std::string name;
    Range per_year;         // amount in a year, in the unit of the price
    double price_per = 1.0; // the prices below are for this amount (a pack's yield)
    // Prices as they are written, so that a tariff of 0.1837 keeps its digits until the line is rounded.
    Decimal price_low;
    Decimal price_typical;
    Decimal price_high;
    friend bool operator==(const Consumption&, const Consumption&) = default;
};

// What is replaced whole after a life: lamps, mats, thermostats, a bed of substrate.
struct Renewal {
    Kind kind = Kind::replacement;
    std::string item;
    std::string name;
    std::string where; // device or layer id
    MoneyRange price;  // of one replacement, whole packs
    Range life_months; // see life_months()
    Range age_months;  // a range where nobody knows; the costly course takes the high end
    friend bool operator==(const Renewal&, const Renewal&) = default;
};

struct Line {
    Kind kind = Kind::other;
    std::string item;
    std::string name;
    MoneyRange per_year;
    std::optional<double> every_months; // likely, of a renewal
    friend bool operator==(const Line&, const Line&) = default;
};

struct Running {
    std::vector<Line> lines; // consumption first, in the order given
    MoneyRange total;        // sum of the lines as printed
    friend bool operator==(const Running&, const Running&) = default;
};

// Life in months of something that lasts `life_hours` of burning and is on `hours_per_day`, and of something that
// lasts `life_months` by the calendar; whichever ends first where both are known. nullopt where neither is, or where
// it never ends (0 hours a day).
std::optional<Range> life_months(const std::optional<Range>& life_hours, double hours_per_day,
                                 const std::optional<Range>& by_calendar_months);

// Prices at or above zero in `currency`, an ordered life of at least shortest_life_months, an ordered age at or above
// zero.
bool valid(const Renewal& renewal, const Currency& currency);

// Low: low use at the low price, and for a renewal the long life at the low price; high the other way round.
// nullopt where a figure is negative, not finite, in another currency or too large, or the renewal is not valid.
std::optional<Line> line(const Consumption& consumption, const Currency& currency);
std::optional<Line> line(const Renewal& renewal, const Currency& currency); // price shared evenly over its life
std::optional<Running> running(const std::vector<Consumption>& consumptions, const std::vector<Renewal>& renewals,
                               const Currency& currency);

} // namespace loam::cost
