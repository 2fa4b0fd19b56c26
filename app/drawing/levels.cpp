#include "app/drawing/levels.hpp"

#include "app/drawing/isolines.hpp"

namespace loam::drawing {

QString whole_degrees(double c, const words::Formatter& formatter)
{
    const words::DisplayUnit unit = words::display_unit(words::Quantity::temperature, formatter.system());
    return formatter.number(c * unit.factor + unit.offset, 0) + QLatin1Char(' ') + unit.symbol;
}

std::vector<double> levels_c(const Span& span, const words::Formatter& formatter)
{
    constexpr int most_lines = 6;
    const words::DisplayUnit unit = words::display_unit(words::Quantity::temperature, formatter.system());
    const auto shown = [&unit](double c) { return c * unit.factor + unit.offset; };
    std::vector<double> levels;
    for (const double level : round_levels(shown(span.low), shown(span.high), most_lines)) {
        levels.push_back((level - unit.offset) / unit.factor);
    }
    return levels;
}

} // namespace loam::drawing
