// A price list of generic goods: no brands, editable, dated, illustrative as shipped.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/catalog/material.hpp"
#include "core/explain.hpp"
#include "core/json/node.hpp"
#include "core/json/problem.hpp"
#include "core/money.hpp"

namespace loam::catalog {

struct Pack {
    std::string id;
    std::string name; // "brick of 650 g"
    Range amount;     // in the item's unit, for example litres once expanded
    Decimal low;      // prices as written, in the list's currency
    Decimal typical;
    Decimal high;
    std::optional<double> mass_kg; // as bought
    bool in_stock = true;
    json::Extras extras;
    friend bool operator==(const Pack&, const Pack&) = default;
};

enum class Category {
    enclosure,
    heat,
    light,
    control,
    substrate,
    furniture,
    water,
    electrical,
    measuring,
    hygiene,
    food,
    health,
    other
};

struct Item {
    std::string id;
    std::string name;
    std::string serves; // the kind of need it meets, for example "substrate.coir-chips", "lamp.flood-lamp"
    Category category = Category::other;
    std::string unit; // "each", "l", "ml", "month", "year", "m2"
    // Where one item fits only part of a need kind: lamp watts, mat or floor area, strip outlets.
    std::optional<double> fits_from;
    std::optional<double> fits_to;
    std::vector<Pack> packs;
    std::optional<Spread> life_months;
    std::optional<Spread> life_hours;
    json::Extras extras;
    friend bool operator==(const Item&, const Item&) = default;
};

struct PriceList {
    std::string title;
    std::string currency = "USD";
    std::string date; // YYYY-MM-DD
    std::string place;
    std::string channel = "shop";
    bool illustrative = true;
    std::vector<Item> items;
    json::Extras extras;
    friend bool operator==(const PriceList&, const PriceList&) = default;
};

} // namespace loam::catalog
