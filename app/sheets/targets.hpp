// What readings of an enclosure should be, and are expected to be, as texts for proving sheet and holiday card.
#pragma once

#include <QString>
#include <string_view>
#include <vector>

#include "app/words/numbers.hpp"
#include "core/assess/assessment.hpp"

namespace loam::sheets {

// Zones that some species here asks for, each once: basking spot, warm side, cool side.
std::vector<assess::Zone> zones_of(const assess::EnclosureResult& enclosure);

// "27–29 °C"; of several species each that differs. Empty where the case has none.
QString target_of(const assess::EnclosureResult& enclosure, std::string_view case_id, assess::Zone zone,
                  const words::Formatter& formatter);
// "24.5–28.8 °C"; empty where it is not known.
QString expected_of(const assess::EnclosureResult& enclosure, std::string_view case_id, assess::Zone zone,
                    const words::Formatter& formatter);

// The same of the humidity at ground level on the cool side.
QString humidity_target_of(const assess::EnclosureResult& enclosure, std::string_view case_id,
                           const words::Formatter& formatter);
QString humidity_expected_of(const assess::EnclosureResult& enclosure, std::string_view case_id,
                             const words::Formatter& formatter);

// "Basking spot, surface": the zone and where its thermometer reads.
QString column_head(const assess::EnclosureResult& enclosure, assess::Zone zone);

} // namespace loam::sheets
