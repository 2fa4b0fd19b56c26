#include "core/climate/chi_square.hpp"

#include <cassert>
#include <cmath>
#include <numbers>

namespace loam::climate {

double chance_of_more(double sum_of_squares, std::size_t degrees)
{
    assert(degrees >= 1 && sum_of_squares >= 0.0);
    const double x = 0.5 * sum_of_squares;
    const bool odd = degrees % 2 == 1;
    double a = odd ? 0.5 : 1.0;
    double chance = odd ? std::erfc(std::sqrt(x)) : std::exp(-x);
    double term = odd ? 2.0 * std::sqrt(x / std::numbers::pi) * std::exp(-x) : x * std::exp(-x); // x^a e^-x / G(a+1)
    while (a < 0.5 * static_cast<double>(degrees)) {
        chance += term;
        a += 1.0;
        term *= x / a;
    }
    return chance;
}

} // namespace loam::climate
