// UV at the place where the animals bask: never from watts, never outside a lamp's table.
#pragma once

#include "core/assess/context.hpp"

namespace loam::assess {

struct UvStage {
    UvResult result;
    Notes notes;
    friend bool operator==(const UvStage&, const UvStage&) = default;
};

UvStage assess_uv(const Context& context, const Housed& housed);

} // namespace loam::assess
