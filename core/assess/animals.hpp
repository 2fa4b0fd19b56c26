// Who lives together: mixed species, rival males, company for a solitary species, and the word that one is enough.
#pragma once

#include "core/assess/context.hpp"

namespace loam::assess {

Notes judge_company(const Context& context, const Housed& housed);

} // namespace loam::assess
