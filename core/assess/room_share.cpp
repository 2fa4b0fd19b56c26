#include "core/assess/room_share.hpp"

#include "core/assess/equipment.hpp"

namespace loam::assess {

namespace {

Range drawn_w(const KnownDevice& known)
{
    const Range full = *known.power_w;
    const plan::Control& control = known.device.control;
    if (control.kind == plan::ControlKind::dimmer && control.level) {
        return {full.low * *control.level, full.likely * *control.level, full.high * *control.level};
    }
    return control.kind == plan::ControlKind::none ? full : Range{0.0, 0.5 * full.likely, full.high};
}

} // namespace

std::optional<Range> rise_by_boxes(const Context& context, bool lamps_on)
{
    const std::optional<double>& loss_w_k = context.plan.site.room.loss_w_k;
    if (!loss_w_k) {
        return std::nullopt;
    }
    Range sum;
    Notes aside; // what is assumed of equipment is written down where the boxes are made
    for (std::size_t i = 0; i < context.plan.enclosures.size(); ++i) {
        for (const KnownDevice& known : equipment_of(context, {context.plan.enclosures[i], i}, aside)) {
            if (known.power_w && (lamps_on || !known.timed)) {
                const Range one = drawn_w(known);
                sum = {sum.low + one.low, sum.likely + one.likely, sum.high + one.high};
            }
        }
    }
    return Range{sum.low / *loss_w_k, sum.likely / *loss_w_k, sum.high / *loss_w_k};
}

} // namespace loam::assess
