#include "core/climate/enclosure.hpp"

#include <cmath>

#include <Eigen/Dense>

namespace loam::climate {

namespace {

std::size_t normal_axis(Plane plane)
{
    switch (plane) {
    case Plane::left:
    case Plane::right:
        return 0;
    case Plane::front:
    case Plane::back:
        return 1;
    case Plane::floor:
    case Plane::ceiling:
        break;
    }
    return 2;
}

// Distances of a span from the plane at `zero`, whichever side it lies on.
Span away_from(Span span, double zero)
{
    const double a = std::abs(span.from - zero);
    const double b = std::abs(span.to - zero);
    return a < b ? Span{a, b} : Span{b, a};
}

double view(const Patch& from, const Patch& to)
{
    if (from.plane == to.plane)
        return 0.0;
    const std::size_t a = normal_axis(from.plane);
    const std::size_t b = normal_axis(to.plane);
    if (a == b) {
        const std::size_t u = (a + 1) % 3;
        const std::size_t v = (a + 2) % 3;
        return parallel_view(from.at[u], from.at[v], to.at[u], to.at[v], std::abs(from.at[a].from - to.at[a].from));
    }
    const std::size_t along = 3 - a - b;
    return perpendicular_view(away_from(from.at[b], to.at[b].from), from.at[along],
                              away_from(to.at[a], from.at[a].from), to.at[along]);
}

Span part(double whole, std::size_t index, std::size_t count)
{
    return {whole * static_cast<double>(index) / static_cast<double>(count),
            whole * static_cast<double>(index + 1) / static_cast<double>(count)};
}

} // namespace

double Patch::area_m2() const
{
    double area = 1.0;
    for (std::size_t axis = 0; axis < 3; ++axis)
        area *= axis == normal_axis(plane) ? 1.0 : at[axis].to - at[axis].from;
    return area;
}

std::vector<Patch> box_patches(const Patching& p)
{
    constexpr std::size_t bands = 2;
    std::vector<Patch> patches;
    for (const Plane plane : {Plane::floor, Plane::ceiling})
        for (std::size_t j = 0; j < p.along_y; ++j)
            for (std::size_t i = 0; i < p.along_x; ++i) {
                const double z = plane == Plane::floor ? 0.0 : p.height_m;
                patches.push_back({plane, {part(p.length_m, i, p.along_x), part(p.width_m, j, p.along_y), Span{z, z}}});
            }
    for (const Plane plane : {Plane::front, Plane::back})
        for (std::size_t k = 0; k < bands; ++k)
            for (std::size_t i = 0; i < p.along_x; ++i) {
                const double y = plane == Plane::front ? 0.0 : p.width_m;
                patches.push_back({plane, {part(p.length_m, i, p.along_x), Span{y, y}, part(p.height_m, k, bands)}});
            }
    for (const Plane plane : {Plane::left, Plane::right})
        for (std::size_t k = 0; k < bands; ++k)
            for (std::size_t j = 0; j < p.along_y; ++j) {
                const double x = plane == Plane::left ? 0.0 : p.length_m;
                patches.push_back({plane, {Span{x, x}, part(p.width_m, j, p.along_y), part(p.height_m, k, bands)}});
            }
    return patches;
}

Square view_matrix(const std::vector<Patch>& patches)
{
    const std::size_t n = patches.size();
    Square views{.size = n, .values = std::vector<double>(n * n, 0.0)};
    for (std::size_t row = 0; row < n; ++row)
        for (std::size_t column = row + 1; column < n; ++column) {
            views(row, column) = view(patches[row], patches[column]);
            views(column, row) = views(row, column) * patches[row].area_m2() / patches[column].area_m2();
        }
    return views;
}

Square interreflection(const Square& views, const std::vector<double>& reflectance)
{
    using Matrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;
    const auto n = static_cast<Eigen::Index>(views.size);
    const Eigen::Map<const Matrix> f(views.values.data(), n, n);
    const Eigen::Map<const Eigen::VectorXd> rho(reflectance.data(), n);
    const Matrix system = Matrix::Identity(n, n) - f * rho.asDiagonal();
    Square result{.size = views.size, .values = std::vector<double>(views.values.size())};
    Eigen::Map<Matrix>(result.values.data(), n, n) = system.partialPivLu().solve(f);
    return result;
}

} // namespace loam::climate
