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
};

} // namespace

Sentences caution_sentences()
{
    return rows;
}

} // namespace loam::words
