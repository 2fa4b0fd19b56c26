#include <algorithm>

#include "core/assess/burn_limits.hpp"
#include "core/assess/climate_stage.hpp"
#include "core/assess/substrate.hpp"

namespace loam::assess {

namespace {

// A floor that an animal lies on for long. Source: one club's cap for heat mats (secondary).
constexpr double floor_warn_c = 35.0;

bool is_regulated(const climate::Control& control)
{
    return control.kind == climate::ControlKind::thermostat && control.probe.has_value();
}

// The case with the highest upper end of a figure.
template <class Figure> const SolvedCase* hottest(const std::vector<SolvedCase>& cases, Figure figure, bool with_faults)
{
    const SolvedCase* worst = nullptr;
    for (const SolvedCase& one : cases) {
        const bool counts = one.result.converged && (with_faults || one.room.fault == climate::Fault::none);
        if (counts && (worst == nullptr || figure(one.result).high > figure(worst->result).high)) {
            worst = &one;
        }
    }
    return worst;
}

// Where the plan has a mat: what an animal meets by digging. A mat without a thermostat's probe counts as
// unregulated, so full power is its ordinary case; a regulated one's failure is a drill, and not yet a danger.
void judge_digging(Notes& notes, const Housed& housed, const std::vector<SolvedCase>& cases)
{
    const auto& mats = cases.front().box.mats;
    const auto in_the_bed = [](const climate::Mat& mat) {
        return mat.place == climate::MatPlace::under_base || mat.place == climate::MatPlace::in_bed;
    };
    const auto below = std::find_if(mats.begin(), mats.end(), in_the_bed);
    if (below == mats.end()) {
        return;
    }
    const bool regulated = std::all_of(mats.begin(), mats.end(), [&](const climate::Mat& mat) {
        return !in_the_bed(mat) || is_regulated(mat.control);
    });
    const auto digging = [](const climate::CaseResult& result) { return result.hottest_digging_c; };
    const auto tell = [&](const SolvedCase& worst, bool failed) {
        const Range figure = digging(worst.result);
        if (figure.high <= floor_warn_c) {
            return false;
        }
        const bool burns = figure.high > long_contact_c;
        const Verdict verdict = burns && !failed ? Verdict::danger : Verdict::tight;
        std::vector<Input> inputs = inputs_over(figure, burns ? long_contact_c : floor_warn_c, "degC");
        inputs.push_back({"warn", floor_warn_c, "degC"});
        Finding& finding =
            report(notes, "danger.mat-under-bed", {verdict, Direction::above}, housed.at(below->id),
                   because("rule.mat-limit", inputs,
                           {{"mat", below->id}, {"case", worst.room.id}, {"regulated", regulated ? "yes" : "no"}},
                           burn_source));
        if (regulated || failed) {
            finding.remedy = remedy("remedy.mat-to-wall", {}, {{"device", below->id}});
        } else {
            finding.remedy = remedy("remedy.add-thermostat", {}, {{"device", below->id}});
        }
        return true;
    };
    const SolvedCase* ordinary = hottest(cases, digging, !regulated);
    const bool told = ordinary != nullptr && tell(*ordinary, false);
    const SolvedCase* failed = regulated ? hottest(cases, digging, true) : nullptr;
    if (!told && failed != nullptr && failed->room.fault == climate::Fault::mats_stuck_on &&
        digging(failed->result).high > long_contact_c) {
        tell(*failed, true);
    }
}

void judge_panes(Notes& notes, const Housed& housed, const std::vector<SolvedCase>& cases)
{
    const auto& mats = cases.front().box.mats;
    const auto on_wall = std::find_if(mats.begin(), mats.end(), [](const climate::Mat& mat) {
        return mat.place != climate::MatPlace::under_base && mat.place != climate::MatPlace::in_bed;
    });
    if (on_wall == mats.end()) {
        return;
    }
    const auto pane = [](const climate::CaseResult& result) { return result.hottest_pane_c; };
    const SolvedCase* worst = hottest(cases, pane, !is_regulated(on_wall->control));
    if (worst != nullptr && pane(worst->result).high > long_contact_c) {
        Finding& finding =
            report(notes, "danger.mat-on-pane", {Verdict::danger, Direction::above}, housed.at(on_wall->id),
                   because("rule.burn-threshold", inputs_over(pane(worst->result), long_contact_c, "degC"),
                           {{"mat", on_wall->id}, {"case", worst->room.id}}, burn_source));
        if (is_regulated(on_wall->control)) {
            finding.remedy = remedy("remedy.set-thermostat", {{"to", floor_warn_c, "degC"}}, {{"device", on_wall->id}});
        } else {
            finding.remedy = remedy("remedy.add-thermostat", {}, {{"device", on_wall->id}});
        }
    }
}

const climate::Lamp& strongest(const std::vector<climate::Lamp>& lamps)
{
    return *std::max_element(lamps.begin(), lamps.end(), [](const auto& left, const auto& right) {
        return left.power_w.likely * left.radiant_share.likely < right.power_w.likely * right.radiant_share.likely;
    });
}

// An animal leans on a wall for a while and can leave it: what skin bears for ten minutes.
void judge_walls(Notes& notes, const Housed& housed, const std::vector<SolvedCase>& cases)
{
    const auto wall = [](const climate::CaseResult& result) {
        return result.hottest_wall ? result.hottest_wall->temperature_c : Range{};
    };
    const SolvedCase* worst = hottest(cases, wall, false);
    if (worst == nullptr || worst->box.lamps.empty() || wall(worst->result).high <= ten_minutes_c) {
        return;
    }
    const climate::Lamp& lamp = strongest(worst->box.lamps);
    std::vector<Input> inputs = inputs_over(wall(worst->result), ten_minutes_c, "degC");
    inputs.push_back({"height", worst->result.hottest_wall->at.z_m, "m"});
    report(notes, "danger.wall-near-lamp", {Verdict::danger, Direction::above}, housed.at(lamp.id),
           because("rule.burn-threshold", inputs, {{"case", worst->room.id}, {"lamp", lamp.id}}, burn_source))
        .remedy = remedy("remedy.away-from-wall", {{"to", ten_minutes_c, "degC"}}, {{"device", lamp.id}});
}

// The fitting whose top is the hottest place. Empty: it is the bed.
std::string fitting_at(const Housed& housed, const climate::Point& at)
{
    for (const plan::Fitting& fitting : housed.enclosure.fittings) {
        const bool above = at.x_m >= fitting.x_m && at.x_m <= fitting.x_m + fitting.length_m && at.y_m >= fitting.y_m &&
                           at.y_m <= fitting.y_m + fitting.width_m;
        if (above && at.z_m > bed_surface_m(housed.enclosure, at.x_m) + 0.005) {
            return fitting.id;
        }
    }
    return {};
}

// The touchable surface, its bed dried by the lamp. Under a lamp a basker comes and goes, so the threshold of ten
// minutes is its limit, and that of long contact a warning; anything else is held to long contact.
void judge_surface(Notes& notes, const Housed& housed, const std::vector<SolvedCase>& cases,
                   const std::vector<const catalog::Species*>& species)
{
    const auto surface = [](const climate::CaseResult& result) { return result.hottest_surface_c; };
    const SolvedCase* worst = hottest(cases, surface, false);
    if (worst == nullptr) {
        return;
    }
    const bool baskers = !species.empty() && std::all_of(species.begin(), species.end(), [](const auto* one) {
        return one->temperatures.basking_surface_c.has_value();
    });
    const auto& lamps = worst->box.lamps;
    const double limit_c = baskers && !lamps.empty() ? ten_minutes_c : long_contact_c;
    const Range figure = surface(worst->result);
    if (figure.high <= long_contact_c) {
        return;
    }
    const bool burns = figure.high > limit_c;
    const Judgement judgement{burns ? Verdict::danger : Verdict::tight, Direction::above};
    const std::vector<Input> inputs = inputs_over(figure, burns ? limit_c : long_contact_c, "degC");
    if (lamps.empty()) {
        report(notes, "danger.touch-burn", judgement, housed.at(),
               because("rule.burn-threshold", inputs, {{"case", worst->room.id}}, burn_source));
        return;
    }
    const climate::Lamp& lamp = strongest(lamps);
    report(notes, "danger.lamp-dried-surface", judgement, housed.at(lamp.id),
           because("rule.burn-threshold", inputs,
                   {{"case", worst->room.id}, {"lamp", lamp.id}, {"on", fitting_at(housed, worst->result.hottest_at)}},
                   burn_source));
}

// An animal is lost where even the coolest place is too hot for it, or the warmest too cold.
void judge_escape(Notes& notes, const Housed& housed, const std::vector<SolvedCase>& cases,
                  const catalog::Species& species)
{
    const auto& harmful = species.temperatures.harmful_c;
    if (!harmful) {
        return;
    }
    for (const SolvedCase& one : cases) {
        if (!one.result.converged) {
            continue;
        }
        const Range coolest = one.result.cool.ground_c;
        const Range warmest = one.result.warm.ground_c;
        const std::vector<Label> labels{{"case", one.room.id}, {"species", species.id}};
        if (harmful->max && coolest.high > *harmful->max) {
            report(notes, "danger.no-escape-from-heat", {Verdict::danger, Direction::above}, housed.at(),
                   because("rule.body-limit", inputs_over(coolest, *harmful->max, "degC"), labels, harmful->source));
        }
        if (harmful->min && warmest.low < *harmful->min) {
            report(notes, "danger.no-escape-from-cold", {Verdict::danger, Direction::below}, housed.at(),
                   because("rule.body-limit", inputs_under(warmest, *harmful->min, "degC"), labels, harmful->source));
        }
    }
}

} // namespace

void report_heat_dangers(Notes& notes, const Housed& housed, const std::vector<SolvedCase>& cases,
                         const std::vector<const catalog::Species*>& species)
{
    if (cases.empty()) {
        return;
    }
    judge_digging(notes, housed, cases);
    judge_panes(notes, housed, cases);
    judge_walls(notes, housed, cases);
    judge_surface(notes, housed, cases, species);
    for (const catalog::Species* one : species) {
        judge_escape(notes, housed, cases, *one);
    }
}

} // namespace loam::assess
