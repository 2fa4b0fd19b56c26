// The answer that a test goes on with: solved from scratch, and converged.
#pragma once

#include "tests/catch.hpp"

#include "tests/core/climate/boxes.hpp"

namespace loam::climate::test {

inline CaseResult solved(const Box& box, const Case& now = home_day())
{
    Workspace workspace;
    auto result = solve_steady(box, now, workspace);
    REQUIRE(result);
    REQUIRE(result->converged);
    return *std::move(result);
}

} // namespace loam::climate::test
