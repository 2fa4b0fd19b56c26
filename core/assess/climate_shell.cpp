#include <algorithm>

#include "core/assess/climate_parts.hpp"
#include "core/plan/names.hpp"

namespace loam::assess {

std::optional<climate::Sheet> sheet_of(const catalog::Material& material, double thickness_m)
{
    if (!material.solar_absorptance) {
        return std::nullopt;
    }
    return climate::Sheet{
        .material = material.id,
        .thickness_m = thickness_m,
        .conductivity_w_mk = material.conductivity_w_mk.range(),
        .heat_capacity_j_m3k = material.density_kg_m3.likely * material.specific_heat_j_kgk.likely,
        .emissivity = material.emissivity.range(),
        // A material without an entry for it lets no lamp light through.
        .lamp_transmittance = material.lamp_transmittance ? material.lamp_transmittance->range() : exactly(0.0),
        .lamp_absorptance = material.solar_absorptance->range(),
    };
}

std::optional<Range> thickness_of(Notes& notes, const catalog::Catalog& catalog, const catalog::Material& material,
                                  std::optional<double> given_m, std::string pointer)
{
    const catalog::Assumption* usual = catalog.find_assumption("panel.thickness_m." + material.id);
    if (usual != nullptr) {
        return given_or(notes, given_m, std::move(pointer), "m", usual->spread.range(), usual->spread.source);
    }
    // A user's own material states one thickness, without a spread.
    const std::optional<Range> only =
        material.default_thickness_m ? std::optional(exactly(*material.default_thickness_m)) : std::nullopt;
    return given_or(notes, given_m, std::move(pointer), "m", only, material.density_kg_m3.source);
}

namespace {

// A panel of the shell, or why there is none.
std::variant<climate::Sheet, NotComputable> panel(const Context& context, Notes& notes, std::string_view material_id,
                                                  std::optional<double> given_m, const std::string& pointer)
{
    const catalog::Material* material = context.catalog.find_material(material_id);
    if (material == nullptr) {
        return NotComputable{"material-not-known", std::string(material_id)};
    }
    const auto thickness_m = thickness_of(notes, context.catalog, *material, given_m, pointer);
    const auto sheet = thickness_m ? sheet_of(*material, thickness_m->likely) : std::nullopt;
    if (!sheet) {
        return NotComputable{"material-incomplete", std::string(material_id)};
    }
    return *sheet;
}

std::optional<NotComputable> take(std::variant<climate::Sheet, NotComputable> found, climate::Sheet& into)
{
    if (auto* missing = std::get_if<NotComputable>(&found)) {
        return *missing;
    }
    into = std::get<climate::Sheet>(std::move(found));
    return std::nullopt;
}

climate::WallBuild& build_of(climate::Box& box, plan::Wall wall)
{
    const auto same = static_cast<climate::Wall>(wall);
    for (climate::WallBuild& build : box.other_walls) {
        if (build.wall == same) {
            return build;
        }
    }
    box.other_walls.push_back({same, std::nullopt, {}, {}});
    return box.other_walls.back();
}

std::optional<NotComputable> fill_other_walls(const Context& context, const Housed& housed, Notes& notes,
                                              climate::Box& box)
{
    const plan::Shell& shell = housed.enclosure.shell;
    for (std::size_t i = 0; i < shell.panels.size(); ++i) {
        const plan::Panel& each = shell.panels[i];
        climate::WallLayer layer{.id = each.id, .sheet = {}};
        const std::string pointer = housed.pointer("/shell/panels/" + std::to_string(i) + "/thickness_m");
        if (auto missing = take(panel(context, notes, each.material, each.thickness_m, pointer), layer.sheet)) {
            return missing;
        }
        build_of(box, each.wall).panel = std::move(layer);
    }
    for (std::size_t i = 0; i < shell.linings.size(); ++i) {
        const plan::Lining& each = shell.linings[i];
        climate::WallLayer layer{.id = each.id, .sheet = {}};
        const std::string pointer = housed.pointer("/shell/linings/" + std::to_string(i) + "/thickness_m");
        if (auto missing = take(panel(context, notes, each.material, each.thickness_m, pointer), layer.sheet)) {
            return missing;
        }
        climate::WallBuild& build = build_of(box, each.wall);
        (each.side == plan::Side::inside ? build.inside : build.outside).push_back(std::move(layer));
    }
    return std::nullopt;
}

std::optional<NotComputable> fill_covers(const Context& context, const Housed& housed, climate::Box& box)
{
    for (const plan::Cover& cover : housed.enclosure.shell.top.covers) {
        const catalog::Material* material = context.catalog.find_material(cover.material);
        if (material == nullptr) {
            return NotComputable{"material-not-known", cover.material};
        }
        const auto sheet =
            material->default_thickness_m ? sheet_of(*material, *material->default_thickness_m) : std::nullopt;
        if (!sheet || !material->air_permeability_share) {
            return NotComputable{"material-incomplete", cover.material};
        }
        // What hangs over the edge covers nothing.
        const double left_m = std::max(0.0, cover.x_m);
        const double front_m = std::max(0.0, cover.y_m);
        const climate::Rect area{left_m, front_m, std::min(box.length_m, cover.x_m + cover.length_m) - left_m,
                                 std::min(box.width_m, cover.y_m + cover.width_m) - front_m};
        if (area.length_m > 0.0 && area.width_m > 0.0) {
            box.covers.push_back({cover.id, area, *sheet, material->air_permeability_share->range()});
        }
    }
    return std::nullopt;
}

std::optional<NotComputable> fill_top(const Context& context, const Housed& housed, Notes& notes, climate::Box& box)
{
    const plan::Top& top = housed.enclosure.shell.top;
    switch (top.kind) {
    case plan::TopKind::mesh: {
        const auto open = given_or_assumed(notes, context.catalog, top.open_fraction,
                                           housed.pointer("/shell/top/open_fraction"), "mesh.open_fraction");
        if (!open) {
            return NotComputable{"assumption-missing", "mesh.open_fraction"};
        }
        box.top = climate::TopKind::mesh;
        box.mesh_open_fraction = *open;
        return std::nullopt;
    }
    case plan::TopKind::open:
        box.top = climate::TopKind::open;
        return std::nullopt;
    case plan::TopKind::glass:
    case plan::TopKind::board:
        box.top = climate::TopKind::pane;
        return take(
            panel(context, notes, plan::name_of(top.kind), top.thickness_m, housed.pointer("/shell/top/thickness_m")),
            box.top_sheet);
    }
    return std::nullopt;
}

// What the base stands on. A mat's own word goes first; a stand is a board, for a mat's heat the unfavourable case.
std::optional<NotComputable> fill_underlay(const Context& context, const Housed& housed, Notes& notes,
                                           climate::Box& box)
{
    std::string material_id = housed.enclosure.stand ? "melamine-board" : "";
    for (std::size_t i = 0; i < housed.enclosure.equipment.size(); ++i) {
        const plan::Device& device = housed.enclosure.equipment[i];
        if (device.kind != plan::DeviceKind::heat_mat || device.place != plan::Place::under_base) {
            continue;
        }
        if (!device.below) {
            assume(notes, {housed.pointer("/equipment/" + std::to_string(i) + "/below"), "", std::nullopt, {}});
        }
        material_id = device.below.value_or("melamine-board");
    }
    if (material_id.empty()) {
        return std::nullopt; // stands free
    }
    climate::Sheet sheet;
    if (auto missing = take(panel(context, notes, material_id, std::nullopt, housed.pointer("/stand")), sheet)) {
        return missing;
    }
    box.underlay.push_back(sheet);
    return std::nullopt;
}

} // namespace

std::optional<NotComputable> fill_shell(const Context& context, const Housed& housed, Notes& notes, climate::Box& box)
{
    const plan::Shell& shell = housed.enclosure.shell;
    box.length_m = shell.length_m;
    box.width_m = shell.width_m;
    box.height_m = shell.height_m;
    if (auto missing =
            take(panel(context, notes, shell.walls, shell.wall_thickness_m, housed.pointer("/shell/wall_thickness_m")),
                 box.walls)) {
        return missing;
    }
    if (auto missing =
            take(panel(context, notes, shell.base, shell.base_thickness_m, housed.pointer("/shell/base_thickness_m")),
                 box.base)) {
        return missing;
    }
    if (auto missing = fill_other_walls(context, housed, notes, box)) {
        return missing;
    }
    if (auto missing = fill_top(context, housed, notes, box)) {
        return missing;
    }
    for (const plan::Vent& vent : shell.vents) {
        box.vents.push_back({vent.free_area_m2, vent.height_above_base_m});
    }
    if (auto missing = fill_covers(context, housed, box)) {
        return missing;
    }
    return fill_underlay(context, housed, notes, box);
}

} // namespace loam::assess
