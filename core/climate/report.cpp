#include "core/climate/report.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/probe.hpp"
#include "core/climate/psychrometrics.hpp"

namespace loam::climate {

namespace {

// A physical bound on a range, which a straight line may overshoot.
Range bounded(Range range, double least, double most)
{
    return {std::clamp(range.low, least, most), std::clamp(range.likely, least, most),
            std::clamp(range.high, least, most)};
}

void report_coldest_pane(const Model& model, const Solution& solution, CaseResult& result)
{
    result.coldest_pane_c = INFINITY;
    for (const FaceModel& face : model.faces) {
        if (!face.place)
            continue;
        const double inside_c = solution.values[model.layout.face_inside(*face.place)];
        if (inside_c >= result.coldest_pane_c)
            continue;
        result.coldest_pane_c = inside_c;
        const std::size_t vapour = face.upper ? model.layout.upper_vapour() : model.layout.lower_vapour();
        const auto full = saturation(inside_c);
        result.condensation = full && solution.values[vapour] > full->humidity_ratio;
    }
}

// `told` is the reading that the zone is judged by: what limits it is what a keeper should know.
ZoneReading zone_reading(const Zone& zone, const ZoneQuantities& at, std::size_t told,
                         const std::vector<QuantityRange>& ranges)
{
    return {.surface_c = ranges[at.surface].range,
            .ground_c = ranges[at.ground].range,
            .operative_c = ranges[at.operative].range,
            // More than saturated air drops its surplus as mist where it stands.
            .humidity = bounded(ranges[at.humidity].range, 0.0, 1.0),
            .limited_by = ranges[told].limited_by,
            .limited_share = ranges[told].limited_share,
            .area = zone.area};
}

Range drawn_range(const Range& power_w, const Control& control)
{
    const double level = control.kind == ControlKind::dimmer ? control.level : 1.0;
    return {power_w.low * level, power_w.likely * level, power_w.high * level};
}

struct Installed {
    const Device& device;
    const Range& power_w;
    const Control& control;
    bool stuck = false;
};

DeviceState device_state(const Solved& solved, const Installed& installed, const std::vector<QuantityRange>& ranges)
{
    const Device& device = installed.device;
    DeviceState state;
    state.id = device.id;
    if (device.installed_w <= 0.0)
        return state;
    if (!device.regulated) {
        state.power_w = installed.stuck ? installed.power_w : drawn_range(installed.power_w, installed.control);
        const double share = device.fixed_w / device.installed_w;
        state.duty = exactly(share);
        return state;
    }
    state.power_w = bounded(ranges[solved.quantities.powers[*device.regulated]].range, 0.0, device.installed_w);
    state.duty = {state.power_w.low / device.installed_w, state.power_w.likely / device.installed_w,
                  state.power_w.high / device.installed_w};
    const double probe_c = value_of(device.probe, solved.solution.values);
    const double slack_w = 1e-6 * device.installed_w;
    state.saturated = (state.power_w.likely >= device.installed_w - slack_w && probe_c < device.setpoint_c - 0.05) ||
                      (state.power_w.likely <= slack_w && probe_c > device.setpoint_c + 0.05);
    return state;
}

} // namespace

CaseResult report_solution(const Case& now, const Model& model, const Solution& solution)
{
    CaseResult result;
    result.id = now.id;
    result.room_c = now.room.temperature_c;
    result.converged = solution.converged;
    result.iterations = solution.iterations;
    result.residual_w = solution.residual_w;
    result.power_w = solution.balance.drawn_w;
    result.input_w = solution.balance.input_w;
    result.loss_w = solution.balance.losses.sum_w();
    constexpr double seconds_per_day = 86400.0;
    result.condensation_l_per_day = solution.balance.condensation_kg_s * seconds_per_day;
    result.heat_of_evaporation_w = solution.balance.evaporation_kg_s * latent_heat_j_kg;
    report_coldest_pane(model, solution, result);
    return result;
}

void report_ranges(const Solved& solved, const std::vector<QuantityRange>& ranges, CaseResult& result)
{
    const Quantities& q = solved.quantities;
    const Geometry& g = solved.scene.geometry;
    const Zones& zones = solved.places.zones;
    result.basking = zone_reading(zones.basking, q.basking, q.basking.surface, ranges);
    result.warm = zone_reading(zones.warm, q.warm, q.warm.ground, ranges);
    result.cool = zone_reading(zones.cool, q.cool, q.cool.ground, ranges);
    result.gradient_k = ranges[q.gradient].range;
    result.hottest_surface_c = ranges[q.hottest_surface].range;
    const std::size_t hottest = solved.places.hottest_column;
    result.hottest_at = solved.places.on_perch ? perch_body(solved.box, solved.scene, solved.places.hottest_perch).at
                                               : Point{g.x_m(hottest), g.y_m(hottest), g.depth_m[hottest]};
    result.hottest_digging_c = ranges[q.hottest_digging].range;
    result.hottest_pane_c = ranges[q.hottest_pane].range;
    result.lower_air_c = ranges[q.lower_air].range;
    result.upper_air_c = ranges[q.upper_air].range;
    result.ground_humidity = result.cool.humidity;
    result.air_humidity = bounded(ranges[q.air_humidity].range, 0.0, 1.0);
    result.evaporation_l_per_day = bounded(ranges[q.evaporation].range, 0.0, INFINITY);
    result.bowl_evaporation_l_per_day = bounded(ranges[q.bowl_evaporation].range, 0.0, INFINITY);
    const std::size_t lamps = solved.box.lamps.size();
    for (std::size_t l = 0; l < lamps; ++l) {
        const Lamp& lamp = solved.box.lamps[l];
        result.devices.push_back(device_state(solved, {solved.model.devices[l], lamp.power_w, lamp.control}, ranges));
    }
    for (std::size_t m = 0; m < solved.box.mats.size(); ++m) {
        const Mat& mat = solved.box.mats[m];
        const bool stuck = solved.now.fault == Fault::mats_stuck_on;
        result.devices.push_back(
            device_state(solved, {solved.model.devices[lamps + m], mat.power_w, mat.control, stuck}, ranges));
    }
}

} // namespace loam::climate
