#include "core/assess/climate_box.hpp"

#include <algorithm>

#include "core/assess/room_share.hpp"

namespace loam::assess {

namespace {

// A stated figure is a reading or a guess of the keeper: it has a spread about it. An assumed one brings its own.
std::optional<Range> room_figure(const Context& context, Notes& notes, std::optional<double> given, std::string key,
                                 std::string_view assumption, std::string_view stated_spread)
{
    const auto figure = given_or_assumed(notes, context.catalog, given, "/site/room/" + std::move(key), assumption);
    const auto spread = spread_of(context.catalog, stated_spread);
    if (!figure || !given || !spread) {
        return figure;
    }
    return Range{figure->low + spread->low, figure->likely + spread->likely, figure->high + spread->high};
}

struct Season {
    std::string name;
    const plan::RoomCase& room;
    bool boxes_warm_it = false; // in winter the room's own heating gives the less
};

Range warmed(const Context& context, const Range& room_c, bool lamps_on)
{
    const Range by = rise_by_boxes(context, lamps_on).value_or(Range{});
    return {room_c.low + by.low, room_c.likely + by.likely, room_c.high + by.high};
}

void add_season(const Context& context, Notes& notes, const Season& season, std::vector<climate::Case>& cases)
{
    const std::string base = "room." + season.name + ".";
    auto humidity = room_figure(context, notes, season.room.relative_humidity, season.name + "/relative_humidity",
                                base + "relative_humidity", "room.stated_humidity_spread");
    if (!humidity) {
        return;
    }
    humidity->low = std::max(0.0, humidity->low);
    humidity->high = std::min(1.0, humidity->high);
    const auto day =
        room_figure(context, notes, season.room.day_c, season.name + "/day_c", base + "day_c", "room.stated_spread_k");
    const auto night = room_figure(context, notes, season.room.night_c, season.name + "/night_c", base + "night_c",
                                   "room.stated_spread_k");
    const auto in_room = [&](const Range& stated, bool lamps_on) {
        return season.boxes_warm_it ? warmed(context, stated, lamps_on) : stated;
    };
    if (day) {
        cases.push_back({season.name + "-day", {in_room(*day, true), *humidity}, true, climate::Fault::none});
    }
    if (night) {
        cases.push_back({season.name + "-night", {in_room(*night, false), *humidity}, false, climate::Fault::none});
    }
}

} // namespace

std::vector<climate::Case> climate_cases(const Context& context, const climate::Box& box, Notes& notes)
{
    const plan::Room& room = context.plan.site.room;
    std::vector<climate::Case> cases;
    add_season(context, notes, {"winter", room.winter, false}, cases);
    add_season(context, notes, {"summer", room.summer, true}, cases);
    const auto heat_wave =
        room_figure(context, notes, room.heat_wave_c, "heat_wave_c", "room.heat_wave_c", "room.stated_spread_k");
    const climate::Case* summer_day = nullptr;
    for (const climate::Case& one : cases) {
        summer_day = one.id == "summer-day" ? &one : summer_day;
    }
    if (summer_day == nullptr) {
        return cases;
    }
    const climate::Case summer = *summer_day; // the vector grows below
    if (heat_wave) {
        cases.push_back({"heat-wave",
                         {warmed(context, *heat_wave, true), summer.room.relative_humidity},
                         true,
                         climate::Fault::none});
    }
    if (!box.mats.empty()) {
        cases.push_back({"mat-stuck-on", summer.room, true, climate::Fault::mats_stuck_on});
    }
    return cases;
}

} // namespace loam::assess
