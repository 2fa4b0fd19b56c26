#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"space.floor-now",
     QT_TRANSLATE_NOOP("sentences", "Floor for the animals as they are: {usable} can be walked on, and “{rule_title}” "
                                    "({rule_kind}) asks for {min}.")},
    {"space.floor-now",
     QT_TRANSLATE_NOOP(
         "sentences",
         "The floor of {floor} is too small for the animals as they are: “{rule_title}” ({rule_kind}) asks for "
         "{min}, which is {short_by} more."),
     Verdict::falls_short},
    {"space.floor-grown",
     QT_TRANSLATE_NOOP("sentences", "Floor for the animals once grown: {usable} can be walked on, and “{rule_title}” "
                                    "({rule_kind}) asks for {min}.")},
    {"space.floor-grown",
     QT_TRANSLATE_NOOP("sentences",
                       "The floor will be too small for the animals once grown: {usable} can be walked on, "
                       "and “{rule_title}” ({rule_kind}) asks for {min}, which is {short_by} more.[ This "
                       "may come in {years_fast}.]"),
     Verdict::falls_short},
    {"space.floor-not-known",
     QT_TRANSLATE_NOOP("sentences", "Whether the floor of {floor} is large enough is not known: “{rule_title}” needs "
                                    "{missing} ({species}).")},
    {"space.no-rule",
     QT_TRANSLATE_NOOP("sentences", "No published rule for floor space is on file ({species}). The floor of {floor} is "
                                    "not judged.")},
    {"space.laboratory-only",
     QT_TRANSLATE_NOOP("sentences",
                       "Only a laboratory minimum is on file ({species}): “{rule_title}” asks for {min}, and "
                       "the floor has {floor}. Such a minimum does not show that an animal has enough.")},
    {"space.outgrown",
     QT_TRANSLATE_NOOP("sentences", "By “{rule_title}” the box may be outgrown in {years_fast}[, at slow growth in "
                                    "{years_slow}] ({species}).")},
    {"space.rule-side",
     QT_TRANSLATE_NOOP("sentences", "The {side_name} is {side}, and “{rule_title}” ({rule_kind}) asks for {min}.")},
    {"space.rule-side",
     QT_TRANSLATE_NOOP(
         "sentences",
         "The {side_name} is {side}, and “{rule_title}” ({rule_kind}) asks for {min}, which is {short_by} more."),
     Verdict::falls_short},
    {"space.side-short-of-body",
     QT_TRANSLATE_NOOP("sentences",
                       "The {side_name} is {side}, and the animal is {body} long ({species}). No side should "
                       "be shorter than its body: {short_by} more is needed.")},
    {"space.turning-width",
     QT_TRANSLATE_NOOP("sentences", "The clear width is {width}, and turning round takes {min} ({species}): {short_by} "
                                    "more is needed.")},
    {"space.turning-width",
     QT_TRANSLATE_NOOP("sentences", "The clear width is {width}, and turning round takes {min} ({species})."),
     Verdict::fits},
    {"space.height",
     QT_TRANSLATE_NOOP("sentences",
                       "The height over the bed is {height}, and {min} is asked for ({species}): {short_by} "
                       "more is needed.")},
    {"space.height",
     QT_TRANSLATE_NOOP("sentences", "The height over the bed is {height}, and {min} is asked for ({species})."),
     Verdict::fits},
    {"space.gradient-short",
     QT_TRANSLATE_NOOP("sentences", "The box is {length} long. With less than {min}, a warm and a cool end are hard to "
                                    "keep apart.")},
    {"space.hides-too-few",
     QT_TRANSLATE_NOOP("sentences", "Number of hides: {hides}. At least {min} are advised, one more than animals.")},
    {"space.hide-warm-missing",
     QT_TRANSLATE_NOOP("sentences", "There is no hide on the warm side. Without one, an animal must choose between "
                                    "warmth and cover.")},
    {"space.hide-cool-missing",
     QT_TRANSLATE_NOOP("sentences", "There is no hide on the cool side. Without one, an animal must choose between "
                                    "cooling down and cover.")},
    {"space.hide-humid-missing",
     QT_TRANSLATE_NOOP("sentences", "There is no humid hide. This species needs one ({species}).")},
    {"space.fitting-outside", QT_TRANSLATE_NOOP("sentences", "{fitting} sticks out of the box by {over_by}.")},

    {"animals.none",
     QT_TRANSLATE_NOOP("sentences", "No animals are entered, so nothing can be judged against their needs.")},
    {"animals.one-is-valid", QT_TRANSLATE_NOOP("sentences", "Keeping a single animal is a sound choice ({species}).")},
    {"animals.second-of-solitary",
     QT_TRANSLATE_NOOP("sentences", "Animals of this species live best alone ({species}). Entered here: {animals}.")},
    {"animals.mixed-species",
     QT_TRANSLATE_NOOP("sentences",
                       "Several species share this box ({species}, {other_species}). Their needs and germs "
                       "differ: one box should hold one species.")},
    {"animals.rival-males",
     QT_TRANSLATE_NOOP("sentences", "Males of this species fight ({species}). Males in this box: {males}.")},
    {"animals.sex-not-known",
     QT_TRANSLATE_NOOP("sentences",
                       "Males of this species fight ({species}), and the sex is not stated for {animals} of "
                       "the animals here.")},
    {"animals.species-not-known",
     QT_TRANSLATE_NOOP("sentences", "There is no sheet for the species “{species}”. Its needs are not known.")},

    {"material.not-known",
     QT_TRANSLATE_NOOP("sentences", "The material “{material}” ({part}) is not on file. What depends on it can't be "
                                    "computed.")},
    {"substrate.none", QT_TRANSLATE_NOOP("sentences", "No substrate is entered.")},
    {"substrate.unsuited",
     QT_TRANSLATE_NOOP("sentences",
                       "The sheet does not list {material} as a substrate for this species ({species}). The "
                       "first it lists is {best}.")},
    {"substrate.too-shallow",
     QT_TRANSLATE_NOOP("sentences", "The bed is {depth} deep, and this species needs at least {min} ({species}): "
                                    "{short_by} more.")},
    {"substrate.fills-box",
     QT_TRANSLATE_NOOP("sentences", "The bed is {depth} deep in a box that is {height} high. Too little room is left "
                                    "above it.")},

    {"stand.rating-not-known",
     QT_TRANSLATE_NOOP("sentences", "What {stand} can carry is not stated. It has to carry {range}.")},
    {"stand.not-named",
     QT_TRANSLATE_NOOP("sentences", "It is not stated what the box stands on. That has to carry {range}.")},
};

} // namespace

Sentences space_sentences()
{
    return rows;
}

} // namespace loam::words
