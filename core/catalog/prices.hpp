// A price list of generic goods: no brands, editable, dated, illustrative as shipped.
#pragma once

#include <optional>
#include <string>
#include <string_view>
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
    std::string seller; // of a list that was put together: the channel it comes from; in no file
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

// What it costs to have an order brought, in the list's currency.
struct Delivery {
    Decimal low;
    Decimal typical;
    Decimal high;
    std::optional<Decimal> free_from; // goods of this much are brought for nothing
    json::Extras extras;
    friend bool operator==(const Delivery&, const Delivery&) = default;
};

// On what terms one channel sells.
struct Seller {
    std::string channel;
    std::optional<Delivery> delivery;
    std::optional<double> tax_share;
    std::optional<Decimal> minimum_order;
    friend bool operator==(const Seller&, const Seller&) = default;
};

struct PriceList {
    std::string title;
    std::string currency = "USD";
    std::string date; // YYYY-MM-DD
    std::string place;
    std::string channel = "shop";
    bool illustrative = true;
    std::optional<Delivery> delivery;     // absent: fetched, or in the prices
    std::optional<double> tax_share;      // that comes on top of goods and delivery, 0..1; absent: in the prices
    std::optional<Decimal> minimum_order; // of goods; absent: none
    std::vector<Seller> sellers;          // of a list that was put together; in no file
    std::vector<Item> items;
    json::Extras extras;
    friend bool operator==(const PriceList&, const PriceList&) = default;
};

// nullptr where the id is unknown.
const Item* find_item(const PriceList& prices, std::string_view id);

// The terms of each channel of the list, its own where it is one.
std::vector<Seller> sellers_of(const PriceList& prices);

// One list of several in one currency: items by their id, their packs together. An item that another list has under the
// same id, but for another need or unit, stays apart under "<channel>.<id>". The date is the oldest one. `lists` holds
// at least one; channels of the same name are told apart by a number.
PriceList put_together(const std::vector<PriceList>& lists);

} // namespace loam::catalog
