// Words for the year and for a rest in the cold.
#pragma once

#include <QString>
#include <QStringList>

#include "app/words/numbers.hpp"
#include "core/assess/assessment.hpp"

namespace loam::words {

QString month_name(int month, const Formatter& formatter); // 1..12, short: "Jan"
QString stage_name(season::Stage stage);                   // "winding down"
QString water_source(plan::WaterSource source);            // "from the tap"

// May it rest: "may be cooled", "must not be cooled", "not known".
QString answer(season::Answer answer);
// Why not, each as a clause.
QStringList bars(const std::vector<season::Bar>& bars);

// What to do in a stage, in a sentence.
QString stage_advice(season::Stage stage);

// How the months' figures come about, and why their ranges are as wide as they are.
QString how_months(bool hemisphere_known);

} // namespace loam::words
