// How an outfit does in the four rooms, at a fraction of an assessment's cost: likely values on wide cells.
#pragma once

#include <limits>
#include <map>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/assess/climate_stage.hpp"
#include "core/suggest/outfit.hpp"

namespace loam::suggest {

// Wide enough for a solution in a millisecond or two; a hot spot's peak is spread over them.
inline constexpr climate::Resolution wide_cells{.cell_m = 0.05, .layer_m = 0.03, .most_columns = 300};

// How far a reading lies inside its target, in kelvin; negative: outside. One share of humidity counts as
// `humidity_k` kelvin, so that both can be weighed in one sum: a keeper can hold either about as well.
inline constexpr double humidity_k = 20.0;

struct Inside {
    double below_k = 0.0; // how far the reading is over the lower bound; infinite without one
    double above_k = 0.0; // and under the upper one
    double least() const { return below_k < above_k ? below_k : above_k; }
};
// `scale`: kelvin a unit of the reading.
Inside inside(const Range& reading, const Target& target, double scale = 1.0);

struct Slack : Inside {
    std::string case_id;
    std::optional<assess::Zone> zone; // absent: humidity
};

struct QuickClimate {
    std::vector<Slack> slacks;
    std::vector<climate::CaseResult> results; // of the cases that were solved, in their order
    double margin_k() const;                  // the least slack
    double missed_k() const;                  // by how much targets are missed, summed
    // What each reading lacks to lie a good half kelvin inside, squared and summed, and a multiple of what is missed:
    // nought is well inside everywhere.
    double strain() const;
    const climate::CaseResult* result(std::string_view id) const;
    // Of the power that the device draws in the case; nullopt: it is not there.
    std::optional<double> drawn_w(std::string_view id, const std::string& device) const;
};

// How finely, and what is known of the error that this brings.
struct Fineness {
    climate::Resolution cells = wide_cells;
    double peak_k = 0.0; // by which these cells read the basking spot too cold; added to it
    // The strain at which an outfit is of no interest: the rooms that are left need not be solved, since each adds to
    // it.
    double no_use_from = std::numeric_limits<double>::infinity();
};

// What one solution tells the next: where the solver starts, and how far dimmers were turned, by the case.
struct Turned {
    double level = 1.0;
    double c_per_level = 0.0; // of the basking spot; nought: not known
};
struct Starts {
    climate::Workspace workspace;
    std::map<std::string, Turned> turned;
};

// The cases named, of the enclosure `place` of the plan; dimmers that the keeper turns stand as the basking spot asks.
// nullopt: stopped, not computable, of no use, or a balance did not close.
std::optional<QuickClimate> quick_climate(const plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place,
                                          const std::vector<std::string_view>& cases, Starts& starts,
                                          std::stop_token stop, const Fineness& fineness = {});

} // namespace loam::suggest
