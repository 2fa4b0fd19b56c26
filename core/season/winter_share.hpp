// How far a day of the year is from the winter case towards the summer case.
#pragma once

#include <optional>

namespace loam::season {

enum class Hemisphere { north, south };

// nullopt on the equator itself: it has no winter of its own.
std::optional<Hemisphere> hemisphere_of(double latitude_deg);

// The coldest days come this long after the shortest one.
struct Lag {
    double least_d = 0.0;
    double likely_d = 27.5;
    double most_d = 55.0;
};

// What: weight of the winter case on a day of the year (1 = 1 January), 0..1; that of the summer case is the rest.
// Method: w = (1 + cos(2 pi (d - d0) / 365)) / 2 with d0 = 355 + lag north of the equator and 172 + lag south of it
// (the
//   winter solstices). Over a year it is one half on average, whatever the lag.
// Range: day 1 to 366, otherwise nullopt. Rooms that a thermostat holds differ less by season: then both cases do too.
// Source: the cosine is our own simplification. Lag of the air behind the sun: 27.5 days on average over the
//   continental United States, Trenberth 1983, Bulletin of the American Meteorological Society 64:1276 (from memory);
//   nought to twice that is our own range.
std::optional<double> winter_share(Hemisphere hemisphere, int day_of_year, double lag_d = Lag().likely_d);

} // namespace loam::season
