#include "core/assess/climate_parts.hpp"
#include "core/assess/fittings.hpp"

namespace loam::assess {

std::optional<NotComputable> fill_contents(const Context& context, const Housed& housed, Notes& notes,
                                           climate::Box& box)
{
    for (std::size_t i = 0; i < housed.enclosure.fittings.size(); ++i) {
        const plan::Fitting& fitting = housed.enclosure.fittings[i];
        const climate::Rect area{fitting.x_m, fitting.y_m, fitting.length_m, fitting.width_m};
        if (fitting.kind == plan::FittingKind::water_bowl) {
            const auto depth = bowl_water_depth(context, housed, i, notes);
            if (!depth) {
                return NotComputable{"assumption-missing", "bowl.water_depth_m"};
            }
            box.bowls.push_back({fitting.id, area, depth->likely});
        } else if (can_be_stood_on(fitting.kind)) {
            const auto height = fitting_height(context, housed, i, notes);
            if (!height) {
                return NotComputable{"assumption-missing", fitting.id};
            }
            box.perches.push_back({fitting.id, area, height->high}); // reach is a matter of safety
            box.blocks.push_back({.id = fitting.id,
                                  .area = area,
                                  .rotation_deg = fitting.rotation_deg.value_or(0.0),
                                  .height_m = height->likely,
                                  .hollow = is_hide(fitting.kind)});
        }
    }
    if (const auto bodies = largest_bodies(context, housed, notes)) {
        box.animal_back_m = bodies->highest_back_m;
        box.animal_length_m = bodies->longest_m;
        box.climbs = bodies->climbs;
    }
    const auto misting = given_or_assumed(notes, context.catalog, housed.enclosure.moisture.misting_l_per_day,
                                          housed.pointer("/moisture/misting_l_per_day"), "moisture.misting_l_per_day");
    if (!misting) {
        return NotComputable{"assumption-missing", "moisture.misting_l_per_day"};
    }
    if (!housed.enclosure.moisture.misting_l_per_day) {
        report(notes, "humidity.misting-not-stated", {Verdict::not_known, Direction::none}, housed.at(),
               because("rule.stated-by-keeper", {}, {}))
            .remedy = state(housed.pointer("/moisture/misting_l_per_day"));
    }
    box.misting_l_per_day = *misting;
    box.mistings_per_day = static_cast<int>(housed.enclosure.moisture.mistings_per_day.value_or(0));
    return std::nullopt;
}

} // namespace loam::assess
