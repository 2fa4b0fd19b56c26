#include <algorithm>
#include <cmath>

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

struct Clearance {
    double needed_m = 0.0;
    Source source;
};

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
    if (!combustible && !is_overhead_heat(known.device.kind)) {
        return; // a pane beside a tube of a few watts
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

void judge_shell(const Context& context, const Housed& housed, Notes& notes, const KnownDevice& known,
                 const Clearance& clearance)
{
    const plan::Shell& shell = housed.enclosure.shell;
    if (shell.top.kind == plan::TopKind::board) {
        judge_part(context, housed, notes, known, clearance, "top", "board", std::abs(known.z_m - shell.height_m));
    }
    const double half_m = known.device.length_m.value_or(0.0) / 2.0;
    const double sideways_m = std::min({known.device.x_m - half_m, shell.length_m - known.device.x_m - half_m,
                                        known.device.y_m, shell.width_m - known.device.y_m});
    const double over_m = std::max(0.0, known.z_m - shell.height_m);
    judge_part(context, housed, notes, known, clearance, "walls", shell.walls,
               std::hypot(std::max(0.0, sideways_m), over_m));
}

} // namespace

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
