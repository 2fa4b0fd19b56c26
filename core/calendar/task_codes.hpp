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
    {"feed-how-often", "", "species food"},
    {"feed-prey", "prey", "species food"},              // one for each animal
    {"stock-food", "monthly calcium?", "species food"}, // a month's
    {"soak", "", "species"},
    {"weigh-first", "", "species"},
    {"weigh", "", "species"},
    {"check-shell", "", "species"}, // turtles and tortoises: beak, claws, shell
    {"check-lizard", "", "species"},
    {"check-snake", "", "species"},
    {"check-frog", "", "species"},
    {"vet-first", "days", "species"},
    {"vet-yearly", "visits", "species"},
    // A winter rest that is planned
    {"rest-vet", "", "species"},
    {"rest-begins", "", "species"},
    {"rest-cold", "cold", "species"},
    {"rest-weigh", "ask_below stop_below", "species"},
    {"rest-warm-up", "", "species"},
    {"rest-over", "", "species"},
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
