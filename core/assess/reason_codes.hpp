// By what rule something was found, and why something is to be bought. How to read an entry: codes.hpp.
// A finding's inputs are listed with the finding; a rule has none of its own.
#pragma once

#include <array>

#include "core/assess/code_entry.hpp"

namespace loam::assess {

inline constexpr auto rule_codes = std::to_array<CodeEntry>({
    {"rule.floor-area"},       // the published rule named by label `rule`
    {"rule.growth"},           // the sheet's published growth, slow and fast bound
    {"rule.body-length-side"}, // every side at least the body's own length
    {"rule.turning-width"},    // the clear width in which the animal turns
    {"rule.gradient-length"},  // a side under 0.6 m is hard to grade
    {"rule.hides-one-more"},   // one hide more than animals, a warm and a cool one
    {"rule.species-sheet"},    // the sheet's own band
    {"rule.one-species"},      // one species per enclosure
    {"rule.social"},           // the sheet's word on company
    {"rule.material-list"},    // only what the catalog knows can be computed
    {"rule.rated-load"},       // the maker's rating
    {"rule.heat-balance"},     // the coupled balance of heat and moisture
    {"rule.readings"},         // the most probable inputs, given what was read
    {"rule.burn-threshold"},   // long contact with a hot surface
    {"rule.mat-limit"},        // a floor that an animal lies on for long
    {"rule.body-limit"},       // what the body bears
    {"rule.clearance"},        // the maker's distance, else the cautious default
    {"rule.reach"},            // the nearest point an animal reaches
    {"rule.sun-through-glass"},
    {"rule.moisture-balance"},
    {"rule.dew-point"},
    {"rule.dry-retreat"},
    {"rule.bowl-size"},        // to get in, to turn round, to lie coiled
    {"rule.water-depth"},      // the sheet's depth over the body's length
    {"rule.bed-water"},        // what is misted and drips back against what evaporates
    {"rule.water-treatment"},  // chlorine, filters, reverse osmosis
    {"rule.growth-record"},    // published growth from the first length that was measured
    {"rule.weight-loss"},      // against the greatest weight of the year before
    {"rule.cool-season"},      // who may rest in the cold, and how
    {"rule.uv-zone"},          // Ferguson zone
    {"rule.uv-measured-only"}, // never from watts, never outside the lamp's table
    {"rule.uv-through-pane"},
    {"rule.photoperiod"},
    {"rule.dark-at-night"},
    {"rule.continuous-load"}, // 80 % of the rating for what runs three hours or more
    {"rule.outlet-count"},
    {"rule.no-daisy-chain"},
    {"rule.residual-current"},
    {"rule.load-kind"}, // what a dimmer or thermostat may feed
    {"rule.probe"},     // a thermostat regulates only where its probe is
    {"rule.water-and-mains"},
    {"rule.heat-rated-holder"},
    {"rule.stated-by-keeper"}, // only the keeper can know
    {"rule.wish"},             // the keeper changes the bill of needs
    {"rule.price-list"},
    {"rule.price-age"}, // a list older than a year
    {"rule.hygiene"},
    {"rule.law"},
    {"rule.care"},
    {"rule.quarantine"},
    {"rule.test-run"},
});

// ShoppingLine::why.
inline constexpr auto need_codes = std::to_array<CodeEntry>({
    {"need.shell"}, // the box itself
    {"need.stand"},
    {"need.device"},     // a lamp, heater, mister or fan of the plan
    {"need.spare-lamp"}, // one spare of each lamp that an animal's warmth or UV hangs on
    {"need.holder"},     // each lamp's heat-rated holder, fixture or ballast
    {"need.guard"},
    {"need.control"}, // dimmer or thermostat of a device
    {"need.timer"},   // one per strip with timed devices, or one where no strip is named
    {"need.strip"},   // by outlets
    {"need.residual-current"},
    {"need.thermometers"}, // warm and cool end
    {"need.infrared"},     // surfaces are read with it
    {"need.hygrometer"},
    {"need.substrate"}, // litres to fill in, before settling
    {"need.cover"},
    {"need.fitting"},
    {"need.own-line"},         // the keeper's own
    {"need.conditioner"},      // a year's worth
    {"need.filter-cartridge"}, // likewise, by volume
    {"need.scale"},
    {"need.quarantine"},
    {"need.disinfectant"},
    {"need.gloves"},
    {"need.food"}, // the first month
    {"need.calcium"},
    {"need.vet"}, // the first year's visit
});

} // namespace loam::assess
