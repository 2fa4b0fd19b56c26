#include "core/climate/bordered.hpp"

#include <cmath>
#include <span>

#include <Eigen/Dense>

#include "core/climate/spd.hpp"

namespace loam::climate {

using Eigen::Index;
using Matrix = Eigen::MatrixXd;
using Vector = Eigen::VectorXd;

struct BorderedSolver::Inside {
    std::size_t bricks = 0;
    std::size_t shared = 0;
    SpdSolver spd;
    std::vector<std::size_t> touching; // shared places whose column has entries in the bricks
    std::vector<std::size_t> column;   // of each shared place among them
    Matrix border;                     // bricks x touching: the slopes
    Matrix eliminated;                 // the same after the bricks' inverse
    Slopes slopes;
    Eigen::PartialPivLU<Matrix> schur;

    std::vector<std::size_t> order; // of elimination

    void prepare(const Model& model, std::vector<std::size_t> elimination);
    Vector below(const Vector& bricks_part) const; // C times it
};

void BorderedSolver::Inside::prepare(const Model& model, std::vector<std::size_t> elimination)
{
    bricks = model.layout.bricks;
    shared = model.layout.size() - model.layout.bricks;
    order = std::move(elimination);
    spd.set_pattern(order, model.links);
}

Vector BorderedSolver::Inside::below(const Vector& bricks_part) const
{
    Vector sum = Vector::Zero(static_cast<Index>(shared));
    slopes.add_from_bricks({bricks_part.data(), bricks}, {sum.data(), shared});
    return sum;
}

BorderedSolver::BorderedSolver(const Model& model, const std::vector<std::size_t>& order)
    : inside_(std::make_unique<Inside>())
{
    inside_->prepare(model, order);
}

BorderedSolver::BorderedSolver(const Model& model, const BorderedSolver& like) : inside_(std::make_unique<Inside>())
{
    inside_->prepare(model, like.inside_->order);
}

BorderedSolver::~BorderedSolver() = default;
BorderedSolver::BorderedSolver(BorderedSolver&&) noexcept = default;
BorderedSolver& BorderedSolver::operator=(BorderedSolver&&) noexcept = default;

namespace {

std::span<double> span_of(Matrix& matrix)
{
    return {matrix.data(), static_cast<std::size_t>(matrix.size())};
}

} // namespace

bool BorderedSolver::factor(const Model& model, const Slopes& slopes)
{
    Inside& in = *inside_;
    if (!in.spd.factor(model.links, slopes.diagonal))
        return false;
    constexpr auto none = static_cast<std::size_t>(-1);
    in.touching.clear();
    in.column.assign(in.shared, none);
    for (const Slopes::Entry& entry : slopes.brick_shared)
        if (in.column[entry.column] == none) {
            in.column[entry.column] = in.touching.size();
            in.touching.push_back(entry.column);
        }
    in.border.setZero(static_cast<Index>(in.bricks), static_cast<Index>(in.touching.size()));
    for (const Slopes::Entry& entry : slopes.brick_shared)
        in.border(static_cast<Index>(entry.row), static_cast<Index>(in.column[entry.column])) += entry.value;
    in.eliminated = in.border;
    in.spd.solve(span_of(in.eliminated));
    in.slopes = slopes;
    Matrix schur = Matrix::Zero(static_cast<Index>(in.shared), static_cast<Index>(in.shared));
    for (const Slopes::Entry& entry : slopes.shared_shared)
        schur(static_cast<Index>(entry.row), static_cast<Index>(entry.column)) += entry.value;
    for (std::size_t t = 0; t < in.touching.size(); ++t)
        schur.col(static_cast<Index>(in.touching[t])) -= in.below(in.eliminated.col(static_cast<Index>(t)));
    in.schur.compute(schur);
    return std::isfinite(in.schur.matrixLU().sum()) && in.schur.matrixLU().diagonal().cwiseAbs().minCoeff() > 0.0;
}

std::vector<double> BorderedSolver::solve(const std::vector<double>& right) const
{
    const Inside& in = *inside_;
    const auto bricks = static_cast<Index>(in.bricks);
    const auto shared = static_cast<Index>(in.shared);
    std::vector<double> result = right;
    Eigen::Map<Vector> upper(result.data(), bricks);
    Eigen::Map<Vector> lower(result.data() + bricks, shared);
    in.spd.solve({result.data(), in.bricks});
    lower -= in.below(upper);
    lower = in.schur.solve(lower).eval();
    for (std::size_t t = 0; t < in.touching.size(); ++t)
        upper -= in.eliminated.col(static_cast<Index>(t)) * lower[static_cast<Index>(in.touching[t])];
    return result;
}

std::vector<double> BorderedSolver::solve_transposed(const std::vector<double>& right) const
{
    const Inside& in = *inside_;
    const auto bricks = static_cast<Index>(in.bricks);
    const auto shared = static_cast<Index>(in.shared);
    std::vector<double> result = right;
    Eigen::Map<Vector> upper(result.data(), bricks);
    Eigen::Map<Vector> lower(result.data() + bricks, shared);
    const Vector carried = in.eliminated.transpose() * upper;
    for (std::size_t t = 0; t < in.touching.size(); ++t)
        lower[static_cast<Index>(in.touching[t])] -= carried[static_cast<Index>(t)];
    lower = in.schur.transpose().solve(lower).eval();
    Vector carried_back = Vector::Zero(bricks);
    in.slopes.add_to_bricks({lower.data(), in.shared}, {carried_back.data(), in.bricks});
    upper -= carried_back;
    in.spd.solve({result.data(), in.bricks});
    return result;
}

} // namespace loam::climate
