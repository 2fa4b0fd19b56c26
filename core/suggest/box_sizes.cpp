#include "core/suggest/box_sizes.hpp"

#include <algorithm>
#include <array>

#include "core/assess/space.hpp"
#include "core/suggest/outfit.hpp"

namespace loam::suggest {

namespace {

constexpr std::array sizes{BoxSize{0.6, 0.45, 0.45}, BoxSize{0.9, 0.45, 0.45}, BoxSize{1.0, 0.5, 0.5},
                           BoxSize{1.2, 0.5, 0.5},   BoxSize{1.2, 0.6, 0.5},   BoxSize{1.5, 0.6, 0.5},
                           BoxSize{1.5, 0.75, 0.5},  BoxSize{1.8, 0.75, 0.6},  BoxSize{1.8, 0.9, 0.6},
                           BoxSize{2.4, 0.9, 0.6},   BoxSize{2.4, 1.2, 0.6}};

} // namespace

std::span<const BoxSize> box_sizes()
{
    return sizes;
}

std::optional<BoxSize> smallest_box(const plan::Plan& plan, const catalog::Catalog& catalog,
                                    std::chrono::year_month_day today, std::size_t place)
{
    for (const BoxSize& size : sizes) {
        plan::Plan tried = plan;
        const double height_m = std::max(size.height_m, plan.enclosures.at(place).shell.height_m);
        resize(tried.enclosures[place], size.length_m, size.width_m, height_m);
        const assess::Context context{tried, catalog, today};
        const Verdict verdict =
            assess::assess_space(context, {tried.enclosures[place], place}).result.judgement.verdict;
        if (verdict == Verdict::fits || verdict == Verdict::tight) {
            return BoxSize{size.length_m, size.width_m, height_m};
        }
    }
    return std::nullopt;
}

} // namespace loam::suggest
