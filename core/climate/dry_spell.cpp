#include "core/climate/dry_spell.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/drying.hpp"
#include "core/climate/evaporation.hpp"
#include "core/climate/floor_drying.hpp"
#include "core/climate/newton.hpp"
#include "core/climate/prepared.hpp"
#include "core/climate/probe.hpp"
#include "core/climate/psychrometrics.hpp"
#include "core/climate/zones.hpp"

namespace loam::climate {

namespace {

constexpr double seconds_per_day = 86400.0;
// Deeper water does not reach the air within weeks. FAO Irrigation and Drainage Paper 56: 0.10 to 0.15 m (from memory).
constexpr double reached_m = 0.10;

// What the upper part of a column can lose, mm.
double losable_mm(const Box& box, double x_m)
{
    double left_m = reached_m;
    double sum_mm = 0.0;
    for (auto layer = box.bed.rbegin(); layer != box.bed.rend(); ++layer) {
        const double depth_m = std::lerp(layer->depth_left_m, layer->depth_right_m, x_m / box.length_m);
        const double here_m = std::min(left_m, depth_m);
        sum_mm += 1000.0 * here_m * std::max(0.0, layer->water_damp.likely - layer->water_dry.likely);
        left_m -= here_m;
    }
    return sum_mm;
}

// The box in one case, with the bed as dry as it has become.
class Half {
public:
    static std::optional<Half> of(const Box& box, const Case& now, const Cells& cells, Workspace::Level& level)
    {
        Half half{.box = as_in_case(box, now), .scene = {}, .model = {}, .solver = {}, .values = {}, .lamp_dried = {}};
        auto scene = scene_for(half.box, cells, level);
        if (!scene)
            return std::nullopt;
        half.scene = *std::move(scene);
        auto model = make_model(half.box, now, half.scene);
        if (!model)
            return std::nullopt;
        half.model = *std::move(model);
        half.solver.emplace(half.model, order_for(half.model, level));
        half.lamp_dried = half.scene.dryness;
        const std::vector<double>* start = start_of(level, now.id);
        half.values = start != nullptr && fits(half.model, *start) ? *start : room_start(half.model);
        return half;
    }

    bool solve_with(const std::vector<double>& still_damp, const std::stop_token& stop)
    {
        for (std::size_t c = 0; c < still_damp.size(); ++c)
            scene.dryness[c] = 1.0 - (1.0 - lamp_dried[c]) * still_damp[c];
        if (!set_conduction(model, box, scene))
            return false;
        auto solution = solve_from(&values, model, *solver, stop);
        if (!solution || !solution->converged)
            return false;
        values = std::move(solution->values);
        return true;
    }

    double humidity() const
    {
        const Zones zones = find_zones(model, box, scene, values);
        const double here_c = value_of(ground_of(model, zones.cool), values);
        return hygrometer_reading(here_c, values[model.layout.lower_vapour()]);
    }

    // What a column loses, mm a day; below 0 where it takes in more than dries off.
    double loss_mm_d(std::size_t column) const
    {
        const double mist = model.floor.mist_at(column);
        const auto drying = column_drying(model, values, column);
        if (!drying)
            return -mist * seconds_per_day;
        const double of_mist = mist > 0.0 ? mist_flow(mist, drying->bare).flow : 0.0;
        return (drying->damp + of_mist - mist) * seconds_per_day;
    }

    Box box;
    Scene scene;
    Model model;
    std::optional<BorderedSolver> solver;
    std::vector<double> values;
    std::vector<double> lamp_dried;
};

class Spell {
public:
    Spell(Half day, Half night, const DrySpellPlan& plan) : day_(std::move(day)), night_(std::move(night)), plan_(plan)
    {
        const Geometry& g = day_.scene.geometry;
        for (std::size_t c = 0; c < g.columns(); ++c) {
            const double total_mm = losable_mm(day_.box, g.x_m(c));
            stores_.push_back({total_mm, plan.readily_share * total_mm});
        }
        lost_mm_.assign(stores_.size(), 0.0);
        rates_mm_d_.assign(stores_.size(), 0.0);
    }

