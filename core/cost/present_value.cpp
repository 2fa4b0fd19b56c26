#include "core/cost/present_value.hpp"

#include <cmath>
#include <numeric>

namespace loam::cost {

std::optional<double> present_value(double rate, const std::vector<double>& payments)
{
    if (!(rate > -1.0)) {
        return std::nullopt;
    }
    // Horner's scheme from the last payment back: one division a year, no powers.
    const double value = std::accumulate(payments.rbegin(), payments.rend(), 0.0,
                                         [&](double later, double payment) { return later / (1.0 + rate) + payment; });
    return std::isfinite(value) ? std::optional<double>(value) : std::nullopt;
}

std::optional<double> annuity_factor(double rate, std::int64_t periods)
{
    if (!(rate > -1.0) || periods < 1) {
        return std::nullopt;
    }
    const auto n = static_cast<double>(periods);
    // expm1 and log1p keep the digits that 1 - (1 + r)^-n would lose at small rates.
    const double factor = rate == 0.0 ? n : -std::expm1(-n * std::log1p(rate)) / rate;
    return std::isfinite(factor) ? std::optional<double>(factor) : std::nullopt;
}

std::optional<double> level_payment(double present, double rate, std::int64_t periods)
{
    const auto factor = annuity_factor(rate, periods);
    return factor ? std::optional<double>(present / *factor) : std::nullopt;
}

namespace {

// In minor units; nullopt where the course or the rate is out of range.
std::optional<double> present_minor(const std::vector<Year>& course, double rate)
{
    if (course.empty() || !(rate >= 0.0 && rate <= 1.0)) {
        return std::nullopt;
    }
    std::vector<double> payments;
    for (const Year& year : course) {
        if (year.spent.typical.overflowed()) {
            return std::nullopt;
        }
        payments.push_back(static_cast<double>(year.spent.typical.minor_units()));
    }
    return present_value(rate, payments);
}

// From minor units, rounded once.
std::optional<Money> as_money(double minor, const Currency& currency)
{
    const auto whole_units = Money::rounded(minor, Currency{currency.code, 0});
    return whole_units ? std::optional<Money>(Money(whole_units->minor_units(), currency)) : std::nullopt;
}

} // namespace

std::optional<Money> net_present_cost(const std::vector<Year>& course, double rate)
{
    const auto minor = present_minor(course, rate);
    return minor ? as_money(*minor, course.front().spent.typical.currency()) : std::nullopt;
}

std::optional<Money> equivalent_annual_cost(const std::vector<Year>& course, double rate)
{
    const auto minor = present_minor(course, rate);
    if (!minor || course.size() < 2) {
        return std::nullopt;
    }
    const auto level = level_payment(*minor, rate, static_cast<std::int64_t>(course.size()) - 1);
    return level ? as_money(*level, course.front().spent.typical.currency()) : std::nullopt;
}

} // namespace loam::cost
