#include "core/assess/reach.hpp"

#include <algorithm>
#include <cmath>

#include "core/assess/fittings.hpp"
#include "core/assess/substrate.hpp"

namespace loam::assess {

std::vector<light::Standing> standing_places(const Context& context, const Housed& housed, Notes& notes)
{
    const plan::Enclosure& enclosure = housed.enclosure;
    const double bed_m = std::max(bed_surface_m(enclosure, 0.0), bed_surface_m(enclosure, enclosure.shell.length_m));
    std::vector<light::Standing> places{{"", {0.0, 0.0, enclosure.shell.length_m, enclosure.shell.width_m}, bed_m}};
    for (std::size_t i = 0; i < enclosure.fittings.size(); ++i) {
        const plan::Fitting& fitting = enclosure.fittings[i];
        if (!can_be_stood_on(fitting.kind)) {
            continue;
        }
        if (const auto height = fitting_height(context, housed, i, notes)) {
            const double under_m = bed_surface_m(enclosure, fitting.x_m + fitting.length_m / 2.0);
            places.push_back(
                {fitting.id, {fitting.x_m, fitting.y_m, fitting.length_m, fitting.width_m}, under_m + height->high});
        }
    }
    return places;
}

light::UvLamp as_lamp(const Context& context, const Housed& housed, Notes& notes, const KnownDevice& known)
{
    light::UvLamp lamp;
    lamp.id = known.device.id;
    lamp.at = {known.device.x_m, known.device.y_m, known.z_m};
    lamp.length_m = known.device.length_m.value_or(0.0);
    for (const plan::UvPoint& point : known.device.uvi_table) {
        lamp.table.push_back({point.distance_m, point.uvi});
    }
    lamp.reference_open_fraction = known.device.reference_open_fraction;
    lamp.above_top = known.above_top;
    const catalog::DeviceTraits* traits = known.traits;
    if (known.device.beam_deg) {
        lamp.beam_deg = exactly(*known.device.beam_deg);
    } else if (traits != nullptr && traits->beam_deg) {
        lamp.beam_deg = traits->beam_deg->range();
    }
    const auto age = given_or_assumed(notes, context.catalog, known.device.age_hours,
                                      pointer_to(housed, known, "age_hours"), "device.age_hours");
    lamp.burnt_h = age.value_or(exactly(0.0));
    if (const auto read_at_h = known.device.uvi_age_hours) { // it can't be younger than when it was read
        lamp.read_at_h = *read_at_h;
        lamp.burnt_h = {std::max(0.0, lamp.burnt_h.low - *read_at_h), std::max(0.0, lamp.burnt_h.likely - *read_at_h),
                        std::max(0.0, lamp.burnt_h.high - *read_at_h)};
    }
    if (const auto behind_m = spread_of(context.catalog, "uv.light_behind_face_m")) {
        lamp.light_behind_m = *behind_m;
    } else if (lamp.table.size() == 1) {
        lamp.table.clear(); // how the light falls from one reading is not known then
    }
    if (traits != nullptr && traits->uv_decay_per_1000_h) {
        lamp.decay_per_1000_h = traits->uv_decay_per_1000_h->range();
    }
    return lamp;
}

light::Top as_top(const Context& context, const Housed& housed, Notes& notes)
{
    const plan::Shell& shell = housed.enclosure.shell;
    light::Top top;
    top.height_m = shell.height_m;
    switch (shell.top.kind) {
    case plan::TopKind::open:
        top.kind = light::TopKind::open;
        break;
    case plan::TopKind::mesh:
        top.kind = light::TopKind::mesh;
        top.open_fraction = given_or_assumed(notes, context.catalog, shell.top.open_fraction,
                                             housed.pointer("/shell/top/open_fraction"), "mesh.open_fraction");
        break;
    case plan::TopKind::glass:
    case plan::TopKind::board:
        top.kind = light::TopKind::pane;
        break;
    }
    for (const plan::Cover& cover : shell.top.covers) {
        top.covers.push_back({cover.x_m, cover.y_m, cover.length_m, cover.width_m});
    }
    return top;
}

namespace {

// Between a device's face and the nearest back of an animal; 0.3 m or the maker's word is asked of hot ones.
// A rock or log may be lower by as much as brings the back far enough down; a hide's roof may not.
Remedy perch_remedy(const Housed& housed, const KnownDevice& known, const light::Nearest& nearest, double needed_m)
{
    const double up_m = known.z_m - nearest.back.z_m;
    const double aside_sq = std::max(0.0, nearest.distance_m * nearest.distance_m - up_m * up_m);
    const double by_m = std::sqrt(std::max(0.0, needed_m * needed_m - aside_sq)) - up_m;
    for (const plan::Fitting& fitting : housed.enclosure.fittings) {
        const bool solid = fitting.kind == plan::FittingKind::rock || fitting.kind == plan::FittingKind::log;
        if (fitting.id == nearest.standing && solid && fitting.height_m.value_or(0.0) > by_m && by_m > 0.0) {
            return remedy("remedy.lower-perch", {{"by", by_m, "m"}}, {{"fitting", fitting.id}});
        }
    }
    return remedy("remedy.move-perch", {}, {{"fitting", nearest.standing}});
}

void judge_gap(const Housed& housed, Notes& notes, const KnownDevice& known, const light::Nearest& nearest,
               double back_m)
{
    const double reach_m = nearest.back.z_m;
    const double gap_m = nearest.distance_m;
    const std::string standing = nearest.standing.empty() ? "bed" : nearest.standing;
    const bool guarded = known.device.guarded.value_or(false);
    const bool hot = known.traits != nullptr && known.traits->burns_at_touch;
    if (!guarded && hot && !known.above_top && gap_m <= back_m) { // what it stretches up to, it touches
        report(notes, "danger.unguarded-lamp", {Verdict::danger, Direction::below}, housed.at(known.device.id),
               because("rule.reach", {{"reach", reach_m, "m"}, {"gap", gap_m, "m"}},
                       {{"lamp", known.device.id}, {"standing_on", standing}},
                       {"Common practice, no source: burns from unguarded lamps", Confidence::practice}))
            .remedy = remedy("remedy.guard-lamp", {}, {{"device", known.device.id}});
        return;
    }
    if (!is_overhead_heat(known.device.kind) || known.traits == nullptr) {
        return;
    }
    // The distance to keep from what burns is the only one that makers state; it serves for backs too.
    const double needed_m = known.device.clearance_m.value_or(known.traits->clearance_m.likely);
    if (gap_m >= needed_m) {
        return;
    }
    // Someone standing on the bed is judged by the temperatures; someone on a perch is nearer than those were taken.
    const bool on_perch = !nearest.standing.empty();
    Finding& finding = report(
        notes, "danger.climbing-reach", {on_perch ? Verdict::danger : Verdict::tight, Direction::below},
        housed.at(known.device.id),
        because("rule.reach",
                {{"reach", reach_m, "m"},
                 {"gap", gap_m, "m"},
                 {"needed", needed_m, "m"},
                 {"short_by", needed_m - gap_m, "m"}},
                {{"lamp", known.device.id}, {"standing_on", standing}},
                known.device.clearance_m ? Source{"The maker's figure, as stated in the plan", Confidence::confirmed}
                                         : known.traits->clearance_m.source));
    if (on_perch) {
        finding.remedy = perch_remedy(housed, known, nearest, needed_m);
    } else {
        const double by_m = needed_m - gap_m;
        finding.remedy = remedy("remedy.raise-lamp", {{"by", by_m, "m"}, {"to", known.z_m + by_m, "m"}},
                                {{"device", known.device.id}});
    }
}

} // namespace

Notes judge_reach(const Context& context, const Housed& housed)
{
    Notes notes;
    const auto bodies = largest_bodies(context, housed, notes);
    if (!bodies) {
        return notes; // without animals nothing is in reach
    }
    const auto places = standing_places(context, housed, notes);
    const light::Top top = as_top(context, housed, notes);
    for (const KnownDevice& known : equipment_of(context, housed, notes)) {
        const bool hangs = known.z_m > 0.0;
        if (!hangs) {
            continue;
        }
        Notes aside; // a UV lamp's age is asked for where its UV is judged
        const light::UvLamp lamp = as_lamp(context, housed, aside, known);
        for (const light::Nearest& nearest : light::nearest_to_lamps({lamp}, top, places, bodies->highest_back_m)) {
            judge_gap(housed, notes, known, nearest, bodies->highest_back_m);
        }
    }
    return notes;
}

} // namespace loam::assess
