#include "core/climate/spd.hpp"

#include <cassert>

#include <Eigen/Sparse>

namespace loam::climate {

using Sparse = Eigen::SparseMatrix<double>;

struct SpdSolver::Inside {
    Sparse lower;
    std::vector<Eigen::Index> link_place;     // where each link stands in the matrix
    std::vector<Eigen::Index> diagonal_place; // where each unknown's diagonal stands
    Eigen::SimplicialLDLT<Sparse, Eigen::Lower> ldlt;
};

SpdSolver::SpdSolver() : inside_(std::make_unique<Inside>()) {}
SpdSolver::~SpdSolver() = default;
SpdSolver::SpdSolver(SpdSolver&&) noexcept = default;
SpdSolver& SpdSolver::operator=(SpdSolver&&) noexcept = default;

namespace {

Eigen::Index place_of(const Sparse& matrix, Eigen::Index row, Eigen::Index column)
{
    const auto* begin = matrix.innerIndexPtr() + matrix.outerIndexPtr()[column];
    const auto* end = matrix.innerIndexPtr() + matrix.outerIndexPtr()[column + 1];
    return std::lower_bound(begin, end, row) - matrix.innerIndexPtr();
}

Eigen::Index index(std::size_t value)
{
    return static_cast<Eigen::Index>(value);
}

} // namespace

void SpdSolver::set_pattern(std::size_t unknowns, const std::vector<Link>& links)
{
    std::vector<Eigen::Triplet<double>> entries;
    entries.reserve(unknowns + links.size());
    for (std::size_t i = 0; i < unknowns; ++i)
        entries.emplace_back(static_cast<int>(i), static_cast<int>(i), 1.0);
    for (const Link& link : links)
        entries.emplace_back(static_cast<int>(std::max(link.a, link.b)), static_cast<int>(std::min(link.a, link.b)),
                             0.0);
    Sparse& lower = inside_->lower;
    lower.resize(index(unknowns), index(unknowns));
    lower.setFromTriplets(entries.begin(), entries.end());
    lower.makeCompressed();
    inside_->diagonal_place.clear();
    inside_->link_place.clear();
    for (std::size_t i = 0; i < unknowns; ++i)
        inside_->diagonal_place.push_back(place_of(lower, index(i), index(i)));
    for (const Link& link : links)
        inside_->link_place.push_back(
            place_of(lower, index(std::max(link.a, link.b)), index(std::min(link.a, link.b))));
    inside_->ldlt.analyzePattern(lower);
}

bool SpdSolver::factor(const std::vector<Link>& links, std::span<const double> diagonal)
{
    assert(links.size() == inside_->link_place.size());
    double* values = inside_->lower.valuePtr();
    std::fill(values, values + inside_->lower.nonZeros(), 0.0);
    for (std::size_t i = 0; i < diagonal.size(); ++i)
        values[inside_->diagonal_place[i]] = diagonal[i];
    for (std::size_t l = 0; l < links.size(); ++l) {
        values[inside_->link_place[l]] -= links[l].w_k;
        values[inside_->diagonal_place[links[l].a]] += links[l].w_k;
        values[inside_->diagonal_place[links[l].b]] += links[l].w_k;
    }
    inside_->ldlt.factorize(inside_->lower);
    return inside_->ldlt.info() == Eigen::Success && inside_->ldlt.vectorD().minCoeff() > 0.0;
}

void SpdSolver::solve(std::span<double> values) const
{
    const Eigen::Index unknowns = inside_->lower.rows();
    const Eigen::Index sides = unknowns > 0 ? index(values.size()) / unknowns : 0;
    Eigen::Map<Eigen::MatrixXd> map(values.data(), unknowns, sides);
    map = inside_->ldlt.solve(map).eval();
}

} // namespace loam::climate
