#include "core/assess/heat_search.hpp"

#include <algorithm>

#include "core/assess/sold_powers.hpp"
#include "core/independent.hpp"

namespace loam::assess {

namespace {

// No suggestion may make a surface that burns within ten minutes. Source: ISO 13732-1 (from memory).
constexpr double never_above_c = 48.0;

// How far a reading lies outside a target.
double outside_k(double reading_c, const Target& target)
{
    return std::max({0.0, target.min.value_or(reading_c) - reading_c, reading_c - target.max.value_or(reading_c)});
}

// Less is within what the likely solution is true to.
constexpr double noticed_k = 0.05;

} // namespace

bool Search::spoils(const climate::CaseResult& changed) const
{
    if (before == nullptr || miss.touch) {
        return false;
    }
    return std::any_of(before->zones.begin(), before->zones.end(), [&](const ZoneResult& zone) {
        const double now_c = zone_reading(changed, zone.zone, zone.measure).likely;
        return outside_k(now_c, zone.target_c) > outside_k(zone.temperature_c.likely, zone.target_c) + noticed_k;
    });
}

bool Search::spoils_when_all_move(double by_k) const
{
    if (before == nullptr) {
        return false;
    }
    return std::any_of(before->zones.begin(), before->zones.end(), [&](const ZoneResult& zone) {
        const double was_c = zone.temperature_c.likely;
        return outside_k(was_c + by_k, zone.target_c) > outside_k(was_c, zone.target_c) + noticed_k;
    });
}

void scale_power(climate::Box& box, const std::string& device, double factor)
{
    for (climate::Lamp& lamp : box.lamps) {
        lamp.power_w = lamp.id == device ? scaled(lamp.power_w, factor) : lamp.power_w;
    }
    for (climate::Mat& mat : box.mats) {
        mat.power_w = mat.id == device ? scaled(mat.power_w, factor) : mat.power_w;
    }
}

// Readings grow with power, so the list is halved; each try is solved anew.
std::optional<double> least_power(const Search& search, plan::DeviceKind kind, double above_w,
                                  const std::function<void(climate::Box&, double)>& set_power)
{
    const double most_w = 4.0 * std::max(above_w, 75.0);
    const auto sold_w = powers_sold(kind);
    auto low = std::upper_bound(sold_w.begin(), sold_w.end(), above_w);
    auto high = std::upper_bound(low, sold_w.end(), most_w); // one past the strongest
    bool enough = false;
    while (low != high) {
        const auto middle = low + (high - low) / 2;
        const auto tried = search.with([&](climate::Box& box) { set_power(box, *middle); });
        if (!tried) {
            return std::nullopt;
        }
        if (search.reading(*tried) >= search.wanted()) {
            high = middle;
            enough = true;
        } else {
            low = middle + 1;
        }
    }
    if (!enough) {
        return std::nullopt;
    }
    const auto found = search.with([&](climate::Box& box) { set_power(box, *low); }, climate::solve_steady);
    if (!found || found->hottest_surface_c.high > never_above_c || search.spoils(*found)) {
        return std::nullopt;
    }
    return *low;
}

std::optional<double> share_of_power(const Search& search, const std::string& device)
{
    const auto reading_at = [&](double share) {
        const auto tried = search.with([&](climate::Box& box) { scale_power(box, device, share); });
        return tried ? std::optional(search.reading(*tried)) : std::nullopt;
    };
    const auto dark = reading_at(0.0);
    if (!dark || *dark > search.wanted()) {
        return std::nullopt; // even without it
    }
    double low = 0.0;
    double high = 1.0;
    while (high - low > 1.0 / 32.0) {
        const double middle = (low + high) / 2.0;
        const auto tried = reading_at(middle);
        if (!tried) {
            return std::nullopt;
        }
        (*tried <= search.wanted() ? low : high) = middle;
    }
    return low;
}

} // namespace loam::assess
