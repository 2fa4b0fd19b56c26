// The phrases for labels that come from a closed list. Internal to app/words.
#pragma once

#include <QString>
#include <optional>
#include <string_view>

namespace loam::words {

// "winter-day" of the label "case" is "on a winter day". nullopt where the label is not of a closed list, or the value
// not on it.
std::optional<QString> label_word(std::string_view label, std::string_view value);

} // namespace loam::words
