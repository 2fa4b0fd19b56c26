// Every code that a task may carry, and the names of its amounts and labels; how to read an entry:
// core/assess/codes.hpp. app/words keeps a name and a sentence for each, and its test walks this list.
#pragma once

#include <array>

#include "core/assess/code_entry.hpp"

namespace loam::calendar {

inline constexpr auto task_codes = std::to_array<assess::CodeEntry>({
    // Every enclosure
    {"look-over"},
    {"change-water", "water conditioner?"}, // l of one filling of all bowls, ml for it
    {"top-up-bowls", "water"},              // l a day, between changes
    {"mist", "water times?"},               // l a day, in so many goes
    {"clean-mister", "water"},              // l a day that it draws
    {"water-bed", "water"},                 // l each time
    {"spot-clean"},
    {"disinfect"},
    {"turn-bed"},
    {"set-timer", "", "on off"}, // HH:MM
    {"outgrown"},
    {"quarantine-end", "days"},
    // Every group of animals
    {"feed-how-often", "", "food"},
    {"feed-prey", "prey", "food"},           // one for each animal
    {"stock-food", "food calcium?", "food"}, // a month's
    {"soak"},
    {"weigh-first"},
    {"weigh"},
    {"check-shell"}, // turtles and tortoises: beak, claws, shell
    {"check-lizard"},
    {"check-snake"},
    {"check-frog"},
    {"vet-first", "days"},
    {"vet-yearly", "visits"},
    // A winter rest that is planned
    {"rest-vet"},
    {"rest-begins"},
    {"rest-cold", "cold"},
    {"rest-weigh", "ask_below stop_below"},
    {"rest-warm-up"},
    {"rest-over"},
    // Equipment
    {"test-thermostat", "setpoint?"},
    {"read-uv"},
    {"test-residual-current"},
    {"test-smoke-alarm"},
    {"change-batteries"},
    {"change-cartridge", "life?"}, // l that it is good for
    {"replace-item", "", "item earliest"},
    {"replace-uv", "", "item earliest"}, // its UV fades before it is worn out
    {"replace-bed", "bed?", "item earliest"},
    // The plan itself
    {"renew-prices", "", "date"},
    {"renew-plan", "", "date"},
});

} // namespace loam::calendar
