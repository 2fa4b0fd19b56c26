#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <vector>

#include "core/assess/reach.hpp"

namespace loam::assess {

namespace {

// From a point (or a tube along x) to a horizontal rectangle at another height.
double distance_m(const KnownDevice& known, const light::Patch& patch, double height_m)
{
    const double half_m = known.device.length_m.value_or(0.0) / 2.0;
    const double gap_x = std::max(
        {0.0, patch.x_m - (known.device.x_m + half_m), known.device.x_m - half_m - (patch.x_m + patch.length_m)});
    const double gap_y = std::max({0.0, patch.y_m - known.device.y_m, known.device.y_m - (patch.y_m + patch.width_m)});
    return std::hypot(gap_x, gap_y, known.z_m - height_m);
}

void judge_cover(const Context& context, const Housed& housed, Notes& notes, const KnownDevice& known,
                 const Clearance& clearance, const plan::Cover& cover)
{
    const light::Patch patch{cover.x_m, cover.y_m, cover.length_m, cover.width_m};
    const double gap_m = distance_m(known, patch, housed.enclosure.shell.height_m);
    if (gap_m >= clearance.needed_m) {
        return;
    }
    const catalog::Material* material = context.catalog.find_material(cover.material);
    // What a material unknown to us does near a lamp is taken as the worse.
    const bool combustible = material == nullptr || material->combustible;
    if (!cover_keeps_clear(known, combustible)) {
        return;
    }
    const Verdict verdict = combustible ? Verdict::danger : Verdict::falls_short;
    report(notes, "danger.cover-near-lamp", {verdict, Direction::below}, housed.at(cover.id),
           because("rule.clearance",
                   {{"distance", gap_m, "m"},
                    {"clearance", clearance.needed_m, "m"},
                    {"short_by", clearance.needed_m - gap_m, "m"}},
                   {{"lamp", known.device.id},
                    {"cover", cover.id},
                    {"material", cover.material},
                    {"combustible", combustible ? "yes" : "no"}},
                   clearance.source))
        .remedy = remedy("remedy.move-cover", {{"by", clearance.needed_m - gap_m, "m"}}, {{"cover", cover.id}});
}

void judge_part(const Context& context, const Housed& housed, Notes& notes, const KnownDevice& known,
                const Clearance& clearance, const std::string& part, const std::string& material_id, double gap_m)
{
    const catalog::Material* material = context.catalog.find_material(material_id);
    if (gap_m >= clearance.needed_m || material == nullptr || !material->combustible) {
        return;
    }
    // Boards near a lamp scorch; the default distance is a cautious one, the maker's own is a limit.
    const Verdict verdict = known.device.clearance_m ? Verdict::danger : Verdict::falls_short;
    report(notes, "danger.shell-near-lamp", {verdict, Direction::below}, housed.at(known.device.id),
           because("rule.clearance",
                   {{"distance", gap_m, "m"},
                    {"clearance", clearance.needed_m, "m"},
                    {"short_by", clearance.needed_m - gap_m, "m"}},
                   {{"lamp", known.device.id}, {"part", part}, {"material", material_id}}, clearance.source))
        .remedy = remedy("remedy.move-lamp", {{"by", clearance.needed_m - gap_m, "m"}}, {{"device", known.device.id}});
}

// What a lamp over the wall or inside it comes near: the panel and whatever lines it.
std::vector<std::string> materials_of(const plan::Shell& shell, plan::Wall wall)
{
    const auto panel = std::find_if(shell.panels.begin(), shell.panels.end(),
                                    [wall](const plan::Panel& each) { return each.wall == wall; });
    std::vector<std::string> materials{panel != shell.panels.end() ? panel->material : shell.walls};
    for (const plan::Lining& lining : shell.linings) {
        if (lining.wall == wall) {
            materials.push_back(lining.material);
        }
    }
    return materials;
}

void judge_shell(const Context& context, const Housed& housed, Notes& notes, const KnownDevice& known,
                 const Clearance& clearance)
{
    const plan::Shell& shell = housed.enclosure.shell;
    if (shell.top.kind == plan::TopKind::board) {
        judge_part(context, housed, notes, known, clearance, "top", "board", std::abs(known.z_m - shell.height_m));
    }
    const double half_m = known.device.length_m.value_or(0.0) / 2.0;
    const double over_m = std::max(0.0, known.z_m - shell.height_m);
    // The nearest wall of each make: one sentence each.
    std::map<std::string, double> gap_m;
    const auto meet = [&](plan::Wall wall, double sideways_m) {
        const double here_m = std::hypot(std::max(0.0, sideways_m), over_m);
        for (const std::string& material : materials_of(shell, wall)) {
            const auto [at, is_new] = gap_m.emplace(material, here_m);
            at->second = std::min(at->second, here_m);
        }
    };
    meet(plan::Wall::left, known.device.x_m - half_m);
    meet(plan::Wall::right, shell.length_m - known.device.x_m - half_m);
    meet(plan::Wall::front, known.device.y_m);
    meet(plan::Wall::back, shell.width_m - known.device.y_m);
    for (const auto& [material, nearest_m] : gap_m) {
        judge_part(context, housed, notes, known, clearance, "walls", material, nearest_m);
    }
}

} // namespace

std::optional<Clearance> clearance_of(const KnownDevice& known)
{
    if (known.device.clearance_m) {
        return Clearance{*known.device.clearance_m,
                         {"The maker's figure, as stated in the plan", Confidence::confirmed}};
    }
    if (known.traits == nullptr) {
        return std::nullopt;
    }
    return Clearance{known.traits->clearance_m.high, known.traits->clearance_m.source};
}

bool cover_keeps_clear(const KnownDevice& known, bool combustible)
{
    return combustible || is_overhead_heat(known.device.kind);
}

Notes judge_clearances(const Context& context, const Housed& housed)
{
    Notes notes;
    for (const KnownDevice& known : equipment_of(context, housed, notes)) {
        const auto clearance = clearance_of(known);
        const bool hot = is_overhead_heat(known.device.kind) || known.device.clearance_m.has_value();
        if (known.z_m <= 0.0 || !clearance || clearance->needed_m <= 0.0) {
            continue;
        }
        for (const plan::Cover& cover : housed.enclosure.shell.top.covers) {
            judge_cover(context, housed, notes, known, *clearance, cover);
        }
        if (hot) { // a tube of a few watts does not scorch the wall beside it
            judge_shell(context, housed, notes, known, *clearance);
        }
    }
    return notes;
}

} // namespace loam::assess
