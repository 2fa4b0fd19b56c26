// The guidance data that the program ships, as the tests read it.
#pragma once

#include <string>
#include <vector>

#include "core/catalog/catalog.hpp"

namespace shipped {

// Every JSON file below resources/<folder>, by name.
std::vector<loam::catalog::SourceText> files(const std::string& folder);
std::string text_of(const std::string& path_below_resources);
// All of it in one catalog; fails the running test where a file has a problem.
const loam::catalog::Catalog& catalog();

// For messages: every problem on a line of its own.
std::string listed(const std::vector<loam::catalog::FileProblem>& problems);
std::string listed(const loam::json::Problems& problems);

} // namespace shipped
