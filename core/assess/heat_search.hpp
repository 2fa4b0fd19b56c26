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
};

struct Search {
    climate::Workspace& workspace;
    std::stop_token stop;
    const Miss& miss;

    std::optional<climate::CaseResult> with(const std::function<void(climate::Box&)>& change) const
    {
        climate::Box box = miss.solved->box;
        change(box);
        auto result = climate::solve_steady(box, miss.solved->room, workspace, stop);
        return result && result->converged ? result : std::nullopt;
    }
    double likely(const climate::CaseResult& result) const
    {
        return miss.touch ? result.hottest_surface_c.likely : zone_reading(result, miss.zone, miss.measure).likely;
    }
    double wanted() const
    {
        const double now = likely(miss.solved->result);
        return miss.direction == Direction::below ? now + miss.by_k : now - miss.by_k;
    }
};

// The least power that is sold and does it, at most four times `above_w` (another kind of heating is wanted beyond
// that), and that makes no surface burn. nullopt: none does.
std::optional<double> least_power(const Search& search, double above_w,
                                  const std::function<void(climate::Box&, double)>& set_power);

// The share of the device's present power at which the likely reading comes down to what is wanted, within 1/32.
// nullopt: even without the device it does not.
std::optional<double> share_of_power(const Search& search, const std::string& device);

void scale_power(climate::Box& box, const std::string& device, double factor);

} // namespace loam::assess
