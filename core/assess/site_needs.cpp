#include <algorithm>

#include "core/assess/equipment.hpp"
#include "core/assess/needs.hpp"
#include "core/assess/proving.hpp"

namespace loam::assess {

namespace {

struct Plugged {
    std::int64_t all = 0;
    std::int64_t timed = 0;
    std::vector<std::string> enclosures;
};

// Devices on one strip; an empty id stands for those that name none. Those of a box that goes take outlets of a strip
// that it shares until then, but nothing is bought for them, and loose ones are plugged in somewhere already.
Plugged plugged_into(const Context& context, const std::string& strip)
{
    Plugged plugged;
    Notes aside;
    for (std::size_t i = 0; i < context.plan.enclosures.size(); ++i) {
        const Housed housed{context.plan.enclosures[i], i};
        const bool goes = is_replaced(context.plan, housed.enclosure.id);
        if (goes && strip.empty()) {
            continue;
        }
        bool any = false;
        for (const KnownDevice& known : equipment_of(context, housed, aside)) {
            if (known.device.strip.value_or("") == strip) {
                any = !goes;
                ++plugged.all;
                plugged.timed += known.timed && !goes ? 1 : 0;
            }
        }
        if (any) {
            plugged.enclosures.push_back(housed.enclosure.id);
        }
    }
    return plugged;
}

void add(std::vector<buying::Need>& needs, buying::Need one, const std::vector<std::string>& enclosures)
{
    one.enclosures = enclosures;
    needs.push_back(std::move(one));
}

void add_stands(const Context& context, std::vector<buying::Need>& needs)
{
    for (const plan::Stand& stand : context.plan.site.stands) {
        double floor_m2 = 0.0;
        std::vector<std::string> carried;
        for (const plan::Enclosure& enclosure : context.plan.enclosures) {
            if (enclosure.stand == stand.id && !is_replaced(context.plan, enclosure.id)) {
                floor_m2 += enclosure.shell.length_m * enclosure.shell.width_m;
                carried.push_back(enclosure.id);
            }
        }
        if (!carried.empty()) {
            add(needs, need("stand", 1.0, "each", "need.stand", {stand.id, ""}, floor_m2), carried);
        }
    }
}

void add_strips(const Context& context, std::vector<buying::Need>& needs)
{
    for (const plan::Strip& strip : context.plan.site.strips) {
        const Plugged plugged = plugged_into(context, strip.id);
        if (plugged.enclosures.empty()) {
            continue;
        }
        const std::int64_t stated = strip.timed_outlets.value_or(0) + strip.always_on_outlets.value_or(0);
        const auto outlets = static_cast<double>(std::max(stated, plugged.all));
        add(needs, need("electrical.strip", 1.0, "each", "need.strip", {strip.id, ""}, outlets), plugged.enclosures);
        if (plugged.timed > 0) {
            add(needs, need("control.timer", 1.0, "each", "need.timer", {strip.id, ""}), plugged.enclosures);
        }
        if (!strip.residual_current_protected.value_or(false)) {
            add(needs, need("electrical.rcd-adapter", 1.0, "each", "need.residual-current", {strip.id, ""}),
                plugged.enclosures);
        }
    }
    const Plugged loose = plugged_into(context, "");
    if (loose.all > 0) { // one strip for all, with an outlet to spare
        const auto outlets = static_cast<double>(loose.all + 1);
        add(needs, need("electrical.strip", 1.0, "each", "need.strip", {"/site/strips", ""}, outlets),
            loose.enclosures);
        add(needs, need("electrical.rcd-adapter", 1.0, "each", "need.residual-current", {"/site/strips", ""}),
            loose.enclosures);
        if (loose.timed > 0) {
            add(needs, need("control.timer", 1.0, "each", "need.timer", {"/site/strips", ""}), loose.enclosures);
        }
    }
}

} // namespace

std::vector<buying::Need> site_needs(const Context& context)
{
    std::vector<buying::Need> needs;
    std::vector<std::string> all;
    std::int64_t animals = 0;
    for (const plan::Enclosure& enclosure : context.plan.enclosures) {
        if (is_replaced(context.plan, enclosure.id)) {
            continue;
        }
        all.push_back(enclosure.id);
        animals += animal_count(enclosure);
    }
    if (all.empty()) {
        return needs;
    }
    add_stands(context, needs);
    add_strips(context, needs);
    add(needs, need("measure.infrared-thermometer", 1.0, "each", "need.infrared", {"/site", ""}), all);
    if (animals > 0) {
        add(needs, need("measure.scale", 1.0, "each", "need.scale", {"/site", ""}), all);
        add(needs, need("hygiene.quarantine-box", 1.0, "each", "need.quarantine", {"/site", ""}), all);
    }
    const auto disinfectant = spread_of(context.catalog, "hygiene.disinfectant_l_per_year");
    const auto gloves = spread_of(context.catalog, "hygiene.gloves_per_year");
    if (disinfectant) {
        add(needs, need("hygiene.disinfectant", disinfectant->likely, "l", "need.disinfectant", {"/site", ""}), all);
    }
    if (gloves) {
        add(needs, need("hygiene.gloves", gloves->likely, "each", "need.gloves", {"/site", ""}), all);
    }
    return needs;
}

} // namespace loam::assess
