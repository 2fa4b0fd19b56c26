// The assessment for programs: `loamstead-cli assess --json`. The same assessment gives the same bytes.
#pragma once

#include <string>

#include "core/assess/assessment.hpp"
#include "core/catalog/catalog.hpp"
#include "core/json/node.hpp"
#include "core/plan/plan.hpp"

namespace loam::report {

json::Node assessment_node(const assess::Assessment& assessment, const plan::Plan& plan,
                           const catalog::Catalog& catalog);
std::string assessment_json(const assess::Assessment& assessment, const plan::Plan& plan,
                            const catalog::Catalog& catalog);

} // namespace loam::report
