#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"amphibian-skin",
     QT_TRANSLATE_NOOP("sentences", "Its skin takes up what touches it. Handle it rarely, with wet, clean, powder-free "
                                    "gloves, and use no soap or cleaner near it.")},
    {"cites-annex-a",
     QT_TRANSLATE_NOOP("sentences", "Trade in it is tightly controlled, in the European Union by Annex A. Animals need "
                                    "a certificate, and often a mark: see the papers before you buy.")},
    {"cites-papers",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Trade in it is controlled. Ask for the papers that show where the animal comes from, and keep them.")},
    {"dechlorinated-water",
     QT_TRANSLATE_NOOP("sentences",
                       "Use water without chlorine only: rain water, spring water, or tap water with a conditioner.")},
    {"diet-also-insects",
     QT_TRANSLATE_NOOP("sentences",
                       "It eats insects as well as plants. The food costs here follow the main food item only.")},
    {"diet-mostly-insects",
     QT_TRANSLATE_NOOP("sentences", "It eats mostly insects when young and more plants when grown.")},
    {"eats-other-snakes", QT_TRANSLATE_NOOP("sentences", "It eats other snakes. It must live alone.")},
    {"escapes",
     QT_TRANSLATE_NOOP("sentences", "It finds every gap. The top needs a lock, and each opening must be closed.")},
    {"feeder-rodents",
     QT_TRANSLATE_NOOP("sentences", "It eats rodents. Buy them frozen and thaw them fully; live ones bite.")},
    {"females-fight", QT_TRANSLATE_NOOP("sentences", "Females fight as well. Keep them apart too.")},
    {"giant-adult",
     QT_TRANSLATE_NOOP(
         "sentences",
         "It grows very large and heavy. Few homes have room for it: think of the adult before you take a young one.")},
    {"juvenile-humidity-contested",
     QT_TRANSLATE_NOOP(
         "sentences", "Keepers and sources disagree on the humidity for young animals. See the sources on the sheet.")},
    {"large-adult", QT_TRANSLATE_NOOP("sentences", "It grows large. Plan for the adult's space now.")},
    {"laying-female-depth",
     QT_TRANSLATE_NOOP("sentences", "A female about to lay needs deeper, diggable soil, even when she lives alone.")},
    {"licence-australia", QT_TRANSLATE_NOOP("sentences", "In Australia, keeping it needs a licence.")},
    {"mat-not-a-basking-site",
     QT_TRANSLATE_NOOP("sentences", "It warms itself from above. A mat can't stand in for a basking lamp.")},
    {"mild-venom", QT_TRANSLATE_NOOP("sentences", "It has a mild venom. A bite can swell: don't handle it with food on "
                                                  "your hands, and see a doctor if you react.")},
    {"no-basking", QT_TRANSLATE_NOOP("sentences", "It does not bask. It needs a warm area and no hot spot.")},
    {"no-fine-sand-alone",
     QT_TRANSLATE_NOOP("sentences", "Fine sand alone is unsuited: it gives no hold, and it is easily swallowed.")},
    {"no-winter-rest",
     QT_TRANSLATE_NOOP("sentences", "It does not rest through the winter and must stay warm all year.")},
    {"overheats-easily",
     QT_TRANSLATE_NOOP("sentences", "It overheats easily. Watch the upper end of the temperatures in summer.")},
    {"permit-terrapene",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Box turtles are protected in many places. Don't take one from the wild, and ask whether you need a permit.")},
};

} // namespace

Sentences species_note_sentences()
{
    return rows;
}

} // namespace loam::words
