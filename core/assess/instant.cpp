#include "core/assess/animals.hpp"
#include "core/assess/cautions.hpp"
#include "core/assess/reach.hpp"
#include "core/assess/stages.hpp"

namespace loam::assess {

InstantStage assess_instant(const Context& context, const Housed& housed)
{
    InstantStage stage;
    stage.space = assess_space(context, housed);
    stage.substrate = assess_substrate(context, housed);
    stage.mass = assess_mass(context, housed, stage.substrate.results);
    stage.uv = assess_uv(context, housed);
    stage.photoperiod = assess_photoperiod(context, housed);
    append(stage.other, judge_company(context, housed));
    append(stage.other, judge_reach(context, housed));
    append(stage.other, judge_clearances(context, housed));
    append(stage.other, judge_controls(context, housed));
    append(stage.other, enclosure_cautions(context, housed));
    return stage;
}

} // namespace loam::assess
