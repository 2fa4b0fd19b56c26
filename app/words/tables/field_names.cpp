#include <QCoreApplication>

#include "app/words/places.hpp"

namespace loam::words {

namespace {

struct FieldName {
    std::string_view key;
    const char* text;
};

constexpr FieldName rows[] = {
    {"title", QT_TRANSLATE_NOOP("places", "title")},
    {"currency", QT_TRANSLATE_NOOP("places", "currency")},
    {"jurisdiction", QT_TRANSLATE_NOOP("places", "whose law applies")},
    {"site", QT_TRANSLATE_NOOP("places", "site")},
    {"latitude_deg", QT_TRANSLATE_NOOP("places", "latitude")},
    {"electricity_price_per_kwh", QT_TRANSLATE_NOOP("places", "price of electricity")},
    {"room", QT_TRANSLATE_NOOP("places", "room")},
    {"winter", QT_TRANSLATE_NOOP("places", "winter")},
    {"summer", QT_TRANSLATE_NOOP("places", "summer")},
    {"day_c", QT_TRANSLATE_NOOP("places", "temperature by day")},
    {"night_c", QT_TRANSLATE_NOOP("places", "temperature at night")},
    {"relative_humidity", QT_TRANSLATE_NOOP("places", "humidity")},
    {"heat_wave_c", QT_TRANSLATE_NOOP("places", "temperature in a heat wave")},
    {"power_cut", QT_TRANSLATE_NOOP("places", "power cut")},
    {"hours", QT_TRANSLATE_NOOP("places", "duration")},
    {"room_c", QT_TRANSLATE_NOOP("places", "room temperature")},
    {"sun_reaches", QT_TRANSLATE_NOOP("places", "whether sun reaches the enclosure")},
    {"circuits", QT_TRANSLATE_NOOP("places", "circuits")},
    {"voltage_v", QT_TRANSLATE_NOOP("places", "voltage")},
    {"rating_a", QT_TRANSLATE_NOOP("places", "rated current")},
    {"other_load_w", QT_TRANSLATE_NOOP("places", "what else runs on it")},
    {"strips", QT_TRANSLATE_NOOP("places", "outlet strips")},
    {"circuit", QT_TRANSLATE_NOOP("places", "circuit")},
    {"timed_outlets", QT_TRANSLATE_NOOP("places", "timed outlets")},
    {"always_on_outlets", QT_TRANSLATE_NOOP("places", "always-on outlets")},
    {"fed_from", QT_TRANSLATE_NOOP("places", "fed from")},
    {"residual_current_protected", QT_TRANSLATE_NOOP("places", "residual-current protection")},
    {"stands", QT_TRANSLATE_NOOP("places", "stands")},
    {"rated_load_kg", QT_TRANSLATE_NOOP("places", "what it may carry")},
    {"enclosures", QT_TRANSLATE_NOOP("places", "enclosures")},
    {"id", QT_TRANSLATE_NOOP("places", "id")},
    {"name", QT_TRANSLATE_NOOP("places", "name")},
    {"stand", QT_TRANSLATE_NOOP("places", "stand")},
    {"shell", QT_TRANSLATE_NOOP("places", "box")},
    {"length_m", QT_TRANSLATE_NOOP("places", "length")},
    {"width_m", QT_TRANSLATE_NOOP("places", "width")},
    {"height_m", QT_TRANSLATE_NOOP("places", "height")},
    {"walls", QT_TRANSLATE_NOOP("places", "walls")},
    {"wall_thickness_m", QT_TRANSLATE_NOOP("places", "thickness of the walls")},
    {"base", QT_TRANSLATE_NOOP("places", "base")},
    {"base_thickness_m", QT_TRANSLATE_NOOP("places", "thickness of the base")},
    {"top", QT_TRANSLATE_NOOP("places", "top")},
    {"kind", QT_TRANSLATE_NOOP("places", "kind")},
    {"open_fraction", QT_TRANSLATE_NOOP("places", "open share of the mesh")},
    {"thickness_m", QT_TRANSLATE_NOOP("places", "thickness")},
    {"covers", QT_TRANSLATE_NOOP("places", "covers")},
    {"material", QT_TRANSLATE_NOOP("places", "material")},
    {"x_m", QT_TRANSLATE_NOOP("places", "place along the length")},
    {"y_m", QT_TRANSLATE_NOOP("places", "place towards the back")},
    {"z_m", QT_TRANSLATE_NOOP("places", "height of the lower edge")},
    {"vents", QT_TRANSLATE_NOOP("places", "vents")},
    {"free_area_m2", QT_TRANSLATE_NOOP("places", "free area")},
    {"height_above_base_m", QT_TRANSLATE_NOOP("places", "height above the base")},
    {"animals", QT_TRANSLATE_NOOP("places", "animals")},
    {"species", QT_TRANSLATE_NOOP("places", "species")},
    {"count", QT_TRANSLATE_NOOP("places", "number")},
    {"sex", QT_TRANSLATE_NOOP("places", "sex")},
    {"mass_kg", QT_TRANSLATE_NOOP("places", "mass")},
    {"age_years", QT_TRANSLATE_NOOP("places", "age")},
    {"substrate", QT_TRANSLATE_NOOP("places", "substrate")},
    {"depth_m", QT_TRANSLATE_NOOP("places", "depth")},
    {"depth_at_right_m", QT_TRANSLATE_NOOP("places", "depth at the right end")},
    {"water_fraction", QT_TRANSLATE_NOOP("places", "share of water")},
    {"fittings", QT_TRANSLATE_NOOP("places", "fittings")},
    {"rotation_deg", QT_TRANSLATE_NOOP("places", "rotation")},
    {"water_depth_m", QT_TRANSLATE_NOOP("places", "depth of water")},
    {"walkable", QT_TRANSLATE_NOOP("places", "whether animals walk over it")},
    {"equipment", QT_TRANSLATE_NOOP("places", "equipment")},
    {"power_w", QT_TRANSLATE_NOOP("places", "power")},
    {"place", QT_TRANSLATE_NOOP("places", "where it sits")},
    {"beam_deg", QT_TRANSLATE_NOOP("places", "beam angle")},
    {"clearance_m", QT_TRANSLATE_NOOP("places", "clearance from what can burn")},
    {"guarded", QT_TRANSLATE_NOOP("places", "whether it has a guard")},
    {"air_gap_m", QT_TRANSLATE_NOOP("places", "air gap")},
    {"below", QT_TRANSLATE_NOOP("places", "what lies below")},
    {"age_hours", QT_TRANSLATE_NOOP("places", "hours burnt so far")},
    {"reference_open_fraction", QT_TRANSLATE_NOOP("places", "mesh in front of the meter")},
    {"uvi_table", QT_TRANSLATE_NOOP("places", "distance table")},
    {"distance_m", QT_TRANSLATE_NOOP("places", "distance")},
    {"uvi", QT_TRANSLATE_NOOP("places", "UV index")},
    {"supply", QT_TRANSLATE_NOOP("places", "timed or always on")},
    {"strip", QT_TRANSLATE_NOOP("places", "strip")},
    {"control", QT_TRANSLATE_NOOP("places", "control")},
    {"level", QT_TRANSLATE_NOOP("places", "dimmer level")},
    {"setpoint_c", QT_TRANSLATE_NOOP("places", "set temperature")},
    {"probe", QT_TRANSLATE_NOOP("places", "place of the probe")},
    {"photoperiod", QT_TRANSLATE_NOOP("places", "light")},
    {"on", QT_TRANSLATE_NOOP("places", "on")},
    {"off", QT_TRANSLATE_NOOP("places", "off")},
    {"moisture", QT_TRANSLATE_NOOP("places", "moisture")},
    {"misting_l_per_day", QT_TRANSLATE_NOOP("places", "misting in a day")},
    {"water_changes_per_day", QT_TRANSLATE_NOOP("places", "water changes in a day")},
    {"readings", QT_TRANSLATE_NOOP("places", "readings")},
    {"measure", QT_TRANSLATE_NOOP("places", "what is measured")},
    {"value_c", QT_TRANSLATE_NOOP("places", "temperature read")},
    {"accuracy_k", QT_TRANSLATE_NOOP("places", "accuracy")},
    {"lamps", QT_TRANSLATE_NOOP("places", "lamps on or off")},
    {"date", QT_TRANSLATE_NOOP("places", "date")},
    {"owned", QT_TRANSLATE_NOOP("places", "what you own")},
    {"item", QT_TRANSLATE_NOOP("places", "item")},
    {"quantity", QT_TRANSLATE_NOOP("places", "quantity")},
    {"age_months", QT_TRANSLATE_NOOP("places", "age")},
    {"budget", QT_TRANSLATE_NOOP("places", "budget")},
    {"horizon_years", QT_TRANSLATE_NOOP("places", "years to look at")},
    {"discount_rate", QT_TRANSLATE_NOOP("places", "discount rate")},
    {"price_level", QT_TRANSLATE_NOOP("places", "price level")},
    {"channel", QT_TRANSLATE_NOOP("places", "where you buy")},
    {"contingency", QT_TRANSLATE_NOOP("places", "reserve")},
};

} // namespace

std::optional<QString> field_name(std::string_view key)
{
    for (const FieldName& row : rows) {
        if (row.key == key) {
            return QCoreApplication::translate("places", row.text);
        }
    }
    return std::nullopt;
}

} // namespace loam::words
