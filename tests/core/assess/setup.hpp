// What the tests of core/assess share: the shipped guidance, the example plans, and ways to look into an assessment.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/assess/assess.hpp"

namespace loam::test {

inline constexpr std::chrono::year_month_day day{std::chrono::year{2025}, std::chrono::month{11}, std::chrono::day{25}};

const catalog::Catalog& shipped_catalog();
std::string example_text(const std::string& name); // "first-setup"
plan::Plan example(const std::string& name);

// A turtle's table whose lamp hangs on a thermostat and whose zones miss their targets: what findings and remedies are
// tried on. The first example was so once; it is better now.
plan::Plan turtle_table();

// Required fields only, one enclosure with one animal, a bed, a bowl, a hide and a lamp: everything else is absent.
plan::Plan minimal_plan();

// Elements of a plan with nothing but what is named here.
struct Spot {
    double x_m = 0.0;
    double y_m = 0.0;
    double length_m = 0.2;
    double width_m = 0.2;
};
plan::Cover cover(std::string id, std::string material, Spot spot);
plan::Fitting fitting(std::string id, plan::FittingKind kind, Spot spot, std::optional<double> height_m = {});
plan::Animal animal(std::string id, std::string species, std::optional<double> length_m = {});

// What is known at once: the first delivery, after which the assessment is stopped.
assess::Assessment instant(const plan::Plan& plan, const catalog::Catalog& catalog = shipped_catalog());
assess::Assessment whole(const plan::Plan& plan, const catalog::Catalog& catalog = shipped_catalog());

std::vector<Finding> with_code(const assess::Assessment& assessment, std::string_view code);
bool has(const assess::Assessment& assessment, std::string_view code, Verdict verdict);
bool has_danger(const assess::Assessment& assessment);
double input(const Finding& finding, std::string_view name); // fails the test where it has none
std::string label(const Finding& finding, std::string_view name);

const assess::HeatCase& heat_case(const assess::EnclosureResult& enclosure, std::string_view id);

} // namespace loam::test
