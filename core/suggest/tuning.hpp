// One way to heat, brought to its best for one enclosure.
#pragma once

#include <optional>
#include <stop_token>
#include <string_view>
#include <vector>

#include "core/suggest/quick_climate.hpp"
#include "core/suggest/uv_lamp.hpp"
#include "core/suggest/wanted.hpp"

namespace loam::suggest {

// What a family of outfits has in common.
struct Family {
    bool lamp = false;
    bool dimmed = false; // the lamp
    std::optional<plan::DeviceKind> heater;
    double covered_share = 0.0;
};

struct Found {
    Outfit outfit;
    plan::Plan plan;
    double margin_k = 0.0; // see QuickClimate
    double missed_k = 0.0;
    double strain = 0.0;     // nought where every reading is well inside; see QuickClimate
    double mean_day_w = 0.0; // drawn, mean of winter and summer
    double mean_night_w = 0.0;
    double peak_k = 0.0; // see Fineness
};

// Powers without controls, on a winter day.
struct Powers {
    double lamp_w = 0.0;
    double heater_w = 0.0;
    double least_k = 0.0; // slack of the zone that comes nearest to its bound
};

// One reading, straight in both powers.
struct Line {
    double at_none_c = 0.0;
    double per_lamp_w = 0.0;
    double per_heater_w = 0.0;
    double at(double lamp_w, double heater_w) const
    {
        return at_none_c + per_lamp_w * lamp_w + per_heater_w * heater_w;
    }
};
struct Straight {
    Line basking;
    Line warm;
    Line cool;
};

class Tuning {
public:
    Tuning(const plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place, std::stop_token stop)
        : plan_(plan), catalog_(catalog), place_(place), stop_(std::move(stop)), ids_(device_ids(plan)),
          wanted_(wanted_by(plan, catalog, place))
    {
    }

    // nullopt: stopped, or the family's climate can't be computed.
    std::optional<Found> tune(const Family& family);
    // The outfit as it is, looked at in the four rooms. nullopt also where it strains as much as `no_use_from`.
    std::optional<Found> look_at(const Outfit& outfit, double no_use_from = std::numeric_limits<double>::infinity());
    // Steps of one choice at a time (cover, misting, lamp, heater, set-point) for as long as one brings every reading
    // further inside; at most `most_looks` are looked at. On wide cells; then the same on the assessment's own.
    Found refined(Found found, int most_looks);
    Found polished(Found found, int most_looks);

private:
    std::optional<plan::Plan> wearing(const Outfit& outfit) const
    {
        auto plan = dressed(plan_, catalog_, place_, outfit);
        if (plan) {
            hang_uv_lamp(*plan, catalog_, place_);
        }
        return plan;
    }
    std::optional<QuickClimate> of(const plan::Plan& plan, const std::vector<std::string_view>& cases,
                                   double no_use_from = std::numeric_limits<double>::infinity())
    {
        return quick_climate(plan, catalog_, place_, cases, starts_, stop_,
                             {.cells = cells_, .peak_k = peak_k_, .no_use_from = no_use_from});
    }
    std::optional<QuickClimate> in(const Outfit& outfit, const std::vector<std::string_view>& cases)
    {
        const auto plan = wearing(outfit);
        return plan ? of(*plan, cases) : std::nullopt;
    }
    bool size(Outfit& outfit, const Family& family);
    bool set_thermostat(Outfit& outfit, double warm_c);
    Powers best_powers(const Family& family, const Straight& readings) const;
    bool learn_peak(const Outfit& outfit);
    bool warm_by_night(Outfit& outfit);
    bool mist(Outfit& outfit);

    const plan::Plan& plan_;
    const catalog::Catalog& catalog_;
    std::size_t place_;
    std::stop_token stop_;
    DeviceIds ids_;
    Wanted wanted_;
    void step_on(Found& found, int& most_looks, bool& better);

    Starts starts_;
    climate::Resolution cells_ = wide_cells;
    double peak_k_ = 0.0; // by which wide cells read the basking spot too cold: they spread its peak
};

} // namespace loam::suggest
