// What a published rule asks for a group of animals, and whether a box gives it.
#pragma once

#include <optional>
#include <vector>

#include "core/space/area_formula.hpp"

namespace loam::space {

// Animals of one species and about one size, in the rule's own body measure.
struct BodyGroup {
    int count = 1;
    double body_m = 0.0;
    friend bool operator==(const BodyGroup&, const BodyGroup&) = default;
};

struct Demand {
    double area_m2 = 0.0;
    std::optional<double> length_m; // where the rule fixes sides
    std::optional<double> width_m;
    std::optional<double> height_m;
    std::optional<double> every_side_m; // no side of the floor may be shorter than the animal itself
    int animals = 0;
    double largest_body_m = 0.0;
    friend bool operator==(const Demand&, const Demand&) = default;
};

// What: floor area (m2) and sides (m) that a rule asks for these animals together.
// Method: the counts of all groups are summed and the largest body sets the multiples or the class (the reading of
//   Swiss Animal Protection Ordinance SR 455.1, Annex 2, preliminary remark A, for mixed sizes; it never asks for
//   less than another reading). SizeMultiple: area = length factor * width factor * body^2, each further animal adds
//   its share of that. SizeClasses: the first class whose upper end holds the body (an end belongs to its class).
//   Where the body is measured without the tail (carapace, snout to vent), no side may be shorter than the body.
// Range: at least one animal, bodies > 0. nullopt: no animals, a body beyond the last class, or more animals than the
//   rule says anything about (it covers k and names no addition for the k+1st): not known, not "the same again".
// Source: each rule's own; the form of the sums from BMEL 1997 (8 x 4 for two, +10 %, +20 %), the New South Wales code
//   of 2013 (+50 %, +20 %), Directive 2010/63/EU Annex III tables 9 and 10.
std::optional<Demand> demand(const AreaFormula& formula, BodyMeasure measure, const std::vector<BodyGroup>& animals);

// What a box offers. `area_m2` is the floor that counts, at most length * width.
struct Offer {
    double length_m = 0.0;
    double width_m = 0.0;
    double height_m = 0.0;
    double area_m2 = 0.0;
    friend bool operator==(const Offer&, const Offer&) = default;
};

enum class Lack { area, long_side, short_side, height, body_side };

struct Shortfall {
    Lack what = Lack::area;
    double has = 0.0; // m2 or m
    double needs = 0.0;
    friend bool operator==(const Shortfall&, const Shortfall&) = default;
};

// Each respect in which the box misses the demand; empty where it meets it. The long side of the box is compared with
// the longer of the two sides asked for, whichever way the box is turned. A miss below 1e-9 m or m2 is rounding.
std::vector<Shortfall> shortfalls(const Offer& offer, const Demand& demand);

inline bool meets(const Offer& offer, const Demand& demand)
{
    return shortfalls(offer, demand).empty();
}

struct Sides {
    double length_m = 0.0;
    double width_m = 0.0;
    double height_m = 0.0;
    friend bool operator==(const Sides&, const Sides&) = default;
};

// What: the least length (m) that meets the floor demand at the width of `offer`, with the same area lost to fittings.
// nullopt: no length does, since the width itself is below the shorter side asked for.
std::optional<double> length_needed_m(const Offer& offer, const Demand& demand);

// What: the box (m) that meets the demand and grows least from `offer`: the present width is kept where it can be,
// otherwise it becomes the shorter side asked for; no side shrinks. The area lost to fittings stays the same.
Sides smallest_box(const Offer& offer, const Demand& demand);

} // namespace loam::space
