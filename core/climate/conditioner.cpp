#include "core/climate/conditioner.hpp"

#include <algorithm>
#include <span>

namespace loam::climate {

Layers mean_layers(const Model& model, const Slopes& slopes)
{
    const std::size_t nz = model.nz;
    const std::size_t columns = model.columns();
    Layers layers{.nx = model.nx,
                  .ny = columns / model.nx,
                  .nz = nz,
                  .up_w_k = std::vector<double>(nz - 1, 0.0),
                  .along_x_w_k = std::vector<double>(nz, 0.0),
                  .along_y_w_k = std::vector<double>(nz, 0.0),
                  .ground_w_k = std::vector<double>(nz, 0.0)};
    const auto add = [nz, columns](const std::vector<double>& of_bricks, std::vector<double>& sums) {
        for (std::size_t c = 0; c < columns; ++c)
            for (std::size_t k = 0; k < sums.size(); ++k)
                sums[k] += of_bricks[c * nz + k];
    };
    add(model.stencil.up_w_k, layers.up_w_k);
    add(model.stencil.right_w_k, layers.along_x_w_k);
    add(model.stencil.back_w_k, layers.along_y_w_k);
    add(slopes.diagonal, layers.ground_w_k);
    const auto divide = [](std::vector<double>& sums, std::size_t count) {
        for (double& sum : sums)
            sum /= static_cast<double>(std::max<std::size_t>(1, count));
    };
    divide(layers.up_w_k, columns);
    divide(layers.ground_w_k, columns);
    divide(layers.along_x_w_k, (layers.nx - 1) * layers.ny);
    divide(layers.along_y_w_k, layers.nx * (layers.ny - 1));
    return layers;
}

Conditioner::Conditioner(const Layers& given, const std::vector<std::size_t>& floor_patch)
    : layers(given), solver(given)
{
    for (const std::size_t patch : floor_patch)
        floor_patches = std::max(floor_patches, patch + 1);
    const std::size_t bricks = layers.nx * layers.ny * layers.nz;
    answers.assign(bricks * floor_patches, 0.0);
    for (std::size_t c = 0; c < floor_patch.size(); ++c)
        answers[floor_patch[c] * bricks + (c + 1) * layers.nz - 1] = 1.0;
    solver.solve(answers);
}

namespace {

bool alike(const std::vector<double>& a, const std::vector<double>& b, double factor)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [factor](double one, double other) { return one <= factor * other && other <= factor * one; });
}

} // namespace

bool alike(const Layers& a, const Layers& b)
{
    constexpr double conducts = 1.1;
    constexpr double held = 1.4;
    return a.nx == b.nx && a.ny == b.ny && a.nz == b.nz && alike(a.up_w_k, b.up_w_k, conducts) &&
           alike(a.along_x_w_k, b.along_x_w_k, conducts) && alike(a.along_y_w_k, b.along_y_w_k, conducts) &&
           alike(a.ground_w_k, b.ground_w_k, held);
}

} // namespace loam::climate
