#include "core/assess/assess.hpp"

#include "core/assess/compose.hpp"

namespace loam::assess {

namespace {

// The climate of every enclosure, from the workspace where nothing it depends on has changed. False only where `stop`
// was requested.
bool solve_climates(const Context& context, Workspace::Store& store, std::stop_token stop, std::vector<Part>& parts)
{
    for (Part& part : parts) {
        Workspace::Store::Kept& kept = store.of(part.housed.enclosure.id);
        if (!keep_climate(context, part.housed, kept, stop)) {
            return false;
        }
        part.climate = &kept.climate;
    }
    return true;
}

// What runs over hours, from the solved cases. False only where `stop` was requested.
bool follow_courses(const Context& context, Workspace::Store& store, std::stop_token stop, std::vector<Part>& parts)
{
    for (Part& part : parts) {
        Workspace::Store::Kept& kept = store.of(part.housed.enclosure.id);
        CourseKey key = course_key(context, part.housed);
        if (kept.course_key != key) {
            auto courses = assess_courses(context, part.housed, kept.climate, kept.starts, stop);
            if (!courses) {
                return false;
            }
            kept.courses = std::move(*courses);
            kept.course_key = std::move(key);
        }
        part.courses = &kept.courses;
    }
    return true;
}

// Searching for remedies takes longer than all that it needs; the judgements are delivered first.
bool search_remedies(Workspace::Store& store, std::stop_token stop, const std::vector<Part>& parts)
{
    for (const Part& part : parts) {
        Workspace::Store::Kept& kept = store.of(part.housed.enclosure.id);
        if (!kept.has_remedies) {
            ClimateStage stage = kept.climate; // a search that is stopped leaves no half of itself
            if (!add_climate_remedies(stage, kept.starts, stop)) {
                return false;
            }
            kept.climate = std::move(stage);
            kept.has_remedies = true;
        }
    }
    return true;
}

bool all_kept(const Context& context, Workspace::Store& store, const std::vector<Part>& parts)
{
    for (const Part& part : parts) {
        if (store.of(part.housed.enclosure.id).course_key != course_key(context, part.housed)) {
            return false;
        }
    }
    return true;
}

} // namespace

std::optional<Assessment> assess(const plan::Plan& plan, const catalog::Catalog& catalog,
                                 std::chrono::year_month_day today, Workspace& workspace, std::stop_token stop,
                                 const OnStage& on_stage, Until until)
{
    const Context context{plan, catalog, today};
    Workspace::Store& store = workspace.store();
    store.use(catalog);
    store.forget_others(plan);
    store.kept.reserve(plan.enclosures.size()); // the parts point into it
    std::vector<Part> parts;
    for (std::size_t i = 0; i < plan.enclosures.size(); ++i) {
        const Housed housed{plan.enclosures[i], i};
        Workspace::Store::Kept& kept = store.of(housed.enclosure.id);
        InstantKey key = instant_key(context, housed);
        if (kept.instant_key != key) {
            kept.instant = assess_instant(context, housed);
            kept.instant_key = std::move(key);
        }
        parts.push_back({housed, &kept.instant, nullptr, nullptr});
        if (stop.stop_requested()) {
            return std::nullopt;
        }
    }
    const bool solving = !all_kept(context, store, parts);
    const auto in_part = [&] {
        Assessment part = compose(context, parts);
        part.complete = false; // more is still to come
        return part;
    };
    const auto deliver_in_part = [&] {
        if (on_stage && solving) {
            const Assessment part = in_part();
            if (!stop.stop_requested()) {
                on_stage(part);
            }
        }
    };
    deliver_in_part();
    if (until == Until::at_once) {
        return in_part();
    }
    if (!solve_climates(context, store, stop, parts)) {
        return std::nullopt;
    }
    deliver_in_part();
    if (until == Until::climate) {
        return in_part();
    }
    if (!follow_courses(context, store, stop, parts)) {
        return std::nullopt;
    }
    deliver_in_part();
    if (until == Until::courses) {
        return in_part();
    }
    if (!search_remedies(store, stop, parts)) {
        return std::nullopt;
    }
    Assessment assessment = compose(context, parts);
    if (stop.stop_requested()) {
        return std::nullopt;
    }
    if (on_stage) {
        on_stage(assessment);
    }
    return assessment;
}

} // namespace loam::assess
