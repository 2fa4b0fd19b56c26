#include "core/assess/calibrate.hpp"

#include <algorithm>
#include <cmath>

#include "core/assess/climate_stage.hpp"

namespace loam::assess {

namespace {

climate::Measure measure_of(plan::Measure measure)
{
    switch (measure) {
    case plan::Measure::surface:
        return climate::Measure::surface;
    case plan::Measure::operative:
        return climate::Measure::operative;
    case plan::Measure::ground:
        break;
    }
    return climate::Measure::ground;
}

void widen(Range& range, const Range& by)
{
    range = {std::min(range.low, by.low), 0.5 * (range.likely + by.likely), std::max(range.high, by.high)};
}

// The rooms that the plan reckons with while the lamps are as they were, all in one. nullopt where it has none.
std::optional<climate::RoomState> any_room(const std::vector<climate::Case>& rooms, bool lamps_on)
{
    std::optional<climate::RoomState> any;
    for (const climate::Case& one : rooms) {
        if (one.day != lamps_on || one.fault != climate::Fault::none || one.id == "heat-wave") {
            continue;
        }
        if (any) {
            widen(any->temperature_c, one.room.temperature_c);
            widen(any->relative_humidity, one.room.relative_humidity);
        } else {
            any = one.room;
        }
    }
    return any;
}

// Where the room's temperature was noted down, it is a reading too, with the spread of a stated one.
std::optional<climate::RoomState> room_of(const Context& context, const plan::Reading& reading,
                                          const std::vector<climate::Case>& rooms, std::string pointer, Notes& notes)
{
    auto room = any_room(rooms, reading.lamps == plan::LampState::on);
    if (!room) {
        return std::nullopt;
    }
    const auto spread = spread_of(context.catalog, "room.stated_spread_k");
    if (reading.room_c && spread) {
        room->temperature_c = {*reading.room_c + spread->low, *reading.room_c + spread->likely,
                               *reading.room_c + spread->high};
    } else if (!reading.room_c) {
        assume(notes, {std::move(pointer), "degC", room->temperature_c, {}});
    }
    return room;
}

// Why a reading can't be compared with the box at all; `used` where it can.
ReadingUse use_of(const plan::Reading& reading, const ClimateBox& set_up)
{
    if (!climate::is_inside(set_up.box, {measure_of(reading.measure), reading.x_m, reading.y_m})) {
        return ReadingUse::outside_box;
    }
    if (!reading.lamps) {
        return ReadingUse::lamps_not_stated;
    }
    climate::Case then;
    then.day = reading.lamps == plan::LampState::on;
    return devices_in_use(set_up.box, set_up.free_dimmers, then).empty() ? ReadingUse::used
                                                                         : ReadingUse::dimmer_not_stated;
}

// The readings as the climate module takes them; `result` gets a row for each reading of the plan.
std::vector<climate::TakenReading> taken_readings(const Context& context, const Housed& housed,
                                                  const ClimateBox& set_up, const std::vector<climate::Case>& rooms,
                                                  Notes& notes, CalibrationResult& result)
{
    std::vector<climate::TakenReading> taken;
    const std::vector<plan::Reading>& readings = housed.enclosure.readings;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const plan::Reading& reading = readings[i];
        const std::string pointer = housed.pointer("/readings/" + std::to_string(i) + "/");
        const auto accuracy =
            given_or_assumed(notes, context.catalog, reading.accuracy_k, pointer + "accuracy_k", "reading.accuracy_k");
        ReadingResult row{.id = reading.id,
                          .use = use_of(reading, set_up),
                          .measure = measure_of(reading.measure),
                          .lamps_on = reading.lamps == plan::LampState::on,
                          .value_c = reading.value_c,
                          .accuracy_k = accuracy ? accuracy->high : 0.0}; // the worst thermometer it may have been
        if (row.use == ReadingUse::used) {
            const auto room = room_of(context, reading, rooms, pointer + "room_c", notes);
            row.room_c = room ? room->temperature_c.likely : 0.0;
            if (room && accuracy) {
                taken.push_back({.id = row.id,
                                 .at = {row.measure, reading.x_m, reading.y_m},
                                 .lamps_on = row.lamps_on,
                                 .room = *room,
                                 .value_c = row.value_c,
                                 .accuracy_k = row.accuracy_k});
            } else {
                row.use = ReadingUse::not_fitted;
            }
        }
        result.readings.push_back(std::move(row));
    }
    return taken;
}

void take_fit(CalibrationResult& result, const climate::Calibration& found)
{
    for (ReadingResult& row : result.readings) {
        const auto fitted = std::find_if(found.readings.begin(), found.readings.end(),
                                         [&](const climate::FittedReading& one) { return one.id == row.id; });
        if (row.use != ReadingUse::used) {
            continue;
        }
        if (fitted == found.readings.end()) {
            row.use = ReadingUse::not_fitted;
            continue;
        }
        row.before_c = fitted->before_c;
        row.after_c = fitted->after_c;
        row.residual_k = fitted->residual_k;
        row.residual_in_deviations = fitted->residual_in_deviations;
        row.surprise = fitted->surprise;
        if (!fitted->consistent) {
            row.use = ReadingUse::inconsistent;
        } else if (!found.fits) {
            row.use = ReadingUse::not_fitted;
        } else {
            ++result.used;
        }
    }
    result.applied = result.used > 0;
    if (found.solved && found.degrees > 0) {
        result.chi_square = found.chi_square;
        result.chance = found.chance;
    }
    std::copy_if(found.inputs.begin(), found.inputs.end(), std::back_inserter(result.moved),
                 [](const climate::UpdatedInput& input) { return input.moved; });
    std::stable_sort(result.moved.begin(), result.moved.end(), [](const auto& one, const auto& other) {
        return std::abs(one.shift_in_deviations) > std::abs(other.shift_in_deviations);
    });
}

void mark_other_conditions(CalibrationResult& result, const std::vector<climate::Case>& rooms)
{
    for (ReadingResult& row : result.readings) {
        climate::Calibration alone;
        alone.conditions = {{row.lamps_on, row.room_c}};
        row.other_conditions = row.use == ReadingUse::used &&
                               std::none_of(rooms.begin(), rooms.end(),
                                            [&](const climate::Case& room) { return climate::is_alike(alone, room); });
    }
}

} // namespace

ClimateBox Calibrated::at(const ClimateBox& set_up, const climate::Case& room) const
{
    ClimateBox there = set_up;
    there.box = climate::box_for(boxes, room);
    return there;
}

std::optional<Calibrated> calibrate_enclosure(const Context& context, const Housed& housed, const ClimateBox& set_up,
                                              const std::vector<climate::Case>& rooms, Notes& notes,
                                              std::stop_token stop)
{
    CalibrationResult result;
    const auto taken = taken_readings(context, housed, set_up, rooms, notes, result);
    climate::Workspace starts; // its own: the same readings give the same bytes, whatever was solved before
    auto boxes = climate::calibrate(set_up.box, taken, starts, stop);
    if (!boxes) {
        return std::nullopt;
    }
    Calibrated calibrated{*std::move(boxes), std::nullopt};
    if (result.readings.empty()) {
        return calibrated;
    }
    take_fit(result, calibrated.boxes);
    mark_other_conditions(result, rooms);
    for (const climate::Case& room : rooms) {
        if (result.applied && climate::is_alike(calibrated.boxes, room)) {
            result.cases.push_back(room.id);
        }
    }
    report_readings(notes, housed, result);
    calibrated.result = std::move(result);
    return calibrated;
}

} // namespace loam::assess
