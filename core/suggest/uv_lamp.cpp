#include "core/suggest/uv_lamp.hpp"

#include <algorithm>

#include "core/assess/light.hpp"
#include "core/plan/file.hpp"
#include "core/plan/names.hpp"

namespace loam::suggest {

namespace {

bool gives_uv(const catalog::Catalog& catalog, const plan::Device& device)
{
    const catalog::DeviceTraits* traits = catalog.find_device(plan::name_of(device.kind));
    return traits != nullptr && traits->emits_uv;
}

bool needs_uv(const plan::Enclosure& enclosure, const catalog::Catalog& catalog)
{
    const auto species = assess::species_in(enclosure, catalog);
    return std::any_of(species.begin(), species.end(), [](const catalog::Species* one) { return one->uv.has_value(); });
}

} // namespace

void add_uv_lamp(plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place)
{
    constexpr double tube_w = 24.0;
    constexpr double tube_m = 0.55;
    plan::Enclosure& enclosure = plan.enclosures.at(place);
    const auto& devices = enclosure.equipment;
    const bool there =
        std::any_of(devices.begin(), devices.end(), [&](const auto& one) { return gives_uv(catalog, one); });
    if (there || !needs_uv(enclosure, catalog)) {
        return;
    }
    const plan::Shell& shell = enclosure.shell;
    plan::Device tube;
    tube.id = plan::fresh_id(plan, "d");
    tube.kind = plan::DeviceKind::uv_tube;
    tube.power_w = tube_w;
    tube.length_m = std::min(tube_m, 0.8 * shell.length_m);
    tube.x_m = std::max(0.5 * *tube.length_m, 0.35 * shell.length_m);
    tube.y_m = 0.5 * shell.width_m;
    tube.height_above_base_m = shell.height_m - 0.03;
    tube.guarded = true;
    tube.supply = plan::Supply::timed;
    tube.strip = devices.empty() ? std::nullopt : devices.front().strip;
    enclosure.equipment.push_back(std::move(tube));
}

void hang_uv_lamp(plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place)
{
    plan::Enclosure& enclosure = plan.enclosures.at(place);
    const assess::Context context{plan, catalog, {}};
    const auto heights = assess::assess_uv(context, {enclosure, place}).result.heights;
    for (plan::Device& device : enclosure.equipment) {
        if (heights && device.id == heights->lamp && device.height_above_base_m) {
            device.height_above_base_m = std::clamp(*device.height_above_base_m, heights->from_m, heights->to_m);
        }
    }
}

} // namespace loam::suggest
