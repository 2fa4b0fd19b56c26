#include "core/climate/estimate.hpp"

#include <cassert>
#include <cmath>

#include <Eigen/Dense>

namespace loam::climate {

namespace {

using Matrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

Eigen::Map<const Matrix> matrix(const std::vector<double>& values, std::size_t rows, std::size_t columns)
{
    assert(values.size() == rows * columns);
    return {values.data(), static_cast<Eigen::Index>(rows), static_cast<Eigen::Index>(columns)};
}

Eigen::Map<const Eigen::VectorXd> vector(const std::vector<double>& values)
{
    return {values.data(), static_cast<Eigen::Index>(values.size())};
}

template <class Values> std::vector<double> listed(const Values& values)
{
    return {values.data(), values.data() + values.size()};
}

} // namespace

std::optional<Estimate> estimate_inputs(const Observed& observed)
{
    const std::size_t readings = observed.misfit.size();
    const auto slopes = matrix(observed.slopes, readings, observed.inputs);
    const auto misfit = vector(observed.misfit);
    const Matrix expected = slopes * slopes.transpose() + matrix(observed.noise, readings, readings);
    const Eigen::LLT<Matrix> factors(expected);
    if (factors.info() != Eigen::Success)
        return std::nullopt;
    const Eigen::VectorXd weighed = factors.solve(misfit);
    const Matrix inverse = factors.solve(Matrix::Identity(expected.rows(), expected.cols()));
    const Matrix gain = slopes.transpose() * inverse;
    const auto inputs = static_cast<Eigen::Index>(observed.inputs);
    const Eigen::VectorXd shift = slopes.transpose() * weighed;
    const Matrix covariance = Matrix::Identity(inputs, inputs) - gain * slopes;
    const Eigen::VectorXd surprise = weighed.array() / inverse.diagonal().array().sqrt();
    return Estimate{.shift = listed(shift),
                    .covariance = listed(covariance),
                    .surprise = listed(surprise),
                    .chi_square = misfit.dot(weighed)};
}

std::optional<double> weighed_square(const std::vector<double>& residual, const std::vector<double>& noise)
{
    const Matrix own = matrix(noise, residual.size(), residual.size());
    const Eigen::LLT<Matrix> factors(own);
    if (factors.info() != Eigen::Success)
        return std::nullopt;
    return vector(residual).dot(factors.solve(vector(residual)));
}

} // namespace loam::climate
