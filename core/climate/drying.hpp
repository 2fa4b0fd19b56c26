// How a damp bed gives off less the more of its water is gone.
#pragma once

namespace loam::climate {

// Water that the upper part of a bed can lose to the air, mm (kg/m2).
struct BedStore {
    double total_mm = 0.0;
    double readily_mm = 0.0; // of that, what it loses as fast as when freshly wetted
};

// Share of its wet rate at which a bed still evaporates when `lost_mm` are gone: 1 up to what is readily lost, from
// there straight down to 0. Range: 0 <= readily < total; lost below 0 or beyond total counts as the end itself.
// Source: Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56, eq. 74 (from memory; that it is this
// equation is confirmed by the documentation of an open implementation).
double drying_share(const BedStore& store, double lost_mm);

// What is lost after `days` more at a wet rate that stays as it is; a rate below 0 wets the bed again, at most to where
// nothing is lost. Method: the differential equation of eq. 74, solved in closed form stage by stage.
double lost_after(const BedStore& store, double lost_mm, double wet_rate_mm_d, double days);

} // namespace loam::climate
