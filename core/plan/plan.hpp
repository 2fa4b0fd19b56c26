// Everything the keeper made, as one value. The JSON form is documented in resources/schema/plan.schema.json.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/json/node.hpp"
#include "core/plan/contents.hpp"
#include "core/plan/device.hpp"
#include "core/plan/shell.hpp"
#include "core/plan/site.hpp"

namespace loam::plan {

// How the hours of light go through the year: as stated on every day, or with the day's length at the site, held within
// what the species' sheets ask for, about the same middle of the day.
enum class LightYear { same, with_the_sky };

struct Photoperiod {
    std::string on = "07:00"; // HH:MM
    std::string off = "19:00";
    std::optional<LightYear> through_year; // absent: the same
    json::Extras extras;
    friend bool operator==(const Photoperiod&, const Photoperiod&) = default;
};

struct Moisture {
    std::optional<double> misting_l_per_day;
    std::optional<std::int64_t> mistings_per_day; // absent: spread evenly
    std::optional<double> water_changes_per_day;
    json::Extras extras;
    friend bool operator==(const Moisture&, const Moisture&) = default;
};

struct Enclosure {
    std::string id;
    std::string name;
    std::optional<std::string> stand;
    std::optional<std::string> replaces; // id of the enclosure that goes once this one is proved
    Shell shell;
    std::vector<Animal> animals;
    std::vector<SubstrateLayer> substrate;
    std::vector<Fitting> fittings;
    std::vector<Device> equipment;
    std::optional<Photoperiod> photoperiod;
    Moisture moisture;
    std::vector<Reading> readings;
    json::Extras extras;
    friend bool operator==(const Enclosure&, const Enclosure&) = default;
};

struct OwnedItem {
    std::string id;
    std::string item;      // an item id of the price list
    double quantity = 1.0; // in the item's own unit
    std::optional<double> age_months;
    json::Extras extras;
    friend bool operator==(const OwnedItem&, const OwnedItem&) = default;
};

// A change of the bill of needs, which the program draws up itself.
struct Wish {
    std::string id;
    std::string need;                 // kind, as price lists name it: "measure.infrared-thermometer"
    std::optional<std::string> where; // id of the element that it comes from; absent: wherever it does
    std::optional<std::string> item;  // of the price list, to be bought in its place; absent: it is left out
    std::optional<std::string> reason;
    json::Extras extras;
    friend bool operator==(const Wish&, const Wish&) = default;
};

// What the keeper adds to the order.
struct OwnLine {
    std::string id;
    std::string name;
    std::int64_t quantity = 1;          // 1..1000
    std::optional<Decimal> price;       // of one, in the plan's currency; absent: not known
    std::optional<double> every_months; // bought again after so long; absent: once
    json::Extras extras;
    friend bool operator==(const OwnLine&, const OwnLine&) = default;
};

enum class PriceLevel { low, typical, high };

// By what the packs of a need are chosen.
enum class PackAim { cheapest, fewest_packs, least_left_over };

struct Budget {
    std::optional<std::int64_t> horizon_years; // 1..60
    std::optional<double> discount_rate;       // per year, 0..1
    std::optional<PriceLevel> price_level;
    std::optional<PackAim> pack_aim; // absent: cheapest
    std::optional<std::string> channel;
    std::optional<double> contingency; // share added to the startup, 0..1
    json::Extras extras;
    friend bool operator==(const Budget&, const Budget&) = default;
};

inline constexpr std::int64_t current_version = 1;

struct Plan {
    std::string title;
    std::string currency = "USD";      // ISO 4217
    std::string jurisdiction = "none"; // "none", or a code that rules name ("AT", "CH", "DE", "AU-NSW", "EU-LAB")
    Site site;
    std::vector<Enclosure> enclosures;
    std::vector<OwnedItem> owned;
    std::vector<Wish> wishes;
    std::vector<OwnLine> own_lines;
    Budget budget;
    json::Extras extras;
    friend bool operator==(const Plan&, const Plan&) = default;
};

} // namespace loam::plan
