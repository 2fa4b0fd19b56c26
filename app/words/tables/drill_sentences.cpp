// What to do when something has failed. Common keeping practice, no source; health is a vet's matter.
#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"warm-up",
     QT_TRANSLATE_NOOP("sentences",
                       "Let it run this long before you trust what its thermometers say, and run it for some days "
                       "before an animal moves in.")},
    {"power-cut",
     QT_TRANSLATE_NOOP("sentences",
                       "Keep it shut. Wrap the box in blankets, away from lamps and heaters: they come on again with "
                       "the power. Switch them off until the blankets are gone. Bottles of warm water, wrapped in "
                       "cloth, may stand at one side. Never heat with a flame. An animal that is limp or doesn't "
                       "respond should be seen by a vet who knows such animals; it is warmed slowly, never in hot "
                       "water or on a hot surface.")},
    {"lamp-out",
     QT_TRANSLATE_NOOP("sentences",
                       "Keep a spare of each lamp that heats. Change it with the power off and the holder cold. Where "
                       "no spare is at hand before the time named here, house the animal in a room that is warm "
                       "enough. Ask a vet where it has been too cold for long or stops eating.")},
    {"mat-stuck-on",
     QT_TRANSLATE_NOOP("sentences",
                       "Unplug the mat, and use it again only with another thermostat. Take the animal off it. Burns "
                       "from below don't always show at once: have a vet look at an animal that lay on it. A cut-out "
                       "of its own, apart from the thermostat, keeps this from happening.")},
    {"heat-wave",
     QT_TRANSLATE_NOOP("sentences",
                       "Switch off what heats, keep only the light that is needed. Shade the room, let in air by "
                       "night, offer fresh water. Before the time named here bring the animal to a cooler room. One "
                       "that gapes, is frantic or goes limp needs a vet at once; on the way it is cooled gently, never "
                       "with ice.")},
    {"covers-off",
     QT_TRANSLATE_NOOP("sentences",
                       "Put the covers back, clear of all lamps, and look again in a few hours. Where that may not be "
                       "noticed in time, fix them so that they can't be left off.")},
};

} // namespace

Sentences drill_sentences()
{
    return rows;
}

} // namespace loam::words
