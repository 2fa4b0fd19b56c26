// What the "why?" pane says of a row, whichever table the row stands in.
#pragma once

#include <QMetaType>
#include <QString>
#include <optional>

#include "app/words/speaker.hpp"
#include "core/explain.hpp"

namespace loam::desk {

struct Explanation {
    QString title;
    std::optional<Judgement> judgement;
    QString verdict_words;
    QString remedy;
    QString how;    // rule or equation
    QString inputs; // the numbers that went in
    QString source; // with its confidence
    QString where;  // plan element id or JSON Pointer
    QString enclosure;
};

Explanation explanation_of(const Finding& finding, const words::Speaker& speaker);

// Items of the result tables carry their explanation under this role.
inline constexpr int explanation_role = Qt::UserRole + 1;

} // namespace loam::desk

Q_DECLARE_METATYPE(loam::desk::Explanation)
