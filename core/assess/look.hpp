// One case of one enclosure at a glance, at a small part of what an assessment costs: what a drawing shows while
// something in it is being dragged.
#pragma once

#include <optional>
#include <stop_token>
#include <string>

#include "core/assess/assess.hpp"

namespace loam::assess {

struct LookAt {
    std::string enclosure; // id
    std::string case_id;   // "winter-day", …
};

// The likely field of the plan as it is now. Two things are taken over from the last assessment of the workspace, since
// they hardly move with a step of a drag: how wide the zones' ranges are, and to what level a dimmer is turned that the
// plan leaves open; likewise what readings told of the inputs. The next assessment works them out anew.
// nullopt where that assessment is of this very plan, where there is none yet, or where nothing can be solved.
std::optional<HeatCase> look(const plan::Plan& plan, const catalog::Catalog& catalog, const LookAt& at,
                             Workspace& workspace, std::stop_token stop = {});

} // namespace loam::assess
