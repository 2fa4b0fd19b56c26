#include "core/assess/uv_heights.hpp"

#include <algorithm>
#include <cmath>

#include "core/assess/notes.hpp"

namespace loam::assess {

namespace {

constexpr double step_m = 0.01;
constexpr double over_top_m = 1.0; // nobody hangs a lamp higher over the box
constexpr double clear_of_back_m = 0.05;

// Where a back comes nearest to the lamp: on what it can climb.
std::vector<light::Point> reachable(const UvScene& scene, const light::UvLamp& lamp)
{
    std::vector<light::Point> backs;
    for (const light::Nearest& nearest : light::nearest_to_lamps({lamp}, scene.top, scene.places, scene.back_m)) {
        backs.push_back(nearest.back);
    }
    return backs;
}

std::vector<light::PreparedLamp> with_lamp(const UvScene& scene, std::size_t index, const light::UvLamp& lamp)
{
    std::vector<light::UvLamp> lamps = scene.lamps;
    lamps[index] = lamp;
    return light::prepared(lamps, scene.top);
}

// not_known: the readings don't reach.
Verdict verdict_at(const UvScene& scene, std::size_t index, double z_m, const Target& target)
{
    const light::UvLamp lamp = at_height(scene, index, z_m);
    const auto lamps = with_lamp(scene, index, lamp);
    const auto basking = strongest_of(lamps, scene.basking);
    if (!basking) {
        return Verdict::not_known;
    }
    Judgement judgement = judge(basking->uvi, target);
    if (target.max) {
        const Target at_most{std::nullopt, target.max, {}};
        for (const light::Point& back : reachable(scene, lamp)) {
            const auto uvi = light::uvi_at(lamps, back);
            judgement = worse(judgement, uvi ? judge(*uvi, at_most) : Judgement{Verdict::not_known, Direction::none});
        }
    }
    return judgement.verdict;
}

struct Stretch {
    double from_m = 0.0;
    double to_m = 0.0;
    double away_m(double z_m) const { return std::max({0.0, from_m - z_m, z_m - to_m}); }
};

// The stretch of heights with this verdict that lies nearest to z; heights are a step apart.
std::optional<Stretch> nearest_stretch(const std::vector<std::pair<double, Verdict>>& tried, Verdict wanted, double z_m)
{
    std::optional<Stretch> best;
    std::optional<Stretch> current;
    const auto close = [&] {
        if (current && (!best || current->away_m(z_m) < best->away_m(z_m))) {
            best = current;
        }
        current.reset();
    };
    for (const auto& [height_m, verdict] : tried) {
        if (verdict != wanted) {
            close();
        } else if (current) {
            current->to_m = height_m;
        } else {
            current = Stretch{height_m, height_m};
        }
    }
    close();
    return best;
}

double highest_back_m(const UvScene& scene)
{
    double top_m = 0.0;
    for (const light::Standing& place : scene.places) {
        top_m = std::max(top_m, place.height_m);
    }
    return top_m + scene.back_m;
}

// Whole centimetres in between.
std::vector<double> heights_between(double from_m, double to_m)
{
    std::vector<double> heights;
    for (auto cm = static_cast<int>(std::ceil(from_m / step_m - 1e-6)); cm * step_m <= to_m + 1e-9; ++cm) {
        heights.push_back(cm * step_m);
    }
    return heights;
}

std::optional<UvHeights> heights_among(const UvScene& scene, std::size_t index, const Target& target,
                                       const std::vector<double>& heights)
{
    std::vector<std::pair<double, Verdict>> tried;
    tried.reserve(heights.size());
    for (const double z_m : heights) {
        tried.emplace_back(z_m, verdict_at(scene, index, z_m, target));
    }
    const light::UvLamp& lamp = scene.lamps[index];
    for (const Verdict wanted : {Verdict::fits, Verdict::tight}) {
        if (const auto stretch = nearest_stretch(tried, wanted, lamp.at.z_m)) {
            return UvHeights{lamp.id, stretch->from_m, stretch->to_m, wanted == Verdict::fits};
        }
    }
    return std::nullopt;
}

} // namespace

light::UvLamp at_height(const UvScene& scene, std::size_t lamp, double z_m)
{
    light::UvLamp moved = scene.lamps[lamp];
    moved.at.z_m = z_m;
    moved.above_top = z_m >= scene.top.height_m;
    return moved;
}

std::optional<UvHeights> heights_for(const UvScene& scene, const plan::Shell& shell, std::size_t lamp,
                                     const Target& target)
{
    const double lowest_m = highest_back_m(scene) + clear_of_back_m;
    const double highest_m = shell.height_m + over_top_m;
    if (scene.top.kind == light::TopKind::open && scene.top.covers.empty()) {
        return heights_among(scene, lamp, target, heights_between(lowest_m, highest_m));
    }
    const auto inside = heights_between(lowest_m, shell.height_m - step_m);
    const auto above = heights_between(shell.height_m, highest_m);
    const bool is_above = scene.lamps[lamp].above_top;
    const auto here = heights_among(scene, lamp, target, is_above ? above : inside);
    return here ? here : heights_among(scene, lamp, target, is_above ? inside : above);
}

std::optional<double> height_under_limit(const UvScene& scene, const plan::Shell& shell, std::size_t lamp,
                                         double limit_uvi)
{
    for (const double z_m : heights_between(scene.lamps[lamp].at.z_m, shell.height_m + over_top_m)) {
        const light::UvLamp moved = at_height(scene, lamp, z_m);
        const auto lamps = with_lamp(scene, lamp, moved);
        const auto backs = reachable(scene, moved);
        const bool under = std::all_of(backs.begin(), backs.end(), [&](const light::Point& back) {
            const auto uvi = light::uvi_at(lamps, back);
            return uvi && uvi->high <= limit_uvi;
        });
        if (under) {
            return z_m;
        }
    }
    return std::nullopt;
}

namespace {

constexpr double longest_h = 50000.0;

std::optional<Range> after_hours(const UvScene& scene, const light::Point& place, double hours, bool fresh)
{
    std::vector<light::UvLamp> lamps = scene.lamps;
    for (light::UvLamp& lamp : lamps) {
        const Range so_far = fresh ? exactly(-lamp.read_at_h) : lamp.burnt_h;
        lamp.burnt_h = {so_far.low + hours, so_far.likely + hours, so_far.high + hours};
    }
    return light::uvi_at(lamps, scene.top, place);
}

std::optional<double> hours_until(const UvScene& scene, const light::Point& place, double least_uvi, bool fresh,
                                  double Range::*end)
{
    const auto holds = [&](double hours) {
        const auto uvi = after_hours(scene, place, hours, fresh);
        return uvi && (*uvi).*end >= least_uvi;
    };
    if (!holds(0.0)) {
        return 0.0;
    }
    if (holds(longest_h)) {
        return std::nullopt;
    }
    double held_h = 0.0;
    double lost_h = longest_h;
    while (lost_h - held_h > 1.0) {
        const double middle_h = (held_h + lost_h) / 2.0;
        (holds(middle_h) ? held_h : lost_h) = middle_h;
    }
    return held_h;
}

} // namespace

UvHours hours_above(const UvScene& scene, const light::Point& place, double least_uvi, bool fresh)
{
    if (!after_hours(scene, place, 0.0, fresh) || !after_hours(scene, place, 1.0, fresh)) {
        return {}; // not known now, or how it fades
    }
    return {hours_until(scene, place, least_uvi, fresh, &Range::low),
            hours_until(scene, place, least_uvi, fresh, &Range::likely),
            hours_until(scene, place, least_uvi, fresh, &Range::high)};
}

} // namespace loam::assess
