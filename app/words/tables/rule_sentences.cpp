#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"rule.floor-area", QT_TRANSLATE_NOOP("sentences", "The published floor rule, applied to the animals' size and "
                                                       "number. The usable floor leaves out what they can't walk on.")},
    {"rule.growth",
     QT_TRANSLATE_NOOP(
         "sentences",
         "The same rule applied to the size that the published growth rates lead to, at slow and at fast growth.")},
    {"rule.body-length-side",
     QT_TRANSLATE_NOOP("sentences", "Each side of the box is compared with the animal's own length.")},
    {"rule.turning-width",
     QT_TRANSLATE_NOOP("sentences",
                       "The clear width beside the fittings is compared with what the animal needs to turn round.")},
    {"rule.gradient-length",
     QT_TRANSLATE_NOOP("sentences",
                       "Common practice: along a short side, a warm and a cool end run into one another.")},
    {"rule.hides-one-more",
     QT_TRANSLATE_NOOP("sentences", "Common practice: one hide more than animals, one of them warm and one cool.")},
    {"rule.species-sheet", QT_TRANSLATE_NOOP("sentences", "Compared with the band on the species' sheet.")},
    {"rule.one-species", QT_TRANSLATE_NOOP("sentences", "One species in each box: needs, germs and tempers differ.")},
    {"rule.social", QT_TRANSLATE_NOOP("sentences", "What the species' sheet says about company.")},
    {"rule.material-list",
     QT_TRANSLATE_NOOP("sentences", "Only materials with their properties on file can be computed.")},
    {"rule.rated-load",
     QT_TRANSLATE_NOOP(
         "sentences", "The weight of box, damp bed, water, fittings and animals is compared with the maker's rating.")},
    {"rule.heat-balance",
     QT_TRANSLATE_NOOP("sentences",
                       "The heat that the equipment gives is balanced with what leaves through base, walls, top, air "
                       "and evaporation. The range follows from the spread of the inputs.")},
    {"rule.burn-threshold", QT_TRANSLATE_NOOP("sentences", "The hottest surface an animal can touch is compared with "
                                                           "the temperature at which skin burns on long contact.")},
    {"rule.mat-limit",
     QT_TRANSLATE_NOOP(
         "sentences",
         "The hottest place an animal can lie on or dig to is compared with what it should lie on for long.")},
    {"rule.body-limit",
     QT_TRANSLATE_NOOP("sentences", "The place an animal could retreat to is compared with what its body bears.")},
    {"rule.clearance",
     QT_TRANSLATE_NOOP(
         "sentences",
         "The distance is compared with the maker's clearance or, where the maker gives none, a cautious one.")},
    {"rule.reach",
     QT_TRANSLATE_NOOP(
         "sentences",
         "The nearest point an animal gets to is taken: the top of what it can climb, and its own height on it.")},
    {"rule.sun-through-glass",
     QT_TRANSLATE_NOOP("sentences",
                       "Sun through glass gives more heat than any lamp here, and no thermostat can take it away.")},
    {"rule.moisture-balance",
     QT_TRANSLATE_NOOP("sentences",
                       "What evaporates and is misted is balanced with what the air carries away and what condenses.")},
    {"rule.readings",
     QT_TRANSLATE_NOOP("sentences",
                       "Every uncertain input is moved within its spread until the readings are met as well as their "
                       "accuracy and the model's own error make probable. What is learned counts for cases with the "
                       "lamps as in a reading and the room near to its room.")},
    {"rule.dew-point",
     QT_TRANSLATE_NOOP("sentences", "The coldest pane is compared with the dew point of the air in the box.")},
    {"rule.dry-retreat",
     QT_TRANSLATE_NOOP("sentences",
                       "Where it is damp everywhere, an animal can't dry off. Common practice asks for a dry corner.")},
    {"rule.uv-zone",
     QT_TRANSLATE_NOOP("sentences",
                       "The UV index at the animal's back is compared with the range of its Ferguson zone.")},
    {"rule.uv-measured-only",
     QT_TRANSLATE_NOOP("sentences", "A UV index is taken from a meter or the maker's table only, never from watts, and "
                                    "never outside the table's distances.")},
    {"rule.uv-through-pane",
     QT_TRANSLATE_NOOP("sentences", "Glass, acrylic and closed covers let practically no UV-B through.")},
    {"rule.photoperiod", QT_TRANSLATE_NOOP("sentences", "The planned hours of light are compared with the sheet.")},
    {"rule.dark-at-night",
     QT_TRANSLATE_NOOP("sentences", "A device that gives light and is always on leaves no dark night.")},
    {"rule.continuous-load",
     QT_TRANSLATE_NOOP(
         "sentences",
         "What runs for three hours or more may take 80% of the rating. Everything else on it counts as well.")},
    {"rule.outlet-count",
     QT_TRANSLATE_NOOP("sentences", "One outlet for each device, counted apart for timed and always-on ones.")},
    {"rule.no-daisy-chain",
     QT_TRANSLATE_NOOP("sentences",
                       "Each strip belongs straight into a wall outlet: the first one carries everything behind it.")},
    {"rule.residual-current",
     QT_TRANSLATE_NOOP("sentences", "Near water, a residual-current device cuts the power before a shock can harm.")},
    {"rule.load-kind",
     QT_TRANSLATE_NOOP("sentences", "What a dimmer or thermostat may feed depends on the kind of load.")},
    {"rule.probe", QT_TRANSLATE_NOOP("sentences", "A thermostat holds the temperature only where its probe is.")},
    {"rule.water-and-mains",
     QT_TRANSLATE_NOOP("sentences", "Water on a plug, holder or strip can give a shock or start a fire.")},
    {"rule.heat-rated-holder", QT_TRANSLATE_NOOP("sentences", "Hot lamps and heaters soften plastic holders.")},
    {"rule.stated-by-keeper",
     QT_TRANSLATE_NOOP("sentences", "Only you can know this, so it is asked for and not assumed.")},
    {"rule.wish",
     QT_TRANSLATE_NOOP("sentences", "The needs follow from the plan; what you left out or replaced is set off "
                                    "against them.")},
    {"rule.price-list",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Taken from the price list, whole packs only. A missing price is listed and never counted as zero.")},
    {"rule.price-age", QT_TRANSLATE_NOOP("sentences", "A price list older than a year is out of date.")},
    {"rule.hygiene", QT_TRANSLATE_NOOP("sentences", "General advice on hygiene with reptiles and amphibians.")},
    {"rule.law", QT_TRANSLATE_NOOP("sentences",
                                   "Laws differ from place to place and change. This program does not know them all.")},
    {"rule.care", QT_TRANSLATE_NOOP("sentences", "General advice on care.")},
    {"rule.quarantine",
     QT_TRANSLATE_NOOP("sentences", "Common practice: new animals are kept apart and watched first.")},
    {"rule.test-run",
     QT_TRANSLATE_NOOP("sentences", "Common practice: an enclosure is measured over several days before it is used.")},
    {"rule.bowl-size",
     QT_TRANSLATE_NOOP("sentences",
                       "A bowl has to let the animal get in, turn round and out: for turtles and tortoises one and a "
                       "half shell lengths by one, for a snake the round that it lies coiled in.")},
    {"rule.water-depth",
     QT_TRANSLATE_NOOP("sentences", "The water's depth against the length and the height of the animal.")},
    {"rule.bed-water",
     QT_TRANSLATE_NOOP("sentences",
                       "What is misted and what drips back is balanced with what evaporates from the bed, over "
                       "day and night, winter and summer.")},
    {"rule.water-treatment", QT_TRANSLATE_NOOP("sentences", "What water needs before an animal lives in it.")},
    {"rule.growth-record",
     QT_TRANSLATE_NOOP("sentences",
                       "The first length that was measured, followed at the slowest and the fastest growth "
                       "that is published, not past the adult length, with the error of a measurement at "
                       "either end.")},
    {"rule.weight-loss",
     QT_TRANSLATE_NOOP("sentences", "The newest weight against the greatest of the year before it.")},
    {"rule.cool-season",
     QT_TRANSLATE_NOOP("sentences", "Only animals of species that rest, well, of full weight and past their first "
                                    "winter may be cooled, after a vet's check, and weighed every week.")},
};

} // namespace

Sentences rule_sentences()
{
    return rows;
}

} // namespace loam::words
