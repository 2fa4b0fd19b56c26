// What would be, were more or less of the top covered and more or less misted: humidity and warmth together, since each
// moves the other.
#pragma once

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/assess/assess.hpp"

namespace loam::assess {

// What is tried; what is absent stays as it is planned.
struct Trial {
    std::optional<double> covered_share; // of the top, 0..1
    std::optional<double> misting_l_per_day;
    friend bool operator==(const Trial&, const Trial&) = default;
};

// Where the plan stands, and how far a trial may go.
struct TrialRoom {
    double covered_share = 0.0;      // of the top, as planned
    double most_covered_share = 0.0; // that a cover may take, clear of lamps and with a quarter left open; 0: none
                                     // fits, or the top is no mesh
    bool mesh = false;
    std::optional<double> misting_l_per_day; // as planned; absent: not stated, so that a bracket is assumed
    friend bool operator==(const TrialRoom&, const TrialRoom&) = default;
};
// nullopt where the plan has no such enclosure, or too little is known of it for a balance.
std::optional<TrialRoom> trial_room(const plan::Plan& plan, const catalog::Catalog& catalog,
                                    const std::string& enclosure);

// The plan as tried. In place of all covers there are others on `cover_places`, across the whole width and clear of
// what is hot: as much as the share asks for, but no more than may be. They are of the first one's material, else panes
// of glass; a pane may lie beside a tube of a few watts. nullopt as above.
std::optional<plan::Plan> with_trial(const plan::Plan& plan, const catalog::Catalog& catalog,
                                     const std::string& enclosure, const Trial& trial);

// What one case comes to at ground level.
struct TriedCase {
    std::string id; // "winter-day", "summer-day"
    Range relative_humidity;
    Range warm_c;
    Range cool_c;
    bool condensation = false;
    friend bool operator==(const TriedCase&, const TriedCase&) = default;
};

struct Tried {
    std::vector<TriedCase> now;  // as planned
    std::vector<TriedCase> then; // as tried; the same cases in the same order
    friend bool operator==(const Tried&, const Tried&) = default;
};

// Likely values are worked out anew; how wide the ranges are, to what level a dimmer is turned that the plan leaves
// open, and what readings told, are those of the plan. The workspace keeps the plan's own climate, so that a second
// trial of the same plan costs two balances. nullopt where `stop` was requested, or nothing can be solved.
std::optional<Tried> try_out(const plan::Plan& plan, const catalog::Catalog& catalog, const std::string& enclosure,
                             const Trial& trial, Workspace& workspace, std::stop_token stop = {});

} // namespace loam::assess
