// How a published rule turns body sizes into floor area. A value: rules are data, this is their meaning.
#pragma once

#include <optional>
#include <variant>
#include <vector>

namespace loam::space {

// Each animal from number `from` to number `to` (absent: without end) adds this share of the base area.
struct ShareStep {
    int from = 2;
    std::optional<int> to;
    double share = 0.0;
    friend bool operator==(const ShareStep&, const ShareStep&) = default;
};

// Length and width as multiples of the largest animal's body measure.
struct SizeMultiple {
    double length_factor = 0.0;
    double width_factor = 0.0;
    std::optional<double> height_factor;
    std::optional<double> height_min_m;
    int covers = 1; // animals that the base area is meant for
    std::vector<ShareStep> further;
    friend bool operator==(const SizeMultiple&, const SizeMultiple&) = default;
};

// One class of a rule by body size; absent `up_to_m`: all larger ones.
struct SizeClass {
    std::optional<double> up_to_m;
    double area_m2 = 0.0;
    double each_further_m2 = 0.0;
    std::optional<double> length_m; // where the rule fixes sides as well
    std::optional<double> width_m;
    std::optional<double> height_m;
    friend bool operator==(const SizeClass&, const SizeClass&) = default;
};

struct SizeClasses {
    int covers = 1;
    std::vector<SizeClass> classes; // ascending
    std::vector<ShareStep> further; // instead of each_further_m2, where the rule adds by share
    friend bool operator==(const SizeClasses&, const SizeClasses&) = default;
};

using AreaFormula = std::variant<SizeMultiple, SizeClasses>;

// What of a body a rule multiplies.
enum class BodyMeasure { carapace, snout_vent, total };

} // namespace loam::space
