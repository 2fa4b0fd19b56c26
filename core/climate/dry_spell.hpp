// How a bed dries out over days while nobody pours water into it, and what that does to the air.
#pragma once

#include <optional>
#include <stop_token>
#include <vector>

#include "core/climate/steady.hpp"

namespace loam::climate {

struct DrySpellPlan {
    Case day;
    Case night;
    double lit_h = 12.0;
    double most_days = 30.0;
    // Of the water that the upper 10 cm can lose, the share that goes as fast as when freshly wetted. FAO Irrigation
    // and Drainage Paper 56, Table 19 (from memory): a third to a half in most soils; that coir does alike is an
    // assumption.
    double readily_share = 0.45;
};

struct DrySpellPoint {
    double days = 0.0;
    double lost_l = 0.0;       // from the bed
    double day_humidity = 0.0; // 0..1, at ground level on the cool side
    double night_humidity = 0.0;
    friend bool operator==(const DrySpellPoint&, const DrySpellPoint&) = default;
};

struct DrySpell {
    bool complete = false; // every balance closed
    double holds_l = 0.0;  // what the upper 10 cm of the bed can lose
    std::vector<DrySpellPoint> points;
    friend bool operator==(const DrySpell&, const DrySpell&) = default;
};

// Method: a bed loses its water over days and a box settles within hours, so the steady day and the steady night are
// solved again after each step of the loss, column by column (drying.hpp), likely values. Misting goes on as the box
// has it: what of it does not evaporate wets the bed again. Bowls are kept filled.
// nullopt where `stop` was requested, the box is not physical, or there is no bed that holds water.
std::optional<DrySpell> dry_spell(const Box& box, const DrySpellPlan& plan, Workspace& workspace,
                                  std::stop_token stop = {}, const Resolution& resolution = {});

} // namespace loam::climate
