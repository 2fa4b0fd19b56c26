#include "core/plan/describe.hpp"
#include "core/plan/file.hpp"
#include "core/plan/limits.hpp"
#include "core/plan/names.hpp"

namespace loam::plan {

void describe(json::Archive& archive, Photoperiod& photoperiod)
{
    constexpr json::TextRule time{.max_length = 5, .pattern = json::clock_time};
    archive.text({"on", "When the lamps go on, HH:MM."}, photoperiod.on, time);
    archive.text({"off", "When the lamps go off, HH:MM; earlier than `on`: past midnight."}, photoperiod.off, time);
    archive.choice({"through_year",
                    "The same on every day, or with-the-sky: as long as the day at the site's latitude, "
                    "held within what the species' sheets ask for. Absent: the same."},
                   photoperiod.through_year, light_year_names);
    archive.extras(photoperiod.extras);
}

void describe(json::Archive& archive, Moisture& moisture)
{
    archive.number({"misting_l_per_day", "Water misted in a day, in litres."}, moisture.misting_l_per_day,
                   {.min = 0.0, .max = 100.0});
    archive.integer({"mistings_per_day", "In how many mistings, while the lamps are on; absent: spread evenly."},
                    moisture.mistings_per_day, {.min = 1, .max = 48});
    archive.number({"water_changes_per_day", "How often the bowl is filled afresh in a day."},
                   moisture.water_changes_per_day, {.min = 0.0, .max = 24.0});
    archive.extras(moisture.extras);
}

void describe(json::Archive& archive, Enclosure& enclosure)
{
    archive.text(limits::id_key, enclosure.id, limits::id);
    archive.text_or_empty({"name", "What the keeper calls it."}, enclosure.name, {.max_length = 120});
    archive.text({"stand", "The id of the stand that it stands on."}, enclosure.stand, limits::id);
    archive.text({"replaces", "The id of the enclosure whose place it takes; both run while this one is proved."},
                 enclosure.replaces, limits::id);
    archive.object({"shell", "The box itself. The origin is the front-left corner of the inner face of the base pane; "
                             "x along the length, y towards the back, z up."},
                   enclosure.shell);
    archive.list({"animals", "Who lives in it."}, enclosure.animals, {.max_items = 100});
    archive.list({"substrate", "Layers of the bed, the first on the base pane."}, enclosure.substrate,
                 {.max_items = 20});
    archive.list({"fittings", "What stands in it."}, enclosure.fittings, {.max_items = 200});
    archive.list({"equipment", "Everything with a plug."}, enclosure.equipment, {.max_items = 100});
    archive.object({"photoperiod", "When the timed lamps burn."}, enclosure.photoperiod);
    archive.object_or_default({"moisture", "Water given."}, enclosure.moisture);
    archive.list({"readings", "What thermometers read."}, enclosure.readings, {.max_items = 1000});
    archive.extras(enclosure.extras);
}

void describe(json::Archive& archive, OwnedItem& owned)
{
    archive.text(limits::id_key, owned.id, limits::id);
    archive.text({"item", "An item id of the price list."}, owned.item,
                 {.min_length = 1, .max_length = 80, .pattern = json::dotted_id});
    archive.number({"quantity", "How much of it, in the item's own unit."}, owned.quantity,
                   {.min = 0.0, .max = 100000.0, .exclusive_min = true});
    archive.number({"age_months", "How long it has been in use, in months."}, owned.age_months,
                   {.min = 0.0, .max = 1200.0});
    archive.extras(owned.extras);
}

void describe(json::Archive& archive, Wish& wish)
{
    archive.text(limits::id_key, wish.id, limits::id);
    archive.text({"need", "The kind of need that is changed, as price lists name it."}, wish.need,
                 {.min_length = 1, .max_length = 80, .pattern = json::dotted_id});
    archive.text({"where", "The element it comes from; absent: wherever it comes from."}, wish.where, limits::id);
    archive.text({"item", "An item id of the price list to buy in its place; absent: it is left out."}, wish.item,
                 {.min_length = 1, .max_length = 80, .pattern = json::dotted_id});
    archive.text({"reason", "Why."}, wish.reason, {.max_length = 200});
    archive.extras(wish.extras);
}

void describe(json::Archive& archive, OwnLine& line)
{
    archive.text(limits::id_key, line.id, limits::id);
    archive.text({"name", "What it is."}, line.name, {.min_length = 1, .max_length = 200});
    archive.integer({"quantity", "How many."}, line.quantity, {.min = 1.0, .max = 1000.0});
    archive.decimal({"price", "Price of one in the plan's currency, kept as written; absent: not known."}, line.price,
                    {.min = 0.0, .max = 1000000000.0});
    archive.number({"every_months", "Bought again after so many months; absent: once."}, line.every_months,
                   {.min = 0.1, .max = 1200.0});
    archive.extras(line.extras);
}

void describe(json::Archive& archive, Budget& budget)
{
    archive.integer({"horizon_years", "Years to look ahead."}, budget.horizon_years, {.min = 1.0, .max = 60.0});
    archive.number({"discount_rate", "Discount rate per year, 0 to 1."}, budget.discount_rate, limits::fraction);
    archive.choice({"price_level", "Which of the three prices to plan with."}, budget.price_level, price_level_names);
    archive.choice({"pack_aim", "By what the packs of a need are chosen; absent: the cheapest."}, budget.pack_aim,
                   pack_aim_names);
    archive.text(
        {"channel", "Where everything is to be bought, as the price list names it; absent: wherever it is cheapest."},
        budget.channel, {.min_length = 1, .max_length = 40, .pattern = json::kebab_id});
    archive.number({"contingency", "Share added to the cost of setting up, 0 to 1."}, budget.contingency,
                   limits::fraction);
    archive.extras(budget.extras);
}

void describe(json::Archive& archive, Plan& plan)
{
    archive.fixed({"format", "Marks the kind of file."}, json::Node::of(format_name));
    archive.fixed({"version", "Version of the format."}, json::Node::of(current_version));
    archive.text_or_empty({"title", "What the keeper calls the plan."}, plan.title, {.max_length = 200});
    archive.text({"currency", "ISO 4217 code of all prices."}, plan.currency,
                 {.min_length = 3, .max_length = 3, .pattern = json::currency_code});
    archive.text({"jurisdiction", "Whose law applies: none, or a code that rules name, such as AT or AU-NSW."},
                 plan.jurisdiction, limits::id);
    archive.object_or_default({"site", "Room, circuits, strips, stands."}, plan.site);
    archive.list({"enclosures", "The enclosures."}, plan.enclosures, {.max_items = 50});
    archive.list({"owned", "What is there already and need not be bought."}, plan.owned, {.max_items = 500});
    archive.list({"wishes", "Changes of the bill of needs, which is drawn up from the rest."}, plan.wishes,
                 {.max_items = 500});
    archive.list({"own_lines", "What else is to be bought."}, plan.own_lines, {.max_items = 500});
    archive.object_or_default({"budget", "How the costs are reckoned."}, plan.budget);
    archive.extras(plan.extras);
}

} // namespace loam::plan
