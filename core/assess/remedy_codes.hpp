// What would cure a finding with the least change. How to read an entry: codes.hpp. `by` is the change, `to` the new
// value, `from` the present one.
#pragma once

#include <array>

#include "core/assess/code_entry.hpp"

namespace loam::assess {

inline constexpr auto remedy_codes = std::to_array<CodeEntry>({
    // Space and animals
    {"remedy.longer-box", "by to"}, // at the present width
    {"remedy.wider-box", "by to"},
    {"remedy.higher-box", "by to"},
    {"remedy.bigger-floor", "by to"}, // where length alone would be out of proportion; m2
    {"remedy.clear-floor", "by"},     // take away fittings of this footprint, m2
    {"remedy.add-hides", "count"},
    {"remedy.move-hide", "", "side"}, // warm, cool
    {"remedy.add-humid-hide", ""},
    {"remedy.fewer-animals", "to"},
    {"remedy.separate-enclosures", "count"},
    {"remedy.move-inside", "by", "fitting"},
    {"remedy.measure-again", ""},
    {"remedy.see-vet", ""},
    {"remedy.other-circuit-meanwhile", ""},
    // Bed and load
    {"remedy.deeper-bed", "by to"},
    {"remedy.shallower-bed", "to"},
    {"remedy.other-substrate", "", "material"},
    {"remedy.stronger-stand", "to by"}, // rated kg
    // Heat
    {"remedy.stronger-device", "from to", "device"},
    {"remedy.weaker-device", "from to", "device"},
    {"remedy.add-heat", "power"}, // W, over the warm side
    {"remedy.dim-device", "to", "device case?"},
    {"remedy.set-thermostat", "to", "device case?"},
    {"remedy.add-thermostat", "", "device"},
    {"remedy.place-probe", "", "device"},
    {"remedy.mat-to-wall", "", "device"},
    {"remedy.raise-lamp", "by to", "device"},
    {"remedy.lower-lamp", "by to", "device"},
    {"remedy.guard-lamp", "", "device"},
    {"remedy.move-lamp", "by", "device"}, // away from what scorches
    {"remedy.lamp-under-pane", "", "device"},
    {"remedy.lower-perch", "by", "fitting"},
    {"remedy.move-perch", "", "fitting"},
    {"remedy.cooler-room", "to by", "case"},
    {"remedy.warmer-room", "to by", "case"},
    {"remedy.shade-from-sun", ""},
    {"remedy.carry-to-warmth", "within"}, // hours from a fault
    {"remedy.carry-to-cool", "within"},
    {"remedy.night-heat", "power"}, // lightless, W
    {"remedy.measure-first", ""},   // the range is wider than the target
    {"remedy.several-changes", ""}, // none that was tried alone does it
    // Covers and moisture
    {"remedy.remove-cover", "", "cover"},
    {"remedy.move-cover", "by", "cover"},
    {"remedy.away-from-wall", "to", "device"}, // or a weaker lamp
    {"remedy.add-cover", "area fraction"},     // of the top, away from lamps
    {"remedy.more-misting", "to by", "case"},  // l a day
    {"remedy.less-misting", "to by", "case"},
    {"remedy.weaker-lamp-or-probe", ""},
    {"remedy.drier-bed", ""},
    {"remedy.dry-corner", ""},
    {"remedy.mist-less-or-air-more", ""},
    // Water and the cool season
    {"remedy.bigger-bowl", "by to", "fitting"},
    {"remedy.shallower-water", "to", "fitting"},
    {"remedy.deeper-water", "to", "fitting"},
    {"remedy.add-bowl", ""},
    {"remedy.treat-water", ""},
    {"remedy.no-cool-season", "", "animal"},
    {"remedy.vet-check", "", "animal"},
    {"remedy.shorter-rest", "to", "animal"},
    // Light
    {"remedy.add-uv-lamp", "zone"},
    {"remedy.measure-uv", "distance", "device"},
    {"remedy.other-uv-lamp", "times", "device"}, // times its UV, from its place
    {"remedy.replace-lamp", "", "device"},       // a new one of the same kind would do
    {"remedy.change-times", "to by"},            // hours of light
    {"remedy.timer-for-light", "", "device"},
    // Electricity
    {"remedy.less-load", "by"},
    {"remedy.other-circuit", "by"}, // move this many W
    {"remedy.more-outlets", "count", "supply"},
    {"remedy.plug-into-wall", "", "strip"},
    {"remedy.add-residual-current-protection", "", "strip"},
    {"remedy.undimmed", "", "device"},
    {"remedy.dimming-thermostat", "", "device"},
    {"remedy.always-on-supply", "", "device"},
    {"remedy.drip-loop", ""},
    {"remedy.heat-rated-holder", "", "device"},
    {"remedy.stronger-holder", "to", "device"},  // rated W
    {"remedy.stronger-control", "to", "device"}, // likewise
    // Answers that only the keeper can give: `where` is the JSON Pointer to fill in
    {"remedy.state", "", "where"},
    {"remedy.add-prices", "", "needs"},
    {"remedy.other-price-list", "", "currency"},
    {"remedy.put-back", "", "need"},
});

} // namespace loam::assess
