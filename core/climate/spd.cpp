#include "core/climate/spd.hpp"

#include <algorithm>
#include <cassert>

#include <Eigen/OrderingMethods>
#include <Eigen/Sparse>

namespace loam::climate {

using Sparse = Eigen::SparseMatrix<double>;

struct SpdSolver::Inside {
    Sparse upper;                             // in the order of elimination
    std::vector<std::size_t> place;           // of each unknown in that order
    std::vector<Eigen::Index> link_place;     // where each link stands among the matrix's values
    std::vector<Eigen::Index> diagonal_place; // where each unknown's diagonal stands
    // The order is given, and with the upper half Eigen takes the matrix as it stands.
    Eigen::SimplicialLDLT<Sparse, Eigen::Upper, Eigen::NaturalOrdering<int>> ldlt;
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

} // namespace

std::vector<std::size_t> sparse_order(std::size_t unknowns, const std::vector<Link>& links)
{
    std::vector<Eigen::Triplet<double>> entries;
    for (std::size_t i = 0; i < unknowns; ++i)
        entries.emplace_back(static_cast<int>(i), static_cast<int>(i), 1.0);
    for (const Link& link : links)
        entries.emplace_back(static_cast<int>(std::max(link.a, link.b)), static_cast<int>(std::min(link.a, link.b)),
                             1.0);
    Sparse lower(static_cast<Eigen::Index>(unknowns), static_cast<Eigen::Index>(unknowns));
    lower.setFromTriplets(entries.begin(), entries.end());
    Eigen::AMDOrdering<int>::PermutationType order;
    Eigen::AMDOrdering<int>()(lower.selfadjointView<Eigen::Lower>(), order);
    return {order.indices().begin(), order.indices().end()};
}

void SpdSolver::set_pattern(const std::vector<std::size_t>& order, const std::vector<Link>& links)
{
    Inside& in = *inside_;
    in.place.resize(order.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        in.place[order[i]] = i;
    const auto row = [&](const Link& link) { return static_cast<int>(std::min(in.place[link.a], in.place[link.b])); };
    const auto column = [&](const Link& link) {
        return static_cast<int>(std::max(in.place[link.a], in.place[link.b]));
    };
    std::vector<Eigen::Triplet<double>> entries;
    entries.reserve(order.size() + links.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        entries.emplace_back(static_cast<int>(i), static_cast<int>(i), 1.0);
    for (const Link& link : links)
        entries.emplace_back(row(link), column(link), 0.0);
    const auto unknowns = static_cast<Eigen::Index>(order.size());
    in.upper.resize(unknowns, unknowns);
    in.upper.setFromTriplets(entries.begin(), entries.end());
    in.diagonal_place.clear();
    in.link_place.clear();
    for (const std::size_t place : in.place)
        in.diagonal_place.push_back(
            place_of(in.upper, static_cast<Eigen::Index>(place), static_cast<Eigen::Index>(place)));
    for (const Link& link : links)
        in.link_place.push_back(place_of(in.upper, row(link), column(link)));
    in.ldlt.analyzePattern(in.upper);
}

bool SpdSolver::factor(const std::vector<Link>& links, std::span<const double> diagonal)
{
    Inside& in = *inside_;
    assert(links.size() == in.link_place.size());
    double* values = in.upper.valuePtr();
    std::fill(values, values + in.upper.nonZeros(), 0.0);
    for (std::size_t i = 0; i < diagonal.size(); ++i)
        values[in.diagonal_place[i]] = diagonal[i];
    for (std::size_t l = 0; l < links.size(); ++l) {
        values[in.link_place[l]] -= links[l].w_k;
        values[in.diagonal_place[links[l].a]] += links[l].w_k;
        values[in.diagonal_place[links[l].b]] += links[l].w_k;
    }
    in.ldlt.factorize(in.upper);
    return in.ldlt.info() == Eigen::Success && in.ldlt.vectorD().minCoeff() > 0.0;
}

void SpdSolver::solve(std::span<double> values) const
{
    const std::size_t unknowns = inside_->place.size();
    if (unknowns == 0)
        return;
    const std::size_t sides = values.size() / unknowns;
    Eigen::MatrixXd ordered(static_cast<Eigen::Index>(unknowns), static_cast<Eigen::Index>(sides));
    for (std::size_t side = 0; side < sides; ++side)
        for (std::size_t i = 0; i < unknowns; ++i)
            ordered.data()[side * unknowns + inside_->place[i]] = values[side * unknowns + i];
    ordered = inside_->ldlt.solve(ordered).eval();
    for (std::size_t side = 0; side < sides; ++side)
        for (std::size_t i = 0; i < unknowns; ++i)
            values[side * unknowns + i] = ordered.data()[side * unknowns + inside_->place[i]];
}

} // namespace loam::climate
