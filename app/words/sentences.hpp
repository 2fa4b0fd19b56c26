// The tables of sentences and how their placeholders are filled. Internal to app/words.
//
// A template names what it needs in braces: "{short_by}" is a figure or a label of the code at hand, "{likely:percent}"
// a share shown in per cent, "{range}" and "{band}" the figure's range and its target. A part in square brackets is
// left out where something it names is not given.
#pragma once

#include <QString>
#include <QStringList>
#include <functional>
#include <optional>
#include <span>
#include <string_view>

#include "core/explain.hpp"

namespace loam::words {

// A row without verdict or direction serves all of them; the row that says most about the case at hand wins.
struct Sentence {
    const char* code;
    const char* text; // English, and the key of its translation
    std::optional<Verdict> verdict = std::nullopt;
    std::optional<Direction> direction = std::nullopt;
};

using Sentences = std::span<const Sentence>;

Sentences danger_sentences();
Sentences space_sentences(); // space, animals, materials, bed, stand
Sentences heat_sentences();
Sentences moisture_sentences();
Sentences reading_sentences(); // of the keeper's thermometers
Sentences record_sentences();  // of lengths and weights over time
Sentences light_sentences();
Sentences electricity_sentences();
Sentences money_sentences();
Sentences caution_sentences();
Sentences remedy_sentences();
Sentences rule_sentences();
Sentences drill_sentences(); // by the id of a course
Sentences need_sentences();
Sentences species_note_sentences();
Sentences file_problem_sentences(); // of core/json and core/plan: {0}, {1}, … are the problem's args
Sentences catalog_problem_sentences();
Sentences task_names(); // of the care calendar, by code
Sentences task_sentences();
Sentences need_kind_names();
Sentences input_names();
Sentences assumption_names();    // and inputs of the climate balance
Sentences narrowing_sentences(); // by the id of an input, or by its property
Sentences property_names();      // of a thing, {0}, in the climate balance

// nullptr where the code has no sentence.
const Sentence* find_sentence(Sentences table, std::string_view code, Judgement judgement = {});
const Sentence* find_finding_sentence(std::string_view code, Judgement judgement);

struct Filled {
    QString text;
    QStringList unfilled; // placeholders outside brackets that nothing was given for
};

using Lookup = std::function<std::optional<QString>(const QString& name, const QString& form)>;

Filled fill(const QString& sentence, const Lookup& lookup);

// The reader's language for a row's text.
QString translated(const char* text);

} // namespace loam::words
