#include <algorithm>

#include "core/space/demand.hpp"

namespace loam::space {

namespace {

constexpr double rounding = 1e-9; // m or m2

// The two sides asked for, 0 where the rule leaves one open.
struct AskedSides {
    double longer_m = 0.0;
    double shorter_m = 0.0;
};

AskedSides asked_sides(const Demand& demand)
{
    const double length_m = demand.length_m.value_or(0.0);
    const double width_m = demand.width_m.value_or(0.0);
    return {std::max(length_m, width_m), std::min(length_m, width_m)};
}

double least_short_side_m(const Demand& demand)
{
    return std::max(asked_sides(demand).shorter_m, demand.every_side_m.value_or(0.0));
}

double lost_m2(const Offer& offer)
{
    return std::max(0.0, offer.length_m * offer.width_m - offer.area_m2);
}

// The least length beside a width that is wide enough.
double length_beside(double width_m, double lost_to_fittings_m2, const Demand& demand)
{
    const AskedSides asked = asked_sides(demand);
    const double by_sides_m = width_m + rounding >= asked.longer_m ? asked.shorter_m : asked.longer_m;
    const double by_area_m = (demand.area_m2 + lost_to_fittings_m2) / width_m;
    return std::max({by_sides_m, by_area_m, demand.every_side_m.value_or(0.0)});
}

} // namespace

std::vector<Shortfall> shortfalls(const Offer& offer, const Demand& demand)
{
    const AskedSides asked = asked_sides(demand);
    const double longer_m = std::max(offer.length_m, offer.width_m);
    const double shorter_m = std::min(offer.length_m, offer.width_m);
    std::vector<Shortfall> result;
    const auto compare = [&](Lack what, double has, double needs) {
        if (has + rounding < needs) {
            result.push_back({what, has, needs});
        }
    };
    compare(Lack::area, offer.area_m2, demand.area_m2);
    compare(Lack::long_side, longer_m, asked.longer_m);
    compare(Lack::short_side, shorter_m, asked.shorter_m);
    compare(Lack::height, offer.height_m, demand.height_m.value_or(0.0));
    compare(Lack::body_side, shorter_m, demand.every_side_m.value_or(0.0));
    return result;
}

std::optional<double> length_needed_m(const Offer& offer, const Demand& demand)
{
    if (!(offer.width_m > 0.0) || offer.width_m + rounding < least_short_side_m(demand)) {
        return std::nullopt;
    }
    return length_beside(offer.width_m, lost_m2(offer), demand);
}

Sides smallest_box(const Offer& offer, const Demand& demand)
{
    Sides box = {.length_m = offer.length_m,
                 .width_m = std::max(offer.width_m, least_short_side_m(demand)),
                 .height_m = std::max(offer.height_m, demand.height_m.value_or(0.0))};
    if (box.width_m > 0.0) {
        box.length_m = std::max(offer.length_m, length_beside(box.width_m, lost_m2(offer), demand));
    }
    return box;
}

} // namespace loam::space
