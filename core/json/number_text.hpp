// Numbers as JSON literals and back, whatever the locale.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace loam::json {

// The shortest decimal that reads back as the same double; an exponent only below 1e-6 and from 1e15 on.
// Empty where the value is not finite; -0 gives "0".
std::string number_text(double value);

// nullopt where the literal is not a number or does not fit a double; what is too small for one gives 0.
std::optional<double> double_of(std::string_view literal);

// The whole number that the literal means ("5", "5.0", "5e0"); nullopt for a fraction or one beyond 2^53.
std::optional<std::int64_t> integer_of(std::string_view literal);

} // namespace loam::json
