#include "app/drawing/isolines.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace loam::drawing {

namespace {

struct Segment {
    QPointF from;
    QPointF to;
};

struct Corner {
    QPointF at;
    double value;
};

std::optional<QPointF> crossing(const Corner& a, const Corner& b, double level)
{
    if ((a.value < level) == (b.value < level)) {
        return std::nullopt;
    }
    const double part = (level - a.value) / (b.value - a.value);
    return a.at + part * (b.at - a.at);
}

// The one or two segments in a square of four cell centres. In a saddle the mean value says which corners join.
void add_segments(const std::array<Corner, 4>& corners, double level, std::vector<Segment>& segments)
{
    if (std::any_of(corners.begin(), corners.end(), [](const Corner& corner) { return std::isnan(corner.value); })) {
        return;
    }
    std::array<std::optional<QPointF>, 4> cuts;
    std::vector<QPointF> points;
    for (std::size_t side = 0; side < 4; ++side) {
        cuts.at(side) = crossing(corners.at(side), corners.at((side + 1) % 4), level);
        if (cuts.at(side)) {
            points.push_back(*cuts.at(side));
        }
    }
    if (points.size() == 2) {
        segments.push_back({points[0], points[1]});
    } else if (points.size() == 4) {
        double mean = 0.0;
        for (const Corner& corner : corners) {
            mean += corner.value / 4.0;
        }
        const bool joined = (mean < level) == (corners[0].value < level);
        segments.push_back(joined ? Segment{points[0], points[1]} : Segment{points[3], points[0]});
        segments.push_back(joined ? Segment{points[2], points[3]} : Segment{points[1], points[2]});
    }
}

bool meet(const QPointF& a, const QPointF& b)
{
    const QPointF gap = a - b;
    return std::hypot(gap.x(), gap.y()) < 1e-9;
}

// Takes one segment that continues `line` at its end, if there is one.
bool extend(Line& line, std::vector<Segment>& segments)
{
    for (auto it = segments.begin(); it != segments.end(); ++it) {
        if (meet(it->from, line.back()) || meet(it->to, line.back())) {
            line.push_back(meet(it->from, line.back()) ? it->to : it->from);
            segments.erase(it);
            return true;
        }
    }
    return false;
}

std::vector<Line> join(std::vector<Segment> segments)
{
    // A cell centre that has the level itself leaves segments without length, which would end as lines of their own.
    std::erase_if(segments, [](const Segment& segment) { return meet(segment.from, segment.to); });
    std::vector<Line> lines;
    while (!segments.empty()) {
        Line line{segments.back().from, segments.back().to};
        segments.pop_back();
        for (int end = 0; end < 2; ++end) {
            while (extend(line, segments)) {
            }
            std::reverse(line.begin(), line.end());
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

} // namespace

std::vector<Line> isolines(const std::vector<double>& values, const Grid& grid, double level)
{
    std::vector<Segment> segments;
    const auto corner = [&](std::size_t column, std::size_t row) {
        return Corner{
            {(static_cast<double>(column) + 0.5) * grid.step_x, (static_cast<double>(row) + 0.5) * grid.step_y},
            values.at(row * grid.columns + column)};
    };
    for (std::size_t row = 0; row + 1 < grid.rows; ++row) {
        for (std::size_t column = 0; column + 1 < grid.columns; ++column) {
            add_segments(
                {corner(column, row), corner(column + 1, row), corner(column + 1, row + 1), corner(column, row + 1)},
                level, segments);
        }
    }
    return join(std::move(segments));
}

std::vector<double> round_levels(double low, double high, int most)
{
    std::vector<double> levels;
    if (!(high > low) || most < 1) {
        return levels;
    }
    double step = std::pow(10.0, std::floor(std::log10((high - low) / most)));
    for (const double factor : {1.0, 2.0, 5.0, 10.0}) {
        if ((high - low) / (step * factor) <= most) {
            step *= factor;
            break;
        }
    }
    for (double index = std::ceil(low / step); index * step <= high; ++index) {
        levels.push_back(index * step);
    }
    return levels;
}

} // namespace loam::drawing
