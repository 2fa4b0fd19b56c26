// What the inputs of a finding are called where "why?" lists them.
#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"low", QT_TRANSLATE_NOOP("sentences", "lowest")},
    {"likely", QT_TRANSLATE_NOOP("sentences", "likely")},
    {"high", QT_TRANSLATE_NOOP("sentences", "highest")},
    {"min", QT_TRANSLATE_NOOP("sentences", "at least")},
    {"max", QT_TRANSLATE_NOOP("sentences", "at most")},
    {"warn", QT_TRANSLATE_NOOP("sentences", "caution above")},
    {"short_by", QT_TRANSLATE_NOOP("sentences", "missing")},
    {"over_by", QT_TRANSLATE_NOOP("sentences", "too much")},
    {"burnt", QT_TRANSLATE_NOOP("sentences", "burnt so far")},
    {"burnt_when_read", QT_TRANSLATE_NOOP("sentences", "burnt when read")},
    {"distance", QT_TRANSLATE_NOOP("sentences", "distance")},
    {"clearance", QT_TRANSLATE_NOOP("sentences", "clearance")},
    {"gap", QT_TRANSLATE_NOOP("sentences", "gap")},
    {"needed", QT_TRANSLATE_NOOP("sentences", "gap needed")},
    {"reach", QT_TRANSLATE_NOOP("sentences", "reach")},
    {"rating", QT_TRANSLATE_NOOP("sentences", "rated current")},
    {"voltage", QT_TRANSLATE_NOOP("sentences", "voltage")},
    {"floor", QT_TRANSLATE_NOOP("sentences", "floor")},
    {"usable", QT_TRANSLATE_NOOP("sentences", "usable floor")},
    {"animals", QT_TRANSLATE_NOOP("sentences", "animals")},
    {"length", QT_TRANSLATE_NOOP("sentences", "length")},
    {"years_fast", QT_TRANSLATE_NOOP("sentences", "at fast growth")},
    {"years_slow", QT_TRANSLATE_NOOP("sentences", "at slow growth")},
    {"side", QT_TRANSLATE_NOOP("sentences", "side")},
    {"body", QT_TRANSLATE_NOOP("sentences", "body length")},
    {"width", QT_TRANSLATE_NOOP("sentences", "clear width")},
    {"height", QT_TRANSLATE_NOOP("sentences", "height")},
    {"hides", QT_TRANSLATE_NOOP("sentences", "hides")},
    {"species_count", QT_TRANSLATE_NOOP("sentences", "species")},
    {"males", QT_TRANSLATE_NOOP("sentences", "males")},
    {"depth", QT_TRANSLATE_NOOP("sentences", "depth")},
    {"hour", QT_TRANSLATE_NOOP("sentences", "after the lamps go on")},
    {"misting", QT_TRANSLATE_NOOP("sentences", "misting")},
    {"residual", QT_TRANSLATE_NOOP("sentences", "heat left over")},
    {"power", QT_TRANSLATE_NOOP("sentences", "power")},
    {"pane", QT_TRANSLATE_NOOP("sentences", "coldest pane")},
    {"dew_point", QT_TRANSLATE_NOOP("sentences", "dew point")},
    {"used", QT_TRANSLATE_NOOP("sentences", "outlets in use")},
    {"outlets", QT_TRANSLATE_NOOP("sentences", "outlets")},
    {"setpoint", QT_TRANSLATE_NOOP("sentences", "set temperature")},
    {"count", QT_TRANSLATE_NOOP("sentences", "count")},
    {"kwh_per_year", QT_TRANSLATE_NOOP("sentences", "use in a year")},
    {"age_months", QT_TRANSLATE_NOOP("sentences", "age")},
    {"quantity", QT_TRANSLATE_NOOP("sentences", "quantity")},
    {"days_min", QT_TRANSLATE_NOOP("sentences", "at least")},
    {"years_min", QT_TRANSLATE_NOOP("sentences", "at least")},
    {"years_max", QT_TRANSLATE_NOOP("sentences", "at most")},
    {"by", QT_TRANSLATE_NOOP("sentences", "change")},
    {"to", QT_TRANSLATE_NOOP("sentences", "new value")},
    {"from", QT_TRANSLATE_NOOP("sentences", "present value")},
    {"area", QT_TRANSLATE_NOOP("sentences", "area")},
    {"fraction", QT_TRANSLATE_NOOP("sentences", "share")},
    {"goods", QT_TRANSLATE_NOOP("sentences", "goods")},
    {"limit", QT_TRANSLATE_NOOP("sentences", "what an animal bears")},
    {"within", QT_TRANSLATE_NOOP("sentences", "within")},
    {"earliest", QT_TRANSLATE_NOOP("sentences", "at the earliest")},
    {"value", QT_TRANSLATE_NOOP("sentences", "read")},
    {"deviations", QT_TRANSLATE_NOOP("sentences", "standard deviations off")},
    {"room", QT_TRANSLATE_NOOP("sentences", "room")},
    {"alike_within", QT_TRANSLATE_NOOP("sentences", "room alike within")},
    {"chi_square", QT_TRANSLATE_NOOP("sentences", "chi-square")},
    {"chance", QT_TRANSLATE_NOOP("sentences", "chance of a worse fit")},
    {"zone", QT_TRANSLATE_NOOP("sentences", "zone")},
    {"weeks", QT_TRANSLATE_NOOP("sentences", "weeks in the cold")},
    {"lost", QT_TRANSLATE_NOOP("sentences", "lost")},
    {"days", QT_TRANSLATE_NOOP("sentences", "within")},
    {"daily", QT_TRANSLATE_NOOP("sentences", "a day")},
    {"days_max", QT_TRANSLATE_NOOP("sentences", "days, at most")},
    {"energy_min", QT_TRANSLATE_NOOP("sentences", "energy, at least")},
    {"energy_max", QT_TRANSLATE_NOOP("sentences", "energy, at most")},
    {"both", QT_TRANSLATE_NOOP("sentences", "with both")},
    {"afterwards", QT_TRANSLATE_NOOP("sentences", "with the new one alone")},
    {"stop", QT_TRANSLATE_NOOP("sentences", "loss that ends it")},
};

} // namespace

Sentences input_names()
{
    return rows;
}

} // namespace loam::words
