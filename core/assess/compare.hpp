// Two plans side by side: the same figures of both, what either buys, and whether what the second costs more comes
// back.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/assess/assessment.hpp"

namespace loam::assess {

enum class Compared {
    floor_m2,
    usable_floor_m2,
    required_floor_m2,
    connected_w,
    year_kwh,
    winter_day_kwh,
    summer_day_kwh,
    water_l_per_day,
    mass_kg
};

// What stands on either side; the first plan's is at 0, the second's at 1.
template <typename T> using Sides = std::array<T, 2>;

struct ComparedFigure {
    Compared what = Compared::floor_m2;
    Sides<std::optional<Range>> values; // in the unit of its name; absent: not known, or no such enclosure
    friend bool operator==(const ComparedFigure&, const ComparedFigure&) = default;
};

struct ComparedZone {
    std::string case_id;
    Zone zone = Zone::warm;
    climate::Measure measure = climate::Measure::ground;
    Sides<std::optional<ZoneResult>> sides;
    friend bool operator==(const ComparedZone&, const ComparedZone&) = default;
};

struct ComparedHumidity {
    std::string case_id;
    Sides<std::optional<HumidityCase>> sides;
    friend bool operator==(const ComparedHumidity&, const ComparedHumidity&) = default;
};

struct ComparedEnclosure {
    Sides<std::string> ids; // empty: the other plan has none to go with it
    Sides<std::string> names;
    Sides<Judgement> space;
    Sides<Judgement> overall;
    std::vector<ComparedFigure> figures;
    std::vector<ComparedZone> zones;
    std::vector<ComparedHumidity> humidity;
    friend bool operator==(const ComparedEnclosure&, const ComparedEnclosure&) = default;
};

// A pack that either order holds.
struct ComparedPurchase {
    std::string need;
    std::string item; // empty: no price is known
    std::string item_name;
    std::string pack;
    Sides<std::int64_t> packs{};
    Sides<std::optional<MoneyRange>> totals; // absent: not bought on this side, or without a price
    friend bool operator==(const ComparedPurchase&, const ComparedPurchase&) = default;
};

enum class Payback {
    at_once, // the second costs no more to start and no more to run
    after,   // it costs more to start, and less to run
    never,   // it costs more to run, or as much, and no less to start
    trade,   // it costs less to start and more to run: after the years it has lost its lead
    not_known
};

struct PaybackResult {
    Payback kind = Payback::not_known;
    std::optional<double> years; // for `after` and `trade`
    friend bool operator==(const PaybackResult&, const PaybackResult&) = default;
};

struct Comparison {
    std::vector<ComparedEnclosure> enclosures;
    std::vector<ComparedPurchase> purchases; // those that differ
    PaybackResult payback;
    friend bool operator==(const Comparison&, const Comparison&) = default;
};

// Enclosures go together by their id, those left over in their order.
Comparison compare(const Assessment& first, const Assessment& second);

// Simple pay-back: the years after which the second's lower running cost has made good its dearer start, or the other
// way round.
// Method: (start of second - start of first) / (yearly of first - yearly of second), of typical prices, without
// interest; the yearly cost spreads each replacement over its life.
// Range: not known where either is not costed, where the currencies or the unpriced needs differ, or where a tariff is
// not known: the difference would then leave out a part of one side.
// Source: textbook engineering economics, simple pay-back period (from memory).
PaybackResult payback(const Costs& first, const Costs& second);

} // namespace loam::assess
