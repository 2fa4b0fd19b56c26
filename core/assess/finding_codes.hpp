// What can be found. How to read an entry: codes.hpp.
#pragma once

#include <array>

#include "core/assess/code_entry.hpp"

namespace loam::assess {

inline constexpr auto finding_codes = std::to_array<CodeEntry>({
    // Dangers. Verdict `danger` where the limit is crossed by either end, `tight` or `falls short` where said,
    // `not known` where what decides it is not given.
    // A cover within the clearance of a lamp: danger if combustible, falls short if not. Label combustible: yes, no.
    {"danger.cover-near-lamp", "distance clearance short_by", "lamp cover material combustible"},
    // A wall, base or top of combustible material within the clearance of a lamp.
    {"danger.shell-near-lamp", "distance clearance short_by", "lamp part material"},
    // Where an animal gets by digging above a mat: tight above 35 degC, danger above 43 degC, at the range's high end.
    {"danger.mat-under-bed", "low likely high warn max over_by", "mat case regulated"},
    // A pane with a mat on it.
    {"danger.mat-on-pane", "low likely high max over_by", "mat case"},
    // A wall beside a lamp, as high up as an animal reaches: what it bears for ten minutes.
    {"danger.wall-near-lamp", "low likely high max over_by height", "case lamp"},
    // The nearest point that an animal reaches (perch or hide roof plus the height of its back).
    {"danger.climbing-reach", "reach gap needed short_by", "lamp standing_on"},
    // An unguarded lamp or heater that burns at touch, inside the box and within reach.
    {"danger.unguarded-lamp", "reach gap", "lamp standing_on"},
    // Danger for yes; not known where absent or unknown.
    {"danger.sun-through-glass", "", "answer"},
    // The bed under a lamp dries and heats more: touchable surface against the burn limit, bed dry.
    {"danger.day-peak", "low likely high max over_by hour", "course"},
    {"danger.lamp-dried-surface", "low likely high max over_by", "case lamp? on?"}, // on: the fitting it is of
    // Any other touchable surface.
    {"danger.touch-burn", "low likely high max over_by", "case"},
    // The coolest place is hotter, or the warmest colder, than the body bears. Direction says which.
    {"danger.no-escape-from-heat", "low likely high max over_by", "case species"},
    {"danger.no-escape-from-cold", "low likely high min short_by", "case species"},
    // Hours until the least extreme place passes what the body bears. Cases: the drills.
    {"danger.drill", "limit earliest likely?", "case species"},
    {"danger.circuit", "low likely high max over_by rating voltage", "circuit"},
    {"danger.strip", "low likely high max over_by rating voltage", "strip"},
    {"danger.lamp-holder", "low likely high max over_by", "device"},
    {"danger.control-overload", "low likely high max over_by", "device"},
    {"danger.stand", "low likely high max over_by", "stand"},
    {"danger.uv-too-strong", "low likely high max over_by distance", "lamp species"},

    // Space
    {"space.floor-now", "floor usable min short_by animals length", "rule rule_title rule_kind species"},
    {"space.floor-grown", "floor usable min short_by animals length years_fast? years_slow?",
     "rule rule_title rule_kind species"},
    {"space.floor-not-known", "floor", "rule rule_title species missing"},
    {"space.no-rule", "floor", "species"},
    {"space.laboratory-only", "floor min", "rule rule_title species"},
    {"space.outgrown", "years_fast years_slow?", "rule rule_title species"},
    // A side that the rule itself fixes. side_name: long, short.
    {"space.rule-side", "side min short_by", "rule rule_title rule_kind species side_name"},
    {"space.side-short-of-body", "side body short_by", "side_name species"},
    {"space.turning-width", "width min short_by", "species"},
    {"space.height", "height min short_by", "rule? species"},
    {"space.gradient-short", "length min short_by"},
    {"space.hides-too-few", "hides min short_by animals"},
    {"space.hide-warm-missing", ""},
    {"space.hide-cool-missing", ""},
    {"space.hide-humid-missing", "", "species"},
    {"space.fitting-outside", "over_by", "fitting"},

    // Animals
    {"animals.none", ""},
    {"animals.one-is-valid", "", "species"}, // a note: keeping one is sound
    {"animals.second-of-solitary", "animals", "species"},
    {"animals.mixed-species", "species_count", "species other_species"},
    {"animals.rival-males", "males", "species"},
    {"animals.sex-not-known", "animals", "species"},
    {"animals.species-not-known", "", "species"},

    // Materials and bed
    {"material.not-known", "", "material part"},
    {"substrate.none", ""},
    {"substrate.unsuited", "", "material species best"},
    {"substrate.too-shallow", "depth min short_by", "species"},
    {"substrate.fills-box", "depth height"},

    // Stand
    {"stand.rating-not-known", "low likely high", "stand"},
    {"stand.not-named", "low likely high"},

    // Climate. Cases: winter-day winter-night summer-day summer-night heat-wave mat-stuck-on.
    {"heat.basking", "low likely high min? max? short_by? over_by?", "case species measure limited_by"},
    {"heat.warm-side", "low likely high min? max? short_by? over_by?", "case species measure limited_by"},
    {"heat.cool-side", "low likely high min? max? short_by? over_by?", "case species measure limited_by"},
    {"heat.night", "low likely high min? max? short_by? over_by?", "case species measure limited_by"},
    {"heat.heat-wave", "low likely high min? max? short_by? over_by?", "case species measure limited_by"},
    {"heat.not-converged", "residual", "case"},
    {"heat.target-not-known", "", "zone species"},
    {"heat.course-not-known", "", "course"},           // course: winter summer warm-up and the drills
    {"heat.not-computable", "", "reason"},             // reason: material-not-known, box-not-physical, power-not-known
    {"heat.device-saturated", "power", "device case"}, // at its limit and the thermostat's setpoint is not met
    {"humidity.level", "low likely high min? max? short_by? over_by? misting?", "case species measure"},
    {"humidity.not-known", "", "case"},
    {"humidity.target-not-known", "", "species"},
    {"humidity.condensation", "pane dew_point?", "case"},
    {"humidity.no-dry-retreat", "likely max", "season species"},
    {"humidity.misting-not-stated", ""},
    {"moisture.bed-gains-water", "by"},

    // Readings of the keeper's thermometers
    // low likely high: what the other readings and the box make expected. measure: surface, ground, operative.
    {"reading.inconsistent", "low likely high value deviations", "reading measure"},
    {"reading.outside-box", "", "reading"},
    {"reading.lamps-not-stated", "", "reading"},
    {"reading.dimmer-not-stated", "", "reading"},                 // a dimmer was on, at no stated level
    {"reading.other-conditions", "room alike_within", "reading"}, // a note: no case is like those it was taken in
    {"readings.too-few", "count needed"},                         // a note
    {"readings.do-not-fit", "count chi_square chance"},           // all together, none of them by itself
    {"readings.not-computable", ""},

    // Water
    // side_name: long, short. The bowl that comes nearest is named.
    {"water.bowl-small", "side min short_by", "fitting species side_name"},
    {"water.bowl-deep", "low likely high max over_by", "fitting species"},
    {"water.bowl-shallow", "low likely high min short_by", "fitting species"},
    // Deeper than the smallest animal is high. Danger where stated; not known where only the bracket says so.
    {"danger.drowning", "low likely high max over_by", "fitting species"},
    {"water.no-bowl", "", "species"},
    {"water.not-treated", "", "species"}, // tap water without conditioner, for an amphibian
    {"water.filter-life-not-known", "likely", ""},

    // Rest in the cold. reason: species-does-not-rest ill underweight first-winter
    {"danger.cool-season", "", "animal species reason"},
    // reason: health-not-stated age-not-stated weight-not-stated cold-not-known date-not-a-day over
    {"cool-season.not-known", "", "animal species reason"},
    {"cool-season.vet-check", "days", "animal species answer"}, // answer: absent, no (not in time)
    {"cool-season.too-long", "weeks max over_by", "animal species"},
    {"caution.cool-season-plan", "min max stop", "animal species begins cold_from cold_until ends"}, // a note
    {"caution.cool-season-place", "min max room?", "animal species"},                                // a note

    // Lengths and weights over time. min and max: what the first length and the rates make expected
    {"record.growth", "length min max?", "animal species"},
    {"record.weight-loss", "lost from to days max", "animal date"},
    {"record.not-used", "", "animal day reason"}, // reason: date-not-a-day, date-to-come

    // Light
    {"uv.level", "low likely high min? max? short_by? over_by? distance", "lamp species"},
    {"uv.not-known", "distance?", "lamp? reason"}, // reason: no-table, too-near, too-far, age-unknown, off-beam
    // On what it can climb, or beside the basking place. standing_on: a fitting's id, or bed.
    {"uv.strong-elsewhere", "low likely high max over_by", "lamp species standing_on"},
    {"uv.nearest-not-known", "distance", "lamp standing_on"}, // nearer than its readings reach
    {"uv.read-after-age", "burnt_when_read burnt",
     "lamp"}, // its readings are said to be of a later hour than it has burnt
    {"uv.no-lamp", "", "species"},
    {"uv.blocked", "", "lamp cover"}, // a pane or opaque cover between lamp and animal
    {"uv.not-needed", "likely?", "lamp"},
    {"uv.no-shade", "likely", "lamp"},
    {"uv.compact-caution", "", "lamp"},
    {"photoperiod.hours", "likely min? max? short_by? over_by?", "species"},
    {"photoperiod.not-stated", ""},
    {"photoperiod.sky-not-known", "", "reason"}, // reason: latitude-not-stated sheets-without-hours
    {"photoperiod.light-at-night", "", "lamp"},
    {"photoperiod.bad-times", "", "on off"},

    // Two boxes run while the new one is proved; notes. carrier: a circuit or strip
    {"proving.both-run", "daily days_min days_max energy_min energy_max", "old new"},
    {"proving.overload-meanwhile", "both afterwards", "carrier"},

    // Electricity
    {"circuit.load-not-known", "likely", "circuit"}, // what else hangs on it is not stated
    {"circuit.near-limit", "low likely high max over_by rating voltage", "circuit"},
    {"strip.rating-not-known", "likely", "strip"},
    {"strip.near-limit", "low likely high max over_by rating voltage", "strip"},
    {"strip.outlets-short", "used outlets short_by", "strip supply"},
    {"strip.outlets-not-known", "used", "strip supply"},
    {"strip.daisy-chain", "", "strip fed_from"},
    {"strip.no-residual-current-protection", "", "strip"},
    {"strip.residual-current-protection-not-stated", "", "strip"},
    {"strip.circuit-not-known", "", "strip circuit"},
    {"device.no-strip", "power", "device"},
    {"device.supply-not-stated", "", "device"},
    {"device.power-not-stated", "low likely high", "device kind"},
    {"control.dimmer-unsuited", "", "device kind load"},
    {"control.thermostat-unsuited", "", "device kind load"},
    {"control.on-off-with-lamp", "", "device kind"},
    {"control.heater-unregulated", "power", "device kind"},
    {"control.thermostat-without-probe", "setpoint?", "device kind"},
    {"control.thermostat-without-setpoint", "", "device kind"},
    {"control.mat-on-timer", "", "device"},
    {"electrical.water-near-mains", "", "reason"}, // reason: bowl-under-device, mister, water-present
    {"electrical.lamp-holder", "power", "device"},

    // Money
    {"money.currency-mismatch", "", "plan_currency list_currency"},
    {"money.unpriced", "count", "needs"},
    {"money.no-tariff", "kwh_per_year"},
    {"money.prices-illustrative", "", "date"},
    {"money.prices-old", "age_months", "date"},
    {"money.owned-not-in-list", "quantity", "item"},
    {"money.too-large", ""},
    {"money.below-minimum", "goods", "channel"},
    {"money.channel-not-in-list", "", "channel"},
    {"money.wish-idle", "", "need item"}, // item: "-" where the need was to be left out
    {"money.left-out", "", "need"},
    {"money.safety-left-out", "", "need"},

    // Cautions: `fits`, shown apart from verdicts
    {"caution.salmonella", ""},
    {"caution.law", "", "species jurisdiction"},
    {"caution.vet", ""},
    {"caution.electrician", ""},
    {"caution.structure", ""},
    {"caution.quarantine", "days_min", "resident"}, // resident: yes where other animals live at the site
    {"caution.test-run", "days_min"},
    {"caution.brumation", "", "species"},
    {"caution.lifespan", "years_min? years_max?", "species"},
    {"caution.species", "", "note species"}, // one per note of a species sheet
});

} // namespace loam::assess
