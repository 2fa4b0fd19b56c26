// A rest in the cold, week by week: winding down, the cold itself, warming up; how much of the equipment runs
// meanwhile; and the weights at which it has to end.
#pragma once

#include <chrono>
#include <optional>
#include <vector>

#include "core/explain.hpp"

namespace loam::season {

enum class Stage { wind_down, cold, warm_up };

struct Span {
    double low = 0.0;
    double high = 0.0;
    friend bool operator==(const Span&, const Span&) = default;
};

struct Rest {
    std::chrono::sys_days begins; // the first day without food
    int wind_down_weeks = 3;
    int cold_weeks = 8;
    int warm_up_weeks = 1;
    Span usual_c; // of the cool side
    Span cold_c;
    friend bool operator==(const Rest&, const Rest&) = default;
};

std::chrono::sys_days cold_from(const Rest& rest);
std::chrono::sys_days cold_until(const Rest& rest); // the day warming up begins
std::chrono::sys_days ends(const Rest& rest);       // the first day of ordinary care

struct Week {
    int number = 1;
    Stage stage = Stage::wind_down;
    std::chrono::sys_days from;
    Span by_its_end_c;
    double running_share_at_end = 1.0;
    friend bool operator==(const Week&, const Week&) = default;
};

// What: the weeks of a rest. Method: the first half of winding down keeps the usual warmth, so that the gut empties
//   while it still works; in its second half warmth and light fall evenly to the cold, and rise evenly from it in
//   warming up. Range: weeks >= 1 each, otherwise empty. Source: common practice, no source.
std::vector<Week> weeks(const Rest& rest);

// What: share of the usual hours and heat on a day, 1 outside the rest, 0 in the cold. Method and source: weeks().
double running_share(const Rest& rest, std::chrono::sys_days day);

struct WeighIn {
    std::chrono::sys_days on;
    double ask_below_kg = 0.0;  // more lost than the month's share: ask a vet
    double stop_below_kg = 0.0; // end the rest
    friend bool operator==(const WeighIn&, const WeighIn&) = default;
};

// What: the days of weighing with the weights that count, in kg: when the cold begins, weekly in it, when it ends.
// Method: stop below (1 - stop_loss) of the weight at the beginning of the cold; ask below 1 - monthly_loss *
// days/30.44
//   of it, though never under the stop.
// Range: mass > 0, shares 0..1; otherwise empty.
// Source: stop at about 10 % (from memory), and about 1 % a month with 8 to 10 % in all as an alarm (a web page on
//   tortoises, n.d., secondary).
struct Losses {
    double stop = 0.08;
    double monthly = 0.01;
};
std::vector<WeighIn> weigh_ins(const Rest& rest, double mass_kg, const Losses& losses);

} // namespace loam::season
