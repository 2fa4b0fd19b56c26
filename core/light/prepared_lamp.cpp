#include "core/light/prepared_lamp.hpp"

#include <cmath>
#include <numbers>

#include "core/light/visible.hpp"

namespace loam::light {

namespace {

constexpr double degree = std::numbers::pi / 180.0;
constexpr double straight_below_deg = 10.0;

std::optional<Range> exponent_of(const std::optional<Range>& beam_deg)
{
    if (!beam_deg || !(beam_deg->low > 0.0) || !(beam_deg->high < 180.0)) {
        return std::nullopt;
    }
    const auto exponent = [](double deg) { return -std::numbers::ln2 / std::log(std::cos(deg / 2.0 * degree)); };
    return Range{exponent(beam_deg->low), exponent(beam_deg->likely), exponent(beam_deg->high)};
}

std::optional<Range> left_of(const UvLamp& lamp)
{
    if (lamp.decay_per_1000_h) {
        return ageing(lamp.burnt_h, *lamp.decay_per_1000_h);
    }
    return lamp.burnt_h.high <= 0.0 ? std::optional(exactly(1.0)) : std::nullopt;
}

} // namespace

PreparedLamp::PreparedLamp(const UvLamp& lamp, const Top& top)
    : lamp_(lamp), top_(top), readings_(lamp),
      passed_(top_transmission(lamp.above_top ? top : Top{}, lamp.reference_open_fraction)), left_(left_of(lamp)),
      beam_exponent_(exponent_of(lamp.beam_deg))
{
    if (lamp.above_top && top.kind == TopKind::mesh) {
        woven_ = top.open_fraction.value_or(unknown_mesh).likely;
    }
    fixed_.take(lamp.reading_factor);
    fixed_.take(passed_);
    fixed_.take(left_.value_or(exactly(1.0)));
}

std::optional<PreparedLamp::Aim> PreparedLamp::aim_at(const Point& point) const
{
    const double height_m = lamp_.at.z_m - point.z_m;
    if (!(height_m > 0.0)) {
        return std::nullopt;
    }
    const double along_m = point.x_m - lamp_.at.x_m;
    const double across_m = point.y_m - lamp_.at.y_m;
    const bool tube = lamp_.length_m > 0.0;
    const double aside_squared = across_m * across_m + (tube ? 0.0 : along_m * along_m);
    Aim aim;
    aim.distance_m = std::sqrt(aside_squared + height_m * height_m);
    aim.cosine = height_m / aim.distance_m;
    if (!lamp_.above_top || top_.covers.empty()) {
        const Stretch whole = {-lamp_.length_m / 2.0, lamp_.length_m / 2.0};
        aim.seen_share = tube ? line_share(lamp_.length_m, {&whole, 1}, along_m, aim.distance_m) : 1.0;
    } else {
        const std::vector<Stretch> seen = seen_of(lamp_, top_, point);
        aim.seen_share =
            tube ? line_share(lamp_.length_m, seen, along_m, aim.distance_m) : static_cast<double>(!seen.empty());
    }
    aim.seen_share *= woven_ ? mesh_at_slant(*woven_, aim.cosine) : 1.0;
    return aim;
}

// nullopt: the beam is not known and the point is not straight below, or it is no beam.
std::optional<Range> PreparedLamp::falloff(double cosine) const
{
    if (!lamp_.beam_deg) {
        return cosine >= std::cos(straight_below_deg * degree) ? std::optional(exactly(1.0)) : std::nullopt;
    }
    if (!beam_exponent_) {
        return std::nullopt;
    }
    const double log_cosine = std::log(cosine);
    return Range{std::exp(beam_exponent_->low * log_cosine), std::exp(beam_exponent_->likely * log_cosine),
                 std::exp(beam_exponent_->high * log_cosine)};
}

std::optional<Range> PreparedLamp::combined(const Range& read, double seen_share, const Range& in_beam) const
{
    if (!left_) {
        return std::nullopt;
    }
    ProductOfIndependent product = fixed_;
    product.take(scaled(read, seen_share));
    product.take(in_beam);
    return product.range();
}

std::optional<Range> PreparedLamp::uvi(const Point& point) const
{
    const std::optional<Aim> aim = aim_at(point);
    if (!aim) {
        return std::nullopt;
    }
    if (passed_.high == 0.0 || aim->seen_share == 0.0) {
        return exactly(0.0);
    }
    const std::optional<Range> read = readings_.below(aim->distance_m);
    const std::optional<Range> in_beam = falloff(aim->cosine);
    return read && in_beam ? combined(*read, aim->seen_share, *in_beam) : std::nullopt;
}

std::optional<Range> PreparedLamp::uvi_below(double distance_m) const
{
    const std::optional<Range> read = readings_.below(distance_m);
    return read ? combined(*read, 1.0, exactly(1.0)) : std::nullopt;
}

std::optional<double> PreparedLamp::uvi_at_most(const Point& point) const
{
    const std::optional<Aim> aim = aim_at(point);
    if (!aim) {
        return std::nullopt;
    }
    if (passed_.high == 0.0 || aim->seen_share == 0.0) {
        return 0.0;
    }
    const std::optional<double> read = readings_.below_at_most(aim->distance_m);
    if (!read) {
        return std::nullopt;
    }
    const double in_beam = falloff(aim->cosine).value_or(exactly(1.0)).high;
    const double left = left_.value_or(exactly(1.0)).high;
    return *read * aim->seen_share * in_beam * passed_.high * left * lamp_.reading_factor.high;
}

std::vector<PreparedLamp> prepared(const std::vector<UvLamp>& lamps, const Top& top)
{
    std::vector<PreparedLamp> ready;
    ready.reserve(lamps.size());
    for (const UvLamp& lamp : lamps) {
        ready.emplace_back(lamp, top);
    }
    return ready;
}

std::optional<Range> uvi_at(const std::vector<PreparedLamp>& lamps, const Point& point)
{
    SumOfIndependent sum;
    for (const PreparedLamp& lamp : lamps) {
        const std::optional<Range> part = lamp.uvi(point);
        if (!part) {
            return std::nullopt;
        }
        sum.take(*part);
    }
    return sum.range();
}

std::optional<double> uvi_at_most(const std::vector<PreparedLamp>& lamps, const Point& point)
{
    double sum = 0.0;
    for (const PreparedLamp& lamp : lamps) {
        const std::optional<double> part = lamp.uvi_at_most(point);
        if (!part) {
            return std::nullopt;
        }
        sum += *part;
    }
    return sum;
}

} // namespace loam::light
