// The plan file: text in, Plan out, and back. Pure functions; who opens files is app/.
#pragma once

#include <string>
#include <string_view>
#include <variant>

#include "core/json/problem.hpp"
#include "core/plan/plan.hpp"

namespace loam::plan {

inline constexpr std::string_view format_name = "loamstead-plan";
inline constexpr std::size_t largest_file_bytes = 8u * 1024u * 1024u;

struct Loaded {
    Plan plan;
    std::int64_t version_read = current_version; // lower where the text was migrated
};

// Every problem at once, or the plan: codes of core/json/problem_codes.hpp and core/plan/problem_codes.hpp. Never
// throws on bad input.
std::variant<Loaded, json::Problems> read(std::string_view text);

// What read(write(plan)) would refuse; empty for a plan that can be saved and opened again. An edit can lead here, for
// example where a shorter box leaves a cover wholly outside it.
json::Problems problems_of(const Plan& plan);

// Byte-stable: write(read(write(p))) == write(p).
std::string write(const Plan& plan);
json::Node node_of(const Plan& plan); // what is written, to stand inside something else

// The JSON Schema (draft 2020-12) of the current version; the committed copy is compared with this in a test.
std::string schema();

// An id that no element of the plan uses yet, made of `stem` and a number ("d1", "d2", …).
std::string fresh_id(const Plan& plan, std::string_view stem);

} // namespace loam::plan
