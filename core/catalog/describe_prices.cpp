#include "core/catalog/check_prices.hpp"
#include "core/catalog/describe.hpp"
#include "core/catalog/names.hpp"
#include "core/catalog/problem_codes.hpp"

namespace loam::catalog {

// While reading, a price that is missing or out of bounds stays negative, so that it isn't also called out of order.
template <class Priced> static void describe_three_prices(json::Archive& archive, Priced& pack)
{
    if (archive.mode() == json::Archive::Mode::read) {
        pack.low = pack.typical = pack.high = Decimal{-1, 0};
    }
    archive.decimal({"low", "Low price, in the list's currency"}, pack.low, limits::price);
    archive.decimal({"typical", "Typical price"}, pack.typical, limits::price);
    archive.decimal({"high", "High price"}, pack.high, limits::price);
    if (pack.low.coefficient >= 0 && pack.typical.coefficient >= 0 && pack.high.coefficient >= 0) {
        refuse_unless_ordered(archive, {"low", pack.low.value()}, {"typical", pack.typical.value()});
        refuse_unless_ordered(archive, {"typical", pack.typical.value()}, {"high", pack.high.value()});
    }
}

void describe(json::Archive& archive, Pack& pack)
{
    archive.text({"id", "Unique within its item"}, pack.id, an_id);
    archive.text({"name", "As on the shelf, for example brick of 650 g"}, pack.name, a_name);
    within<limits::pack_amount>(archive, {"amount", "What it holds, in the item's unit"}, pack.amount);
    describe_three_prices(archive, pack);
    archive.number({"mass_kg", "Mass as bought, kg"}, pack.mass_kg, limits::amount);
    std::optional<bool> in_stock = pack.in_stock ? std::nullopt : std::optional<bool>(false);
    archive.flag({"in_stock", "Can be bought; absent: true"}, in_stock);
    pack.in_stock = in_stock.value_or(true);
    archive.extras(pack.extras);
}

void describe(json::Archive& archive, Delivery& delivery)
{
    describe_three_prices(archive, delivery);
    archive.decimal({"free_from", "Goods of this much are brought for nothing"}, delivery.free_from, limits::price);
    archive.extras(delivery.extras);
}

void describe(json::Archive& archive, Item& item)
{
    archive.text({"id", "kebab-case"}, item.id, an_id);
    archive.text({"name", "A generic name, no brand"}, item.name, a_name);
    archive.text({"serves", "The kind of need it meets, for example lamp.flood-lamp"}, item.serves, {1, 80});
    refuse_unless_need_kind(archive, "serves", item.serves);
    archive.choice({"category", "Where it stands on a shopping sheet"}, item.category, category_names);
    archive.text({"unit", "each, l, ml, m2, kg, g, month or year"}, item.unit, {1, 20});
    archive.number({"fits_from", "Least lamp watts, area or outlets that it fits"}, item.fits_from, limits::amount);
    archive.number({"fits_to", "Most lamp watts, area or outlets that it fits"}, item.fits_to, limits::amount);
    if (item.fits_from && item.fits_to) {
        refuse_unless_ordered(archive, {"fits_from", *item.fits_from}, {"fits_to", *item.fits_to});
    }
    archive.list({"packs", "How it is sold"}, item.packs, {1, 50});
    within<limits::months>(archive, {"life_months", "Useful life in months"}, item.life_months);
    within<limits::hours>(archive, {"life_hours", "Useful life in hours of use"}, item.life_hours);
    archive.extras(item.extras);
}

void describe(json::Archive& archive, PriceList& prices)
{
    archive.fixed({"format", "What kind of file this is"}, json::Node::of(std::string_view("loamstead-prices")));
    archive.fixed({"version", "Version of the format"}, json::Node::of(std::int64_t{1}));
    archive.text({"title", "Name of the list"}, prices.title, a_name);
    archive.text({"currency", "ISO 4217 code"}, prices.currency, {3, 3});
    if (!Currency::find(prices.currency)) {
        archive.refuse("currency", problem::unknown_currency, {prices.currency});
    }
    archive.text({"date", "When the prices were taken, YYYY-MM-DD"}, prices.date, {10, 10, json::iso_date});
    if (!prices.date.empty() && !is_calendar_date(prices.date)) {
        archive.refuse("date", problem::no_such_date, {prices.date});
    }
    archive.text({"place", "Where they were taken"}, prices.place, a_name);
    archive.text({"channel", "shop, club, …"}, prices.channel, {1, 40});
    archive.flag({"illustrative", "True where the prices are not real offers"}, prices.illustrative);
    archive.object({"delivery", "What it costs to have an order brought; absent: it is fetched"}, prices.delivery);
    archive.number({"tax_share", "Comes on top of goods and delivery, 0 to 1; absent: it is in the prices"},
                   prices.tax_share, limits::share);
    archive.decimal({"minimum_order", "Least value of goods in an order; absent: none"}, prices.minimum_order,
                    limits::price);
    archive.list({"items", "Generic goods"}, prices.items, {0, 2000});
    archive.extras(prices.extras);
}

} // namespace loam::catalog
