#include "app/batch/columns.hpp"

#include <algorithm>
#include <array>

#include "core/units.hpp"

namespace loam::batch {

namespace {

using enum CellKind;

constexpr double cm = 0.01;
constexpr double inch = units::inch_m;
constexpr double per_f = 1.0 / 1.8;

constexpr auto all = std::to_array<Column>({
    {"name", "", person, "the adopter's name, up to 120 characters"},
    {"number", "", person, "a number or mark in the name's place or beside it"},
    {"language", "", person, "of the sheets: en, de or es"},
    {"units", "", person, "of the sheets: metric, us or both"},
    {"currency", "/currency", text, "ISO 4217, such as USD"},
    {"jurisdiction", "/jurisdiction", text, "whose rules of space count: none, AT, CH, DE, AU-NSW or EU-LAB"},
    {"latitude_deg", "/site/latitude_deg", number, "north positive"},
    {"electricity_price_per_kwh", "/site/electricity_price_per_kwh", price, "in the row's currency"},
    {"winter_day_c", "/site/room/winter/day_c", number, "room air by day in the coldest weeks"},
    {"winter_day_f", "/site/room/winter/day_c", number, "the same in °F", per_f, 32.0},
    {"winter_night_c", "/site/room/winter/night_c", number, "by night"},
    {"winter_night_f", "/site/room/winter/night_c", number, "the same in °F", per_f, 32.0},
    {"winter_humidity_percent", "/site/room/winter/relative_humidity", number, "relative humidity, 0 to 100", 0.01},
    {"summer_day_c", "/site/room/summer/day_c", number, "room air by day in an ordinary summer"},
    {"summer_day_f", "/site/room/summer/day_c", number, "the same in °F", per_f, 32.0},
    {"summer_night_c", "/site/room/summer/night_c", number, "by night"},
    {"summer_night_f", "/site/room/summer/night_c", number, "the same in °F", per_f, 32.0},
    {"summer_humidity_percent", "/site/room/summer/relative_humidity", number, "relative humidity, 0 to 100", 0.01},
    {"heat_wave_c", "/site/room/heat_wave_c", number, "room air on the hottest afternoon"},
    {"heat_wave_f", "/site/room/heat_wave_c", number, "the same in °F", per_f, 32.0},
    {"power_cut_hours", "/site/room/power_cut/hours", number, "the longest power cut to be prepared for"},
    {"power_cut_room_c", "/site/room/power_cut/room_c", number, "what the room falls to meanwhile"},
    {"power_cut_room_f", "/site/room/power_cut/room_c", number, "the same in °F", per_f, 32.0},
    {"sun_reaches", "/site/room/sun_reaches", text, "direct sun on the box: no, yes or unknown"},
    {"enclosure", "", person, "id of the template's enclosure that the row is about, where there are several"},
    {"box_length_cm", "@/shell/length_m", number, "inner length; what stands in the box keeps its share of it", cm},
    {"box_length_in", "@/shell/length_m", number, "the same in inches", inch},
    {"box_width_cm", "@/shell/width_m", number, "inner width, front to back", cm},
    {"box_width_in", "@/shell/width_m", number, "the same in inches", inch},
    {"box_height_cm", "@/shell/height_m", number, "inner height", cm},
    {"box_height_in", "@/shell/height_m", number, "the same in inches", inch},
    {"animals", "@/animals/0/count", animals, "how many of the template's kind, or “1 python-regius + 2 …”"},
    {"species", "@/animals/0/species", text, "by its scientific name, as in pantherophis-guttatus"},
    {"sex", "@/animals/0/sex", text, "female, male or unknown"},
    {"animal_length_cm", "@/animals/0/length_m", number, "by the species' own measure", cm},
    {"animal_length_in", "@/animals/0/length_m", number, "the same in inches", inch},
    {"animal_mass_g", "@/animals/0/mass_kg", number, "weight of one", 0.001},
    {"animal_mass_oz", "@/animals/0/mass_kg", number, "the same in ounces", units::ounce_kg},
    {"animal_age_years", "@/animals/0/age_years", number, ""},
    {"owned", "", owned, "items of the price list with their quantity: “thermostat-dimming; coir-chips: 20”"},
    {"price_level", "/budget/price_level", text, "low, typical or high"},
    {"channel", "/budget/channel", text, "where to buy, as the price list names it"},
    {"horizon_years", "/budget/horizon_years", whole, "years that the budget sheet looks ahead"},
});

} // namespace

std::span<const Column> columns()
{
    return all;
}

const Column* find_column(std::string_view name)
{
    const auto found = std::find_if(all.begin(), all.end(), [&](const Column& column) { return column.name == name; });
    return found == all.end() ? nullptr : &*found;
}

bool is_box(const Column& column)
{
    return column.path.starts_with("@/shell/");
}

bool is_of_enclosure(const Column& column)
{
    return column.path.starts_with("@");
}

} // namespace loam::batch
