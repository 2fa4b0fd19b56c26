// What the elements and fields of a plan are called. Internal to app/words.
#pragma once

#include <QString>
#include <optional>
#include <string_view>

#include "core/plan/plan.hpp"

namespace loam::words {

// "flood lamp d1", "hide f2"; an enclosure by its own name. nullopt where no element has this id.
std::optional<QString> element_name(const plan::Plan& plan, std::string_view id);

// Where a JSON Pointer into a plan leads, in words.
struct PlaceWords {
    QString box;    // the enclosure's name; empty outside of all
    QString within; // "flood lamp d1, beam angle"; empty for the enclosure itself
};
PlaceWords place_words(const plan::Plan& plan, const std::string& pointer);

// Both in one: "Front room box, flood lamp d1".
QString joined(const PlaceWords& place);
// The same at once: "room, heat wave" for "/site/room/heat_wave_c".
QString pointer_words(const plan::Plan& plan, const std::string& pointer);

// "temperature in a heat wave" for the key "heat_wave_c"; nullopt where the key is not one of a plan's.
std::optional<QString> field_name(std::string_view key);

} // namespace loam::words
