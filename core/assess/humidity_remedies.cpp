#include <algorithm>
#include <cmath>
#include <functional>

#include "core/assess/climate_stage.hpp"
#include "core/assess/cover_places.hpp"
#include "core/assess/side_by_side.hpp"

namespace loam::assess {

namespace {

// Halves the way between two settings, of which the first holds a bound and the second does not, and gives the last
// that holds. nullopt: stopped, or no balance was found.
std::optional<double> last_that_holds(double holds, double does_not, double within,
                                      const std::function<std::optional<bool>(double)>& does_hold)
{
    while (std::abs(holds - does_not) > within) {
        const double middle = (holds + does_not) / 2.0;
        const auto tried = does_hold(middle);
        if (!tried) {
            return std::nullopt;
        }
        (*tried ? holds : does_not) = middle;
    }
    return holds;
}

std::optional<double> humidity_of(const climate::Box& box, const SolvedCase& solved, climate::Workspace& workspace,
                                  const std::stop_token& stop)
{
    const auto result = climate::solve_likely(box, solved.room, workspace, stop);
    return result && result->converged ? std::optional(result->ground_humidity.likely) : std::nullopt;
}

std::optional<double> humidity_misted(double misting_l, const SolvedCase& solved, climate::Workspace& workspace,
                                      const std::stop_token& stop)
{
    climate::Box box = solved.box;
    box.misting_l_per_day = exactly(misting_l);
    return humidity_of(box, solved, workspace, stop);
}

// Water that has to be misted a day so that the likely humidity comes up to what is wanted: doubled until it does,
// then halved to within 5 %. nullopt: more than anyone sprays by hand would be needed.
std::optional<double> misting_for(const SolvedCase& solved, double wanted, climate::Workspace& workspace,
                                  std::stop_token stop)
{
    constexpr double most_l = 5.0;
    const auto humidity_at = [&](double misting_l) { return humidity_misted(misting_l, solved, workspace, stop); };
    double low_l = solved.box.misting_l_per_day.likely;
    double high_l = std::max(0.1, 2.0 * low_l);
    for (auto reached = humidity_at(high_l); !reached || *reached < wanted; reached = humidity_at(high_l)) {
        if (!reached || high_l > most_l) {
            return std::nullopt;
        }
        low_l = high_l;
        high_l *= 2.0;
    }
    return last_that_holds(high_l, low_l, 0.05 * high_l, [&](double misting_l) -> std::optional<bool> {
        const auto reached = humidity_at(misting_l);
        return reached ? std::optional(*reached >= wanted) : std::nullopt;
    });
}

struct Wanted {
    double humidity = 0.0; // at least
    double most = 1.0;
};

// The least of the top that has to be covered, clear of the lamps, so that the likely humidity comes up to what is
// wanted; nullopt where no share does, or where it would pass the upper bound.
std::optional<Remedy> cover_for(const SolvedCase& solved, const Wanted& wanted, climate::Workspace& workspace,
                                const std::stop_token& stop)
{
    const climate::Box& box = solved.box;
    const double now = covered_share(box);
    const double most = coverable_share(box, solved.clearance_m);
    if (most <= now) {
        return std::nullopt;
    }
    const auto humidity_at = [&](double share) {
        return humidity_of(with_cover_share(box, share, solved.clearance_m), solved, workspace, stop);
    };
    const auto holds = [&](double share) -> std::optional<bool> {
        const auto reached = humidity_at(share);
        return reached ? std::optional(*reached >= wanted.humidity) : std::nullopt;
    };
    if (!holds(most).value_or(false)) {
        return std::nullopt;
    }
    const auto least = last_that_holds(most, now, 0.02, holds);
    const auto reached = least ? humidity_at(*least) : std::nullopt;
    if (!reached || *reached > wanted.most) {
        return std::nullopt;
    }
    return remedy("remedy.add-cover",
                  {{"area", (*least - now) * box.length_m * box.width_m, "m2"}, {"fraction", *least, "1"}});
}

// Too damp: the most that may be misted, to within a fiftieth of what is. nullopt: it is too damp without any, too.
std::optional<Remedy> less_misting(const SolvedCase& solved, double wanted, climate::Workspace& workspace,
                                   const std::stop_token& stop)
{
    const double now_l = solved.box.misting_l_per_day.likely;
    const auto holds = [&](double misting_l) -> std::optional<bool> {
        const auto reached = humidity_misted(misting_l, solved, workspace, stop);
        return reached ? std::optional(*reached <= wanted) : std::nullopt;
    };
    if (now_l <= 0.0 || !holds(0.0).value_or(false)) {
        return std::nullopt;
    }
    const auto to_l = last_that_holds(0.0, now_l, now_l / 50.0, holds);
    if (!to_l) {
        return std::nullopt;
    }
    return remedy("remedy.less-misting", {{"to", *to_l, "l/d"}, {"by", now_l - *to_l, "l/d"}},
                  {{"case", solved.room.id}});
}

// Too damp: the first cover that alone keeps too much in.
std::optional<Remedy> without_cover(const SolvedCase& solved, double wanted, climate::Workspace& workspace,
                                    const std::stop_token& stop)
{
    for (std::size_t i = 0; i < solved.box.covers.size(); ++i) {
        climate::Box box = solved.box;
        box.covers.erase(box.covers.begin() + static_cast<std::ptrdiff_t>(i));
        const auto reached = humidity_of(box, solved, workspace, stop);
        if (reached && *reached <= wanted) {
            return remedy("remedy.remove-cover", {}, {{"cover", solved.box.covers[i].id}});
        }
    }
    return std::nullopt;
}

template <class Element> auto* named(std::vector<Element>& elements, const std::string& id)
{
    const auto found = std::find_if(elements.begin(), elements.end(), [&](const auto& one) { return one.id == id; });
    return found == elements.end() ? nullptr : &*found;
}

// A finding of air that is too dry or too damp, and what cures it.
struct Moist {
    Finding* finding = nullptr;
    const SolvedCase* solved = nullptr;
    std::optional<double> misting_l;
    std::optional<Remedy> other; // than more misting
};

// Whether a bed whose surface is left to dry brings the humidity down far enough.
std::optional<Remedy> drier_bed(const SolvedCase& solved, double wanted, climate::Workspace& workspace,
                                std::stop_token stop)
{
    climate::Box box = solved.box;
    for (climate::BedLayer& layer : box.bed) {
        layer.wetness = exactly(0.0);
    }
    const auto reached = humidity_of(box, solved, workspace, stop);
    return reached && *reached <= wanted ? std::optional(remedy("remedy.drier-bed")) : std::nullopt;
}

Remedy none_alone(const Finding& finding)
{
    return finding.verdict == Verdict::tight ? remedy("remedy.measure-first") : remedy("remedy.several-changes");
}

std::vector<Moist> to_be_searched(Notes& notes, const std::vector<SolvedCase>& cases)
{
    std::vector<Moist> found;
    for (Finding& finding : notes.findings) {
        if (finding.code != "humidity.level") {
            continue;
        }
        const std::string case_id = label_of(finding, "case");
        const auto solved =
            std::find_if(cases.begin(), cases.end(), [&](const auto& one) { return one.room.id == case_id; });
        if (solved == cases.end()) {
            continue;
        }
        found.push_back({&finding, &*solved, std::nullopt, std::nullopt});
    }
    return found;
}

void search(Moist& moist, climate::Workspace workspace, const std::stop_token& stop)
{
    const SolvedCase& solved = *moist.solved;
    if (moist.finding->direction == Direction::above) {
        const double over = input_of(*moist.finding, "over_by").value_or(0.0);
        const double wanted = solved.result.ground_humidity.likely - over;
        moist.other = less_misting(solved, wanted, workspace, stop);
        if (!moist.other) {
            moist.other = without_cover(solved, wanted, workspace, stop);
        }
        if (!moist.other) {
            moist.other = drier_bed(solved, wanted, workspace, stop);
        }
        return;
    }
    // A tight range has to move up as far as its lower end misses.
    const double wanted = solved.result.ground_humidity.likely + input_of(*moist.finding, "short_by").value_or(0.0);
    moist.misting_l = misting_for(solved, wanted, workspace, stop);
    if (!moist.misting_l) {
        const double most = input_of(*moist.finding, "max").value_or(1.0);
        moist.other = cover_for(solved, {wanted, most}, workspace, stop);
    }
}

} // namespace

bool add_humidity_remedies(Notes& notes, std::vector<HumidityCase>& humidity, const std::vector<SolvedCase>& cases,
                           const climate::Workspace& workspace, std::stop_token stop)
{
    std::vector<Moist> all = to_be_searched(notes, cases);
    side_by_side(all.size(), [&](std::size_t i) { search(all[i], workspace, stop); });
    if (stop.stop_requested()) {
        return false;
    }
    for (const Moist& one : all) {
        Finding& finding = *one.finding;
        if (!one.misting_l) {
            finding.remedy = one.other ? *one.other : none_alone(finding);
            continue;
        }
        const double by_l = *one.misting_l - one.solved->box.misting_l_per_day.likely;
        finding.remedy = remedy("remedy.more-misting", {{"to", *one.misting_l, "l/d"}, {"by", by_l, "l/d"}},
                                {{"case", one.solved->room.id}});
        HumidityCase* result = named(humidity, one.solved->room.id);
        if (result != nullptr && finding.verdict == Verdict::falls_short) {
            result->misting_needed_l_per_day = exactly(*one.misting_l);
        }
    }
    return true;
}

} // namespace loam::assess
