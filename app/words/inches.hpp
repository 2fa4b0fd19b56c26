// Thin lengths as a US reader writes them: in common fractions of an inch, where one says it.
#pragma once

#include <QString>
#include <optional>

#include "app/words/numbers.hpp"

namespace loam::words {

// "3/8", "1 1/2"; nullopt where no fraction down to 32nds agrees with the figure to half a hundredth of an inch,
// which is as far as the decimals shown instead would tell it.
std::optional<QString> inch_fraction(double inches);

// The fraction, else decimals: hundredths, and thousandths under a tenth of an inch ("0.71", "0.039").
QString inches_text(double inches, const Formatter& formatter);
// Decimals alone, for an end of a range whose other end is no fraction.
QString decimal_inches(double inches, const Formatter& formatter);

} // namespace loam::words
