#include "core/assess/what_if.hpp"

#include <algorithm>
#include <utility>
#include <variant>

#include "core/assess/cover_places.hpp"
#include "core/assess/reach.hpp"
#include "core/assess/stages.hpp"
#include "core/independent.hpp"
#include "core/plan/file.hpp"

namespace loam::assess {

namespace {

std::optional<ClimateBox> box_of(const plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place)
{
    Notes unused; // the assessment tells of them
    const Context context{plan, catalog, {}};
    auto set_up = climate_box(context, Housed{plan.enclosures[place], place}, unused);
    if (auto* box = std::get_if<ClimateBox>(&set_up)) {
        return std::move(*box);
    }
    return std::nullopt;
}

const std::string& cover_material(const plan::Enclosure& enclosure)
{
    static const std::string pane = "glass";
    const std::vector<plan::Cover>& covers = enclosure.shell.top.covers;
    return covers.empty() ? pane : covers.front().material;
}

// The box with each lamp as long as what a cover must leave free about it, and without those that it need not heed.
climate::Box with_room_for_lamps(const Context& context, const Housed& housed, climate::Box box)
{
    const catalog::Material* material = context.catalog.find_material(cover_material(housed.enclosure));
    const bool combustible = material == nullptr || material->combustible; // taken as the worse
    Notes unused;
    const std::vector<KnownDevice> devices = equipment_of(context, housed, unused);
    std::vector<climate::Lamp> heeded;
    for (climate::Lamp& lamp : box.lamps) {
        const auto known = std::find_if(devices.begin(), devices.end(),
                                        [&](const KnownDevice& each) { return each.device.id == lamp.id; });
        if (known != devices.end() && cover_keeps_clear(*known, combustible)) {
            lamp.length_m += 2.0 * clearance_of(*known).value_or(Clearance{}).needed_m;
            heeded.push_back(lamp);
        }
    }
    box.lamps = std::move(heeded);
    return box;
}

void cover(plan::Plan& plan, std::size_t place, const climate::Box& to_cover, double share)
{
    plan::Enclosure& enclosure = plan.enclosures[place];
    plan::Cover like;
    like.material = cover_material(enclosure);
    std::vector<plan::Cover>& covers = enclosure.shell.top.covers;
    const std::vector<plan::Cover> before = std::exchange(covers, {});
    for (const climate::Rect& area : cover_places(to_cover, share, 0.0)) {
        plan::Cover next = covers.size() < before.size() ? before[covers.size()] : like; // as far as there are, its own
        next.material = like.material;
        next.id = next.id.empty() ? plan::fresh_id(plan, "v") : next.id;
        next.x_m = area.x_m;
        next.y_m = area.y_m;
        next.length_m = area.length_m;
        next.width_m = area.width_m;
        covers.push_back(next);
    }
}

TriedCase told(const std::string& id, const climate::CaseResult& result)
{
    return {.id = id,
            .relative_humidity = result.ground_humidity,
            .warm_c = result.warm.ground_c,
            .cool_c = result.cool.ground_c,
            .condensation = result.condensation};
}

Range humidity_moved(const Range& before, double likely)
{
    const Range range = moved_to(before, likely);
    return {std::max(0.0, range.low), range.likely, std::min(1.0, range.high)};
}

// nullopt: stopped, or no balance was found.
std::optional<TriedCase> solve_anew(const SolvedCase& before, const climate::Box& tried, climate::Workspace& starts,
                                    const std::stop_token& stop)
{
    climate::Box box = before.box; // as calibrated and as its dimmers are turned
    box.covers = tried.covers;
    box.misting_l_per_day = tried.misting_l_per_day;
    const auto result = climate::solve_likely(box, before.room, starts, stop);
    if (!result || !result->converged) {
        return std::nullopt;
    }
    TriedCase then = told(before.room.id, *result);
    then.relative_humidity = humidity_moved(before.result.ground_humidity, result->ground_humidity.likely);
    then.warm_c = moved_to(before.result.warm.ground_c, result->warm.ground_c.likely);
    then.cool_c = moved_to(before.result.cool.ground_c, result->cool.ground_c.likely);
    return then;
}

} // namespace

std::optional<TrialRoom> trial_room(const plan::Plan& plan, const catalog::Catalog& catalog,
                                    const std::string& enclosure)
{
    const auto place = place_of(plan, enclosure);
    const auto set_up = place ? box_of(plan, catalog, *place) : std::nullopt;
    if (!set_up) {
        return std::nullopt;
    }
    const Context context{plan, catalog, {}};
    const climate::Box& box = set_up->box;
    const climate::Box to_cover = with_room_for_lamps(context, {plan.enclosures[*place], *place}, box);
    return TrialRoom{.covered_share = covered_share(box),
                     .most_covered_share = coverable_share(to_cover, 0.0),
                     .mesh = box.top == climate::TopKind::mesh,
                     .misting_l_per_day = plan.enclosures[*place].moisture.misting_l_per_day};
}

std::optional<plan::Plan> with_trial(const plan::Plan& plan, const catalog::Catalog& catalog,
                                     const std::string& enclosure, const Trial& trial)
{
    const auto place = place_of(plan, enclosure);
    const auto set_up = place ? box_of(plan, catalog, *place) : std::nullopt;
    if (!set_up) {
        return std::nullopt;
    }
    plan::Plan changed = plan;
    if (trial.covered_share) {
        const Context context{plan, catalog, {}};
        cover(changed, *place, with_room_for_lamps(context, {plan.enclosures[*place], *place}, set_up->box),
              *trial.covered_share);
    }
    if (trial.misting_l_per_day) {
        changed.enclosures[*place].moisture.misting_l_per_day = *trial.misting_l_per_day;
    }
    return changed;
}

std::optional<Tried> try_out(const plan::Plan& plan, const catalog::Catalog& catalog, const std::string& enclosure,
                             const Trial& trial, Workspace& workspace, std::stop_token stop)
{
    const auto place = place_of(plan, enclosure);
    const auto changed = with_trial(plan, catalog, enclosure, trial);
    const auto set_up = changed ? box_of(*changed, catalog, *place) : std::nullopt;
    if (!set_up) {
        return std::nullopt;
    }
    const Context context{plan, catalog, {}};
    workspace.store().use(catalog);
    workspace.store().forget_others(plan);
    Workspace::Store::Kept& kept = workspace.store().of(enclosure);
    if (!keep_climate(context, Housed{plan.enclosures[*place], *place}, kept, stop)) {
        return std::nullopt;
    }
    Tried tried;
    for (const SolvedCase& solved : kept.climate.solved) {
        const bool shown = solved.room.id == "winter-day" || solved.room.id == "summer-day";
        if (!shown || !solved.result.converged) {
            continue;
        }
        const auto then = solve_anew(solved, set_up->box, kept.starts, stop);
        if (!then) {
            return std::nullopt;
        }
        tried.now.push_back(told(solved.room.id, solved.result));
        tried.then.push_back(*then);
    }
    return tried.now.empty() ? std::nullopt : std::optional(tried);
}

} // namespace loam::assess
