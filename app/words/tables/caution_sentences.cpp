#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"caution.salmonella",
     QT_TRANSLATE_NOOP("sentences",
                       "Reptiles and amphibians can carry salmonella. Wash your hands after each contact, keep their "
                       "things out of the kitchen, and take extra care with small children and ill people.")},
    {"caution.law", QT_TRANSLATE_NOOP("sentences", "Keeping this species may need a permit or papers where you live "
                                                   "({species}). Ask the authority before you buy.")},
    {"caution.vet", QT_TRANSLATE_NOOP("sentences", "Find a vet who treats reptiles and amphibians before an animal "
                                                   "moves in. This program does not replace one.")},
    {"caution.electrician",
     QT_TRANSLATE_NOOP("sentences",
                       "Fixed wiring is an electrician's work. The figures here concern what is plugged in.")},
    {"caution.structure",
     QT_TRANSLATE_NOOP("sentences",
                       "The load is an estimate. It does not show that a floor or a piece of furniture holds it.")},
    {"caution.quarantine",
     QT_TRANSLATE_NOOP("sentences", "Keep a new animal apart for at least {days_min}[, {resident}].")},
    {"caution.test-run",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Run the finished enclosure for at least {days_min} with thermometers in it before an animal moves in.")},
    {"caution.brumation", QT_TRANSLATE_NOOP("sentences", "This species may rest through the winter ({species}). The "
                                                         "temperatures here are for animals that are awake and well.")},
    {"caution.lifespan", QT_TRANSLATE_NOOP("sentences", "This is a long commitment[: a life of {band}] ({species}).")},
    {"caution.species", QT_TRANSLATE_NOOP("sentences", "{species}: {note}")},
    {"cool-season.not-known",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Whether {animal} may be cooled for the winter is not known: {reason}. Until then no rest is planned.")},
    {"cool-season.vet-check",
     QT_TRANSLATE_NOOP("sentences", "No vet's check is stated for {animal} before the winter rest. It belongs in the "
                                    "{days} before the first day without food.")},
    {"cool-season.vet-check",
     QT_TRANSLATE_NOOP("sentences", "The vet's check of {animal} is not in the {days} before the first day without "
                                    "food, so it tells nothing of this rest."),
     Verdict::falls_short, Direction::none},
    {"cool-season.too-long",
     QT_TRANSLATE_NOOP("sentences",
                       "The rest of {animal} is too long: {weeks} in the cold. At most {max} is on file ({species}).")},
    {"caution.cool-season-plan",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Winter rest of {animal}: no food from {begins}, at {band} from {cold_from} to {cold_until}, usual care from "
         "{ends}. Weigh it every week, and end the rest where it has lost {stop:percent}.")},
    {"caution.cool-season-place",
     QT_TRANSLATE_NOOP("sentences",
                       "{animal} has to rest in a place that stays at {band} day and night, with a thermometer that "
                       "logs it. A lived-in room is too warm[: this one is at {room} on a winter day].")},
};

} // namespace

Sentences caution_sentences()
{
    return rows;
}

} // namespace loam::words
