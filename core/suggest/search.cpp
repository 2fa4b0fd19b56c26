#include "core/suggest/search.hpp"

#include <algorithm>
#include <array>

#include "core/assess/side_by_side.hpp"
#include "core/assess/what_if.hpp"

namespace loam::suggest {

namespace {

// The shares of cover that are tried, as far as covers may lie; one where it is the same.
std::vector<double> shares_of(const plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place)
{
    constexpr std::array tried{0.0, 0.3, 0.5, 0.7};
    Outfit usual;
    usual.lamp = Lamp{75.0, false};
    const auto bare = dressed(plan, catalog, place, usual);
    const auto room = bare ? assess::trial_room(*bare, catalog, plan.enclosures.at(place).id) : std::nullopt;
    const double most = room ? room->most_covered_share : 0.0;
    std::vector<double> shares;
    for (const double share : tried) {
        const double within = std::min(share, most);
        if (shares.empty() || within > shares.back()) {
            shares.push_back(within);
        }
    }
    return shares;
}

// Where the seasons differ by more, no lamp that just burns suits both.
bool seasons_differ(const plan::Room& room)
{
    constexpr double much_k = 2.0;
    return !room.winter.day_c || !room.summer.day_c || *room.summer.day_c - *room.winter.day_c > much_k;
}

std::vector<Family> families(const Wanted& wanted, const std::vector<double>& shares, const plan::Room& room)
{
    std::vector<std::optional<plan::DeviceKind>> heaters{std::nullopt};
    if (wanted.warm) {
        heaters.emplace_back(plan::DeviceKind::radiant_panel);
        heaters.emplace_back(plan::DeviceKind::ceramic_heater);
        heaters.emplace_back(plan::DeviceKind::heat_mat);
    }
    std::vector<Family> all;
    for (const double share : shares) {
        for (const auto& heater : heaters) {
            if (!wanted.basking) {
                all.push_back({.lamp = false, .dimmed = false, .heater = heater, .covered_share = share});
                continue;
            }
            all.push_back({.lamp = true, .dimmed = false, .heater = heater, .covered_share = share});
            if (seasons_differ(room)) {
                all.push_back({.lamp = true, .dimmed = true, .heater = heater, .covered_share = share});
            }
        }
    }
    return all;
}

using Places = std::vector<std::optional<Found>*>;

void keep_least_strained(Places& places, std::size_t most)
{
    std::stable_sort(places.begin(), places.end(),
                     [](const auto* a, const auto* b) { return (*a)->strain < (*b)->strain; });
    places.resize(std::min(places.size(), most));
}

// Of the outfits that strain least a few are refined, and the best of those on the assessment's own cells.
template <class MakeTuning> void refine_best(std::vector<std::optional<Found>>& tuned, const MakeTuning& make_tuning)
{
    constexpr std::size_t refined = 6;
    constexpr std::size_t polished = 2;
    constexpr int looks = 70;
    constexpr int sharp_looks = 40;
    Places best;
    for (std::optional<Found>& one : tuned) {
        const bool again = one && std::any_of(best.begin(), best.end(), [&](const auto* other) {
                               return (*other)->plan == one->plan; // covers that find no more room
                           });
        if (one && !again) {
            best.push_back(&one);
        }
    }
    keep_least_strained(best, refined);
    assess::side_by_side(best.size(),
                         [&](std::size_t i) { *best[i] = make_tuning().refined(std::move(**best[i]), looks); });
    keep_least_strained(best, polished);
    assess::side_by_side(best.size(),
                         [&](std::size_t i) { *best[i] = make_tuning().polished(std::move(**best[i]), sharp_looks); });
    for (std::optional<Found>& one : tuned) { // the others are not known as well
        if (std::find(best.begin(), best.end(), &one) == best.end()) {
            one.reset();
        }
    }
}

} // namespace

std::optional<std::vector<Found>> search(const plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place,
                                         std::stop_token stop)
{
    const std::vector<Family> all =
        families(wanted_by(plan, catalog, place), shares_of(plan, catalog, place), plan.site.room);
    std::vector<std::optional<Found>> tuned(all.size());
    assess::side_by_side(all.size(), [&](std::size_t i) {
        Tuning tuning(plan, catalog, place, stop);
        tuned[i] = tuning.tune(all[i]);
    });
    refine_best(tuned, [&] { return Tuning(plan, catalog, place, stop); });
    if (stop.stop_requested()) {
        return std::nullopt;
    }
    std::vector<Found> found;
    for (std::optional<Found>& one : tuned) {
        const bool again = one && std::any_of(found.begin(), found.end(), [&](const Found& other) {
                               return other.plan == one->plan; // two that came to the same
                           });
        if (one && !again) {
            found.push_back(std::move(*one));
        }
    }
    return found;
}

} // namespace loam::suggest
