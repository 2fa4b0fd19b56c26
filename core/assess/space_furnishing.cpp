#include <algorithm>
#include <cmath>

#include "core/assess/fittings.hpp"
#include "core/assess/space_parts.hpp"
#include "core/assess/warm_side.hpp"

namespace loam::assess {

namespace {

constexpr Judgement too_little{Verdict::falls_short, Direction::below};
const Source practice{"Common practice, no source", Confidence::practice};

void judge_hides(const Context& context, const Housed& housed, Notes& notes)
{
    const std::int64_t animals = animal_count(housed.enclosure);
    std::vector<const plan::Fitting*> hides;
    bool humid = false;
    for (const plan::Fitting& fitting : housed.enclosure.fittings) {
        if (is_hide(fitting.kind)) {
            hides.push_back(&fitting);
            humid = humid || fitting.kind == plan::FittingKind::humid_hide;
        }
    }
    const auto found = static_cast<double>(hides.size());
    const auto needed = static_cast<double>(animals + 1);
    if (animals > 0 && found < needed) {
        Finding& finding = report(notes, "space.hides-too-few", too_little, housed.at(),
                                  because("rule.hides-one-more",
                                          {{"hides", found, "1"},
                                           {"min", needed, "1"},
                                           {"short_by", needed - found, "1"},
                                           {"animals", static_cast<double>(animals), "1"}},
                                          {}, practice));
        finding.remedy = remedy("remedy.add-hides", {{"count", needed - found, "1"}});
    }
    for (const catalog::Species* species : species_in(housed.enclosure, context.catalog)) {
        if (species->humidity.humid_hide && !humid) {
            report(notes, "space.hide-humid-missing", too_little, housed.at(),
                   because("rule.species-sheet", {}, {{"species", species->id}}, species->humidity.source))
                .remedy = remedy("remedy.add-humid-hide");
            break;
        }
    }
    const auto warm_x_m = warm_centre_m(housed.enclosure);
    if (!warm_x_m || hides.empty() || animals == 0) {
        return; // without heat there is no warm side
    }
    const double middle_m = housed.enclosure.shell.length_m / 2.0;
    const auto on_warm_side = [&](const plan::Fitting* hide) {
        return (hide->x_m + hide->length_m / 2.0 < middle_m) == (*warm_x_m < middle_m);
    };
    const auto warm = std::count_if(hides.begin(), hides.end(), on_warm_side);
    if (warm == 0) {
        report(notes, "space.hide-warm-missing", too_little, housed.at(),
               because("rule.hides-one-more", {}, {}, practice))
            .remedy = remedy("remedy.move-hide", {}, {{"side", "warm"}});
    }
    if (warm == static_cast<std::ptrdiff_t>(hides.size())) {
        report(notes, "space.hide-cool-missing", too_little, housed.at(),
               because("rule.hides-one-more", {}, {}, practice))
            .remedy = remedy("remedy.move-hide", {}, {{"side", "cool"}});
    }
}

// Snakes turn by coiling; what is measured by shell or trunk needs a free circle of its own length.
void judge_turning(const Context& context, const Housed& housed, Notes& notes, const FloorPlan& floor)
{
    double body_m = 0.0;
    std::string widest;
    for (std::size_t i = 0; i < housed.enclosure.animals.size(); ++i) {
        const catalog::Species* species = context.catalog.find_species(housed.enclosure.animals[i].species);
        const auto length = body_length(context, housed, i, notes);
        if (species != nullptr && species->measure != space::BodyMeasure::total && length && length->high > body_m) {
            body_m = length->high;
            widest = species->id;
        }
    }
    if (widest.empty()) {
        return;
    }
    const double width_m = space::turning_circle(floor.size, floor.blocked).diameter_m;
    if (width_m < body_m) {
        report(notes, "space.turning-width", too_little, housed.at(),
               because("rule.turning-width",
                       {{"width", width_m, "m"}, {"min", body_m, "m"}, {"short_by", body_m - width_m, "m"}},
                       {{"species", widest}}, practice));
    }
}

void judge_gradient(const Housed& housed, Notes& notes)
{
    constexpr double least_m = 0.6;
    const double length_m = housed.enclosure.shell.length_m;
    if (length_m < least_m && !housed.enclosure.animals.empty()) {
        report(notes, "space.gradient-short", {Verdict::tight, Direction::below}, housed.at(),
               because("rule.gradient-length",
                       {{"length", length_m, "m"}, {"min", least_m, "m"}, {"short_by", least_m - length_m, "m"}}, {},
                       practice))
            .remedy = remedy("remedy.longer-box", {{"by", least_m - length_m, "m"}, {"to", least_m, "m"}});
    }
}

void judge_placement(const Housed& housed, Notes& notes)
{
    const plan::Shell& shell = housed.enclosure.shell;
    for (const plan::Fitting& fitting : housed.enclosure.fittings) {
        const double angle = fitting.rotation_deg.value_or(0.0) * 3.14159265358979323846 / 180.0;
        const double half_x =
            (std::abs(fitting.length_m * std::cos(angle)) + std::abs(fitting.width_m * std::sin(angle))) / 2.0;
        const double half_y =
            (std::abs(fitting.length_m * std::sin(angle)) + std::abs(fitting.width_m * std::cos(angle))) / 2.0;
        const double x_m = fitting.x_m + fitting.length_m / 2.0;
        const double y_m = fitting.y_m + fitting.width_m / 2.0;
        const double out_m =
            std::max({half_x - x_m, half_y - y_m, x_m + half_x - shell.length_m, y_m + half_y - shell.width_m});
        if (out_m > 0.001) {
            report(notes, "space.fitting-outside", {Verdict::falls_short, Direction::none}, housed.at(fitting.id),
                   because("rule.stated-by-keeper", {{"over_by", out_m, "m"}}, {{"fitting", fitting.id}}))
                .remedy = remedy("remedy.move-inside", {{"by", out_m, "m"}}, {{"fitting", fitting.id}});
        }
    }
}

} // namespace

void judge_furnishing(const Context& context, const Housed& housed, Notes& notes, const FloorPlan& floor)
{
    judge_hides(context, housed, notes);
    judge_turning(context, housed, notes, floor);
    judge_gradient(housed, notes);
    judge_placement(housed, notes);
}

} // namespace loam::assess
