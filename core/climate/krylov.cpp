#include "core/climate/krylov.hpp"

#include <algorithm>
#include <cmath>
#include <span>

#include <Eigen/Dense>

namespace loam::climate {

using Eigen::Index;
using Matrix = Eigen::MatrixXd;
using Vector = Eigen::VectorXd;
using Given = Eigen::Map<const Vector>;
using Kept = Eigen::Map<Vector>;

struct KrylovSolver::Inside {
    Index bricks = 0;
    Index shared = 0;
    const Stencil* stencil = nullptr;
    const Slopes* slopes = nullptr;
    std::shared_ptr<const Conditioner> conditioner;
    std::vector<Index> touching; // shared places that touch bricks
    // How they do, as shares of the conditioner's answers, patches x touching; those that reach deeper have their own.
    Matrix by_patch;
    std::vector<std::pair<Index, Vector>> exact; // place among touching, answer of the bricks
    Eigen::PartialPivLU<Matrix> schur;
    mutable int iterations = 0;

    void gather(const Model& model);
    void factor();
    Vector below(const double* bricks_part) const;
    void multiply(const Given& of, Kept& result) const;
    void condition(const Given& right, Kept& result, std::vector<double>& scratch) const;
};

namespace {

constexpr auto none = static_cast<Index>(-1);

} // namespace

// How each shared place touches the bricks.
void KrylovSolver::Inside::gather(const Model& model)
{
    const std::size_t nz = model.nz;
    const auto patches = static_cast<Index>(conditioner->floor_patches);
    std::vector<double> columns_of(conditioner->floor_patches, 0.0);
    for (const std::size_t patch : model.floor_patch)
        columns_of[patch] += 1.0;
    std::vector<Index> place(static_cast<std::size_t>(shared), none);
    std::vector<bool> deep(static_cast<std::size_t>(shared), false);
    for (const Slopes::Entry& entry : slopes->brick_shared) {
        if (place[entry.column] == none) {
            place[entry.column] = static_cast<Index>(touching.size());
            touching.push_back(static_cast<Index>(entry.column));
        }
        deep[entry.column] = deep[entry.column] || entry.row % nz != nz - 1;
    }
    by_patch.setZero(patches, static_cast<Index>(touching.size()));
    for (const Index column : touching)
        if (deep[static_cast<std::size_t>(column)])
            exact.emplace_back(place[static_cast<std::size_t>(column)], Vector::Zero(bricks));
    for (const Slopes::Entry& entry : slopes->brick_shared) {
        const Index at = place[entry.column];
        if (!deep[entry.column]) {
            const std::size_t patch = model.floor_patch[entry.row / nz];
            by_patch(static_cast<Index>(patch), at) += entry.value / columns_of[patch];
            continue;
        }
        for (auto& [touched, answer] : exact)
            if (touched == at)
                answer[static_cast<Index>(entry.row)] += entry.value;
    }
    for (auto& [touched, answer] : exact)
        conditioner->solver.solve({answer.data(), static_cast<std::size_t>(bricks)});
}

void KrylovSolver::Inside::factor()
{
    const auto patches = static_cast<Index>(conditioner->floor_patches);
    const Eigen::Map<const Matrix> floor(conditioner->answers.data(), bricks, patches);
    Matrix of_patches(shared, patches);
    for (Index p = 0; p < patches; ++p)
        of_patches.col(p) = below(floor.col(p).data());
    Matrix complement = Matrix::Zero(shared, shared);
    for (const Slopes::Entry& entry : slopes->shared_shared)
        complement(static_cast<Index>(entry.row), static_cast<Index>(entry.column)) += entry.value;
    const Matrix eliminated = of_patches * by_patch;
    for (std::size_t t = 0; t < touching.size(); ++t)
        complement.col(touching[t]) -= eliminated.col(static_cast<Index>(t));
    for (const auto& [touched, answer] : exact)
        complement.col(touching[static_cast<std::size_t>(touched)]) -= below(answer.data());
    schur.compute(complement);
}

Vector KrylovSolver::Inside::below(const double* bricks_part) const
{
    Vector sum = Vector::Zero(shared);
    slopes->add_from_bricks({bricks_part, static_cast<std::size_t>(bricks)},
                            {sum.data(), static_cast<std::size_t>(shared)});
    return sum;
}

void KrylovSolver::Inside::multiply(const Given& of, Kept& result) const
{
    const Eigen::Map<const Vector> diagonal(slopes->diagonal.data(), bricks);
    result.head(bricks) = diagonal.cwiseProduct(of.head(bricks));
    stencil->add_flows({of.data(), static_cast<std::size_t>(bricks)},
                       {result.data(), static_cast<std::size_t>(bricks)});
    for (const Slopes::Entry& entry : slopes->brick_shared)
        result[static_cast<Index>(entry.row)] += entry.value * of[bricks + static_cast<Index>(entry.column)];
    result.tail(shared) = below(of.data());
    for (const Slopes::Entry& entry : slopes->shared_shared)
        result[bricks + static_cast<Index>(entry.row)] += entry.value * of[bricks + static_cast<Index>(entry.column)];
}

void KrylovSolver::Inside::condition(const Given& right, Kept& result, std::vector<double>& scratch) const
{
    result = right;
    conditioner->solver.solve({result.data(), static_cast<std::size_t>(bricks)}, scratch);
    Vector rest = right.tail(shared) - below(result.data());
    rest = schur.solve(rest).eval();
    result.tail(shared) = rest;
    Vector touched(static_cast<Index>(touching.size()));
    for (std::size_t t = 0; t < touching.size(); ++t)
        touched[static_cast<Index>(t)] = rest[touching[t]];
    const Eigen::Map<const Matrix> floor(conditioner->answers.data(), bricks, by_patch.rows());
    result.head(bricks).noalias() -= floor * (by_patch * touched).eval();
    for (const auto& [place, answer] : exact)
        result.head(bricks) -= answer * touched[place];
}

KrylovSolver::KrylovSolver(const Model& model, const Slopes& slopes, std::shared_ptr<const Conditioner> conditioner)
    : inside_(std::make_unique<Inside>())
{
    Inside& in = *inside_;
    in.bricks = static_cast<Index>(model.layout.bricks);
    in.shared = static_cast<Index>(model.layout.size() - model.layout.bricks);
    in.stencil = &model.stencil;
    in.slopes = &slopes;
    in.conditioner = std::move(conditioner);
    in.gather(model);
    in.factor();
}

KrylovSolver::~KrylovSolver() = default;
KrylovSolver::KrylovSolver(KrylovSolver&&) noexcept = default;
KrylovSolver& KrylovSolver::operator=(KrylovSolver&&) noexcept = default;

int KrylovSolver::iterations() const
{
    return inside_->iterations;
}

std::optional<std::vector<double>> KrylovSolver::solve(const std::vector<double>& right, double share) const
{
    KrylovScratch scratch;
    return solve(right, share, scratch);
}

namespace {

// The vector in that place, made long enough.
Kept kept(std::vector<std::vector<double>>& vectors, Index place, Index size)
{
    const auto at = static_cast<std::size_t>(place);
    if (vectors.size() <= at)
        vectors.resize(at + 1);
    vectors[at].resize(static_cast<std::size_t>(size));
    return {vectors[at].data(), size};
}

Given given_of(const std::vector<std::vector<double>>& vectors, Index place)
{
    const std::vector<double>& vector = vectors[static_cast<std::size_t>(place)];
    return {vector.data(), static_cast<Index>(vector.size())};
}

} // namespace

std::optional<std::vector<double>> KrylovSolver::solve(const std::vector<double>& right, double share,
                                                       KrylovScratch& scratch) const
{
    constexpr Index most = 60;
    const Inside& in = *inside_;
    const Index size = in.bricks + in.shared;
    const Given given(right.data(), size);
    const double whole = given.norm();
    std::vector<double> result(right.size(), 0.0);
    if (whole == 0.0)
        return result;
    kept(scratch.basis, 0, size) = given / whole;
    Matrix triangle = Matrix::Zero(most + 1, most);
    Vector turned = Vector::Zero(most + 1); // the right-hand side after the rotations
    turned[0] = whole;
    std::vector<Eigen::JacobiRotation<double>> rotations;
    Index used = 0;
    while (used < most && !(std::abs(turned[used]) <= share * whole)) {
        Kept direction = kept(scratch.directions, used, size);
        in.condition(given_of(scratch.basis, used), direction, scratch.layered);
        Kept next = kept(scratch.basis, used + 1, size);
        in.multiply(given_of(scratch.directions, used), next);
        if (!std::isfinite(next.squaredNorm()))
            return std::nullopt;
        for (Index i = 0; i <= used; ++i) {
            const Given before = given_of(scratch.basis, i);
            triangle(i, used) = next.dot(before);
            next -= triangle(i, used) * before;
        }
        triangle(used + 1, used) = next.norm();
        for (Index i = 0; i < used; ++i)
            triangle.col(used).applyOnTheLeft(i, i + 1, rotations[static_cast<std::size_t>(i)].adjoint());
        rotations.emplace_back();
        rotations.back().makeGivens(triangle(used, used), triangle(used + 1, used));
        const double length = triangle(used + 1, used);
        triangle.col(used).applyOnTheLeft(used, used + 1, rotations.back().adjoint());
        turned.applyOnTheLeft(used, used + 1, rotations.back().adjoint());
        ++used;
        ++in.iterations;
        if (length == 0.0)
            break;
        next /= length;
    }
    const Vector shares = triangle.topLeftCorner(used, used).triangularView<Eigen::Upper>().solve(turned.head(used));
    Kept sum(result.data(), size);
    for (Index i = 0; i < used; ++i)
        sum += shares[i] * given_of(scratch.directions, i);
    return std::abs(turned[used]) <= share * whole && sum.allFinite() ? std::optional(std::move(result)) : std::nullopt;
}

} // namespace loam::climate
