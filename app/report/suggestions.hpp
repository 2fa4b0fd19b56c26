// What `loamstead-cli suggest` found, for programs and for people.
#pragma once

#include <QString>
#include <QStringList>
#include <string>

#include "app/words/speaker.hpp"
#include "core/suggest/suggest.hpp"

namespace loam::report {

struct Suggestions {
    const suggest::Result& result;
    QStringList files; // where each suggestion was written, in their order; empty: they were not
};

std::string suggestions_json(const Suggestions& suggestions, const catalog::Catalog& catalog,
                             const words::Formatter& formatter);
QString text_suggestions(const Suggestions& suggestions, const catalog::Catalog& catalog,
                         const words::Formatter& formatter);

// In two lines: what it is best in and costs, and what it consists of; where it does not meet every target a third one
// with the most serious thing that stands in the way.
QString suggestion_in_short(const suggest::Suggestion& suggestion, const catalog::Catalog& catalog,
                            const words::Formatter& formatter);

// "cheapest-to-buy", "cheapest-over-years", "widest-margin".
const char* merit_id(suggest::Merit merit);

} // namespace loam::report
