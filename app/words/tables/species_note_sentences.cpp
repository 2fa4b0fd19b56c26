#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"giant-adult",
     QT_TRANSLATE_NOOP(
         "sentences",
         "The adult is heavier than a person can lift and needs a heated room of its own. No indoor box lasts it.")},
    {"large-adult",
     QT_TRANSLATE_NOOP("sentences", "The adult outgrows any usual indoor box. Plan for a room or an outdoor run.")},
    {"juvenile-humidity-contested",
     QT_TRANSLATE_NOOP("sentences", "One study of hatchlings found flatter shells when they were reared humid. Its "
                                    "method is contested, so the figure is not settled.")},
    {"mat-not-a-basking-site",
     QT_TRANSLATE_NOOP("sentences", "A heat mat gives background warmth at best. It warms itself from above.")},
    {"diet-mostly-insects",
     QT_TRANSLATE_NOOP("sentences",
                       "It eats mostly insects. The food costs here count mixed food by weight, as for greens.")},
    {"diet-also-insects",
     QT_TRANSLATE_NOOP(
         "sentences",
         "It eats insects or other animal food beside greens. The food costs here count the greens only.")},
    {"laying-female-depth", QT_TRANSLATE_NOOP("sentences", "A female that may lay needs a place with at least 20 cm (8 "
                                                           "in) of soil to dig in, even when she lives alone.")},
    {"feeder-rodents",
     QT_TRANSLATE_NOOP("sentences",
                       "Frozen food rodents can carry salmonella too. Thaw them fully, and outside the kitchen.")},
    {"escapes", QT_TRANSLATE_NOOP(
                    "sentences",
                    "It gets through gaps that look too small. Lock the doors, and leave no gap wider than its head.")},
    {"females-fight", QT_TRANSLATE_NOOP("sentences", "Females fight each other as well. Keep one, or one pair.")},
    {"eats-other-snakes", QT_TRANSLATE_NOOP("sentences", "It eats other snakes, its own kind too. Keep one to a box.")},
    {"mild-venom",
     QT_TRANSLATE_NOOP("sentences",
                       "It has a mild venom, and a long bite can swell. See a doctor if you react to one.")},
    {"no-fine-sand-alone",
     QT_TRANSLATE_NOOP("sentences", "Fine or dusty sand alone is suspected of blocking the gut. Mix it with soil.")},
    {"no-winter-rest",
     QT_TRANSLATE_NOOP("sentences", "It does not rest through the winter and must not be kept cold.")},
    {"dechlorinated-water",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Use water without chlorine only, for misting too: rain water, or tap water with a conditioner.")},
    {"amphibian-skin", QT_TRANSLATE_NOOP("sentences", "Its skin takes up what touches it. Handle it rarely and with "
                                                      "wet, rinsed gloves, and leave no cleaner behind.")},
    {"permit-terrapene",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Taking and keeping native box turtles is restricted or licensed in many places. Ask before you buy.")},
    {"cites-annex-a",
     QT_TRANSLATE_NOOP(
         "sentences",
         "In the European Union it needs a certificate and a mark when it changes hands. Ask for the papers.")},
    {"cites-papers", QT_TRANSLATE_NOOP("sentences", "Trade in it is controlled. Keep the proof of legal origin, and "
                                                    "hand it on with the animal. What is asked differs by country.")},
    {"licence-australia", QT_TRANSLATE_NOOP("sentences", "In Australia, keeping this native species needs a licence.")},
    {"overheats-easily",
     QT_TRANSLATE_NOOP("sentences",
                       "It overheats easily: a warm room can be too warm. Watch the upper end of the temperatures.")},
    {"no-basking",
     QT_TRANSLATE_NOOP("sentences", "It has no basking spot. A lamp that heats a surface is not wanted.")},
};

} // namespace

Sentences species_note_sentences()
{
    return rows;
}

} // namespace loam::words
