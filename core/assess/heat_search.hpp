// Searches for the least change of a device's power that cures a miss, by solving the climate again.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "core/assess/climate_stage.hpp"

namespace loam::assess {

struct Miss {
    Zone zone = Zone::warm;
    climate::Measure measure = climate::Measure::ground;
    Direction direction = Direction::below;
    double by_k = 0.0; // the likely reading has to move by this much
    const SolvedCase* solved = nullptr;
    bool touch = false; // the hottest touchable surface instead of a zone
    std::string perch;  // of a touch: the fitting that it lies on; empty: the bed
};

struct Search {
    climate::Workspace& workspace;
    std::stop_token stop;
    const Miss& miss;
    const HeatCase* before = nullptr; // the zones as judged

    using Solve = decltype(&climate::solve_steady);
    // Likely values only, but where a surface burns by its upper end; `climate::solve_steady` gives ranges.
    std::optional<climate::CaseResult> with(const std::function<void(climate::Box&)>& change) const
    {
        return with(change, miss.touch ? climate::solve_steady : climate::solve_likely);
    }
    std::optional<climate::CaseResult> with(const std::function<void(climate::Box&)>& change, Solve solve) const
    {
        climate::Box box = miss.solved->box;
        change(box);
        auto result = solve(box, miss.solved->room, workspace, stop, {});
        return result && result->converged ? result : std::nullopt;
    }
    double reading(const climate::CaseResult& result) const
    {
        return miss.touch ? result.hottest_surface_c.high : zone_reading(result, miss.zone, miss.measure).likely;
    }
    double wanted() const
    {
        const double now = reading(miss.solved->result);
        return miss.direction == Direction::below ? now + miss.by_k : now - miss.by_k;
    }
    // Whether a change pushes some zone further out of what its species asks for, by the likely readings. A surface
    // that burns goes before comfort.
    bool spoils(const climate::CaseResult& changed) const;
    // The same where every reading moves alike, as it does with the room.
    bool spoils_when_all_move(double by_k) const;
};

// The least power in which the kind is sold that does it, at most four times `above_w` (another kind of heating is
// wanted beyond that), and that makes no surface burn. nullopt: none does.
std::optional<double> least_power(const Search& search, plan::DeviceKind kind, double above_w,
                                  const std::function<void(climate::Box&, double)>& set_power);

// The share of the device's present power at which the reading comes down to what is wanted, within 1/32.
// nullopt: even without the device it does not.
std::optional<double> share_of_power(const Search& search, const std::string& device);

void scale_power(climate::Box& box, const std::string& device, double factor);

} // namespace loam::assess
