// One row of the list: who it is for, and the template with what the row says.
#pragma once

#include <QByteArray>
#include <QString>
#include <vector>

#include "app/batch/list.hpp"
#include "app/words/units.hpp"
#include "core/catalog/catalog.hpp"
#include "core/plan/plan.hpp"

namespace loam::batch {

// What all rows have in common.
struct Template {
    const plan::Plan& plan;
    const catalog::Catalog& catalog;         // species and items that rows may name
    std::vector<plan::OwnedItem> lent{};     // by the club to each adopter
    QString language = QStringLiteral("en"); // of rows that don't say
    words::UnitSystem units = words::UnitSystem::metric;
};

struct Adopter {
    std::size_t row = 0;
    QString name; // and number; for the sheets and the file's name, never for a log
    QString language;
    words::UnitSystem units = words::UnitSystem::metric;
    plan::Plan plan;                  // good where there are no problems
    std::vector<RowProblem> problems; // by row and column
    QByteArray fingerprint;           // of all that the row says; others that say the same have the same
};

// Every problem of the row at once: of its form, of its cells, and what the plan's own reader refuses.
Adopter adopter_of(const AdopterList& list, const catalog::csv::Row& row, const Template& shared);

} // namespace loam::batch
