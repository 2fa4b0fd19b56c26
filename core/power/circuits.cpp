#include "core/power/circuits.hpp"

#include <algorithm>

#include "core/independent.hpp"
#include "core/power/feeds.hpp"

namespace loam::power {

namespace {

// Loads that hang on one point of the wiring.
struct Hanging {
    std::vector<Range> all_w;
    std::vector<Range> weighed_w; // continuous ones 1.25 times

    void add(const Range& load_w, bool continuous)
    {
        all_w.push_back(load_w);
        weighed_w.push_back(scaled(load_w, continuous ? 1.0 / continuous_share : 1.0));
    }
};

std::optional<int> missing(int used, const std::optional<int>& there)
{
    return there ? std::optional(std::max(0, used - *there)) : std::nullopt;
}

// Rated watts at a strip by the lowest rating between it and the wall.
double rated_w(const Feed& feed, const std::vector<Strip>& strips, const Circuit& circuit)
{
    double rating_a = circuit.rating_a;
    for (const std::size_t strip : feed.strips) {
        rating_a = std::min(rating_a, strips[strip].rating_a.value_or(rating_a));
    }
    return rating_a * circuit.voltage_v;
}

// All sums along the feeds.
struct Sums {
    std::vector<Feed> feeds;
    std::vector<Hanging> strips;
    std::vector<Hanging> circuits;
    std::vector<int> timed;
    std::vector<int> always_on;
    std::vector<std::string> unplugged;
};

void plug_in(const Device& device, const std::vector<Strip>& strips, Sums& sums)
{
    const auto strip = device.strip ? index_of(strips, *device.strip) : std::nullopt;
    if (!strip) {
        sums.unplugged.push_back(device.id);
        return;
    }
    ++(device.timed ? sums.timed : sums.always_on)[*strip];
    const bool continuous = device.hours_per_day >= continuous_from_h;
    for (const std::size_t on_the_way : sums.feeds[*strip].strips) {
        sums.strips[on_the_way].add(device.connected_w, continuous);
    }
    if (sums.feeds[*strip].circuit) {
        sums.circuits[*sums.feeds[*strip].circuit].add(device.connected_w, continuous);
    }
}

Sums sums_of(const std::vector<Device>& devices, const std::vector<Strip>& strips, const std::vector<Circuit>& circuits)
{
    Sums sums;
    sums.strips.resize(strips.size());
    sums.circuits.resize(circuits.size());
    sums.timed.resize(strips.size());
    sums.always_on.resize(strips.size());
    for (std::size_t i = 0; i < strips.size(); ++i) {
        sums.feeds.push_back(feed_of(i, strips, circuits));
        const auto parent = strips[i].fed_from ? index_of(strips, *strips[i].fed_from) : std::nullopt;
        if (parent) {
            ++sums.always_on[*parent]; // the plug of this strip
        }
    }
    for (const Device& device : devices) {
        plug_in(device, strips, sums);
    }
    for (std::size_t i = 0; i < circuits.size(); ++i) {
        if (circuits[i].other_load_w) {
            sums.circuits[i].add(*circuits[i].other_load_w, true);
        }
    }
    return sums;
}

StripLoad strip_load(std::size_t index, const Sums& sums, const std::vector<Strip>& strips,
                     const std::vector<Circuit>& circuits)
{
    const Strip& strip = strips[index];
    const Feed& feed = sums.feeds[index];
    StripLoad load;
    load.id = strip.id;
    load.load_w = sum_of_independent(sums.strips[index].all_w);
    load.timed_used = sums.timed[index];
    load.always_on_used = sums.always_on[index];
    load.timed_missing = missing(load.timed_used, strip.timed_outlets);
    load.always_on_missing = missing(load.always_on_used, strip.always_on_outlets);
    load.daisy_chained = strip.fed_from.has_value();
    load.feed_is_broken = feed.broken;
    if (feed.circuit) {
        const double rated = rated_w(feed, strips, circuits[*feed.circuit]);
        load.continuous_limit_w = continuous_share * rated;
        load.load_fraction = scaled(sum_of_independent(sums.strips[index].weighed_w), 1.0 / rated);
    }
    return load;
}

CircuitLoad circuit_load(const Circuit& circuit, const Hanging& hanging)
{
    CircuitLoad load;
    load.id = circuit.id;
    load.load_w = sum_of_independent(hanging.all_w);
    load.other_load_known = circuit.other_load_w.has_value();
    load.continuous_limit_w = continuous_limit_w(circuit.voltage_v, circuit.rating_a);
    load.load_fraction = scaled(sum_of_independent(hanging.weighed_w), 1.0 / (circuit.voltage_v * circuit.rating_a));
    load.basis = limit_basis(circuit.voltage_v);
    return load;
}

} // namespace

LimitBasis limit_basis(double voltage_v)
{
    return voltage_v >= 100.0 && voltage_v <= 127.0 ? LimitBasis::nec_continuous : LimitBasis::prudence;
}

double continuous_limit_w(double voltage_v, double rating_a)
{
    return continuous_share * voltage_v * rating_a;
}

Loads loads(const std::vector<Device>& devices, const std::vector<Strip>& strips, const std::vector<Circuit>& circuits)
{
    const Sums sums = sums_of(devices, strips, circuits);
    Loads result;
    for (std::size_t i = 0; i < strips.size(); ++i) {
        result.strips.push_back(strip_load(i, sums, strips, circuits));
    }
    for (std::size_t i = 0; i < circuits.size(); ++i) {
        result.circuits.push_back(circuit_load(circuits[i], sums.circuits[i]));
    }
    result.unplugged = sums.unplugged;
    return result;
}

} // namespace loam::power
