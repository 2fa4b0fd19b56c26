#include "core/assess/heat_distance.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

namespace loam::assess {

namespace {

constexpr double step_m = 0.01; // heights are told to the centimetre
constexpr double lowest_perch_m = 0.02;
constexpr double highest_over_top_m = 0.5; // a lamp hangs no higher over its box. Common practice, no source
constexpr double under_top_m = 0.02;       // left between a lamp and the top

struct Option {
    Remedy remedy;
    double share = 1.0; // of what there is now
};

// The fewest centimetres of a change that do it. nullopt: not even `most_m` does.
std::optional<double> least_shift_m(const Search& search, double most_m,
                                    const std::function<void(climate::Box&, double)>& shift)
{
    int low = 0; // does not
    int high = static_cast<int>(std::floor(most_m / step_m + 1e-9));
    const auto does = [&](int steps) {
        const auto tried = search.with([&](climate::Box& box) { shift(box, steps * step_m); });
        return tried && search.reading(*tried) <= search.wanted();
    };
    if (high < 1 || !does(high)) {
        return std::nullopt;
    }
    while (high - low > 1) {
        const int middle = (low + high) / 2;
        (does(middle) ? high : low) = middle;
    }
    return high * step_m;
}

template <class Elements> auto* with_id(Elements& all, const std::string& id)
{
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.id == id; });
    return found == all.end() ? nullptr : &*found;
}

std::optional<Option> raised(const Search& search, const climate::Lamp& lamp, double distance_m)
{
    const climate::Box& box = search.miss.solved->box;
    const double most_z_m = lamp.above_top ? box.height_m + highest_over_top_m : box.height_m - under_top_m;
    const auto by_m = least_shift_m(search, most_z_m - lamp.at.z_m, [&](climate::Box& tried, double shift_m) {
        with_id(tried.lamps, lamp.id)->at.z_m += shift_m;
    });
    if (!by_m) {
        return std::nullopt;
    }
    return Option{
        remedy("remedy.raise-lamp", {{"by", *by_m, "m"}, {"to", lamp.at.z_m + *by_m, "m"}}, {{"device", lamp.id}}),
        *by_m / distance_m};
}

std::optional<Option> lowered(const Search& search, const climate::Perch& perch, double distance_m)
{
    const auto& solid = search.miss.solved->solid_perches;
    if (std::find(solid.begin(), solid.end(), perch.id) == solid.end()) {
        return std::nullopt;
    }
    const auto by_m = least_shift_m(search, perch.height_m - lowest_perch_m, [&](climate::Box& tried, double shift_m) {
        with_id(tried.perches, perch.id)->height_m -= shift_m;
        for (climate::Block& block : tried.blocks) { // it casts a shorter shadow
            if (block.id == perch.id) {
                block.height_m = std::max(0.0, block.height_m - shift_m);
            }
        }
    });
    if (!by_m) {
        return std::nullopt;
    }
    return Option{remedy("remedy.lower-perch", {{"by", *by_m, "m"}}, {{"fitting", perch.id}}), *by_m / distance_m};
}

// Of its present watts, or of the level that its dimmer stands at.
double share_taken(const Remedy& less_power, const climate::Box& box)
{
    double from = 1.0;
    double to = 1.0;
    for (const Label& label : less_power.labels) {
        const climate::Lamp* lamp = with_id(box.lamps, label.text);
        from = label.name == "device" && lamp != nullptr ? lamp->control.level : from;
    }
    for (const Input& amount : less_power.amounts) {
        from = amount.name == "from" ? amount.value : from;
        to = amount.name == "to" ? amount.value : to;
    }
    return 1.0 - to / from;
}

} // namespace

std::optional<Remedy> least_for_perch(const Search& search, const std::vector<Remedy>& by_power)
{
    const SolvedCase& solved = *search.miss.solved;
    const climate::Point& hot = solved.result.hottest_at;
    std::optional<Option> least;
    const auto consider = [&](const std::optional<Option>& one) {
        if (one && (!least || one->share < least->share)) {
            least = one;
        }
    };
    for (const Remedy& one : by_power) {
        consider(Option{one, share_taken(one, solved.box)});
    }
    double nearest_m = INFINITY;
    for (const climate::Lamp& lamp : solved.box.lamps) {
        const double distance_m = lamp.at.z_m - hot.z_m;
        const bool heats = std::any_of(solved.heaters.begin(), solved.heaters.end(),
                                       [&](const HeatSource& one) { return one.id == lamp.id; });
        if (heats && distance_m > 0.0) {
            nearest_m = std::min(nearest_m, distance_m);
            consider(raised(search, lamp, distance_m));
        }
    }
    const climate::Perch* perch = with_id(solved.box.perches, search.miss.perch);
    if (perch != nullptr && std::isfinite(nearest_m)) {
        consider(lowered(search, *perch, nearest_m));
    }
    return least ? std::optional(least->remedy) : std::nullopt;
}

} // namespace loam::assess