    double holds_l() const
    {
        double sum = 0.0;
        for (std::size_t c = 0; c < stores_.size(); ++c)
            sum += stores_[c].total_mm * day_.model.floor.exposed_m2[c];
        return sum;
    }

    // False where a balance does not close or `stop` was requested.
    bool run(DrySpell& spell, const std::stop_token& stop)
    {
        double days = 0.0;
        while (true) {
            if (!settle(stop))
                return false;
            spell.points.push_back({days, lost_l(), day_.humidity(), night_.humidity()});
            const double step_d = std::min(next_step_d(), plan_.most_days - days);
            if (step_d <= 0.0)
                return true;
            for (std::size_t c = 0; c < stores_.size(); ++c)
                lost_mm_[c] = lost_after(stores_[c], lost_mm_[c], rates_mm_d_[c], step_d);
            days += step_d;
        }
    }

private:
    bool settle(const std::stop_token& stop)
    {
        std::vector<double> damp(stores_.size());
        for (std::size_t c = 0; c < damp.size(); ++c)
            damp[c] = drying_share(stores_[c], lost_mm_[c]);
        if (!day_.solve_with(damp, stop) || !night_.solve_with(damp, stop))
            return false;
        const double lit = plan_.lit_h / 24.0;
        for (std::size_t c = 0; c < damp.size(); ++c) {
            const double loss_mm_d = std::lerp(night_.loss_mm_d(c), day_.loss_mm_d(c), lit);
            // As of a freshly wetted bed under this air: lost_after() lets it fade by itself.
            rates_mm_d_[c] = loss_mm_d > 0.0 ? loss_mm_d / std::max(damp[c], 0.01) : loss_mm_d;
        }
        return true;
    }

    double lost_l() const
    {
        double sum = 0.0;
        for (std::size_t c = 0; c < lost_mm_.size(); ++c)
            sum += lost_mm_[c] * day_.model.floor.exposed_m2[c];
        return sum;
    }

    // Short enough that no column's share changes by more than an eighth; the whole rest where nothing changes.
    double next_step_d() const
    {
        constexpr double part = 0.125;
        constexpr double least_d = 0.1;
        double step_d = plan_.most_days;
        for (std::size_t c = 0; c < stores_.size(); ++c) {
            const double now_mm_d = rates_mm_d_[c] > 0.0 ? rates_mm_d_[c] * drying_share(stores_[c], lost_mm_[c])
                                                         : (lost_mm_[c] > 0.0 ? -rates_mm_d_[c] : 0.0);
            if (now_mm_d > 1e-3 && stores_[c].total_mm > 0.0)
                step_d = std::min(step_d, part * stores_[c].total_mm / now_mm_d);
        }
        return std::max(step_d, least_d);
    }

    Half day_;
    Half night_;
    DrySpellPlan plan_;
    std::vector<BedStore> stores_; // per column
    std::vector<double> lost_mm_;
    std::vector<double> rates_mm_d_; // of the bed as if freshly wetted
};

} // namespace

std::optional<DrySpell> dry_spell(const Box& box, const DrySpellPlan& plan, Workspace& workspace, std::stop_token stop,
                                  const Resolution& resolution)
{
    const Cells cells = range_cells(resolution);
    auto day = Half::of(box, plan.day, cells, workspace.ranges);
    auto night = Half::of(box, plan.night, cells, workspace.ranges);
    if (!day || !night)
        return std::nullopt;
    Spell running(*std::move(day), *std::move(night), plan);
    DrySpell spell;
    spell.holds_l = running.holds_l();
    if (spell.holds_l <= 0.0)
        return std::nullopt;
    spell.complete = running.run(spell, stop);
    if (!spell.complete && stop.stop_requested())
        return std::nullopt;
    return spell;
}

} // namespace loam::climate
