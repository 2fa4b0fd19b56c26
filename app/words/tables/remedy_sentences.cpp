#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"remedy.longer-box", QT_TRANSLATE_NOOP("sentences", "Make the box {by} longer, which makes {to}.")},
    {"remedy.wider-box", QT_TRANSLATE_NOOP("sentences", "Make the box {by} wider, which makes {to}.")},
    {"remedy.higher-box", QT_TRANSLATE_NOOP("sentences", "Make the box {by} higher, which makes {to}.")},
    {"remedy.bigger-floor", QT_TRANSLATE_NOOP("sentences", "Take a box with {by} more floor, which makes {to}.")},
    {"remedy.clear-floor",
     QT_TRANSLATE_NOOP("sentences", "Take out fittings that cover {by} of floor, or let the animals walk over them.")},
    {"remedy.add-hides", QT_TRANSLATE_NOOP("sentences", "Add hides: {count}.")},
    {"remedy.move-hide", QT_TRANSLATE_NOOP("sentences", "Move a hide to the {side} side, or add one there.")},
    {"remedy.add-humid-hide", QT_TRANSLATE_NOOP("sentences", "Add a humid hide: a hide with damp moss in it.")},
    {"remedy.fewer-animals", QT_TRANSLATE_NOOP("sentences", "Keep fewer animals in this box: {to}.")},
    {"remedy.separate-enclosures", QT_TRANSLATE_NOOP("sentences", "Give them boxes of their own: {count} in all.")},
    {"remedy.move-inside", QT_TRANSLATE_NOOP("sentences", "Move {fitting} inwards by {by}.")},
    {"remedy.measure-again",
     QT_TRANSLATE_NOOP("sentences",
                       "Measure again in the same way. If it is so, look at food, warmth and UV, and ask a "
                       "reptile vet.")},
    {"remedy.other-circuit-meanwhile",
     QT_TRANSLATE_NOOP("sentences", "Feed one of the two from another circuit while the new one is proved; never chain "
                                    "strips for it.")},
    {"remedy.see-vet",
     QT_TRANSLATE_NOOP("sentences", "Weigh again on the same scale. Eggs laid or an emptied gut can explain it; if "
                                    "nothing does, have a reptile vet see the animal within days.")},

    {"remedy.deeper-bed", QT_TRANSLATE_NOOP("sentences", "Make the bed {by} deeper, which makes {to}.")},
    {"remedy.shallower-bed", QT_TRANSLATE_NOOP("sentences", "Make the bed no deeper than {to}.")},
    {"remedy.other-substrate", QT_TRANSLATE_NOOP("sentences", "Use {material} in its place.")},
    {"remedy.stronger-stand", QT_TRANSLATE_NOOP("sentences", "Use a stand rated for {to} or more.")},

    {"remedy.stronger-device", QT_TRANSLATE_NOOP("sentences", "Use {to} in place of {from} for {device}.")},
    {"remedy.weaker-device", QT_TRANSLATE_NOOP("sentences", "Use {to} in place of {from} for {device}.")},
    {"remedy.add-heat", QT_TRANSLATE_NOOP("sentences", "Add about {power} of heat over the warm side.")},
    {"remedy.dim-device", QT_TRANSLATE_NOOP("sentences", "Dim {device} to {to:percent}[ {case}].")},
    {"remedy.set-thermostat", QT_TRANSLATE_NOOP("sentences", "Set the thermostat of {device} to {to}[ {case}].")},
    {"remedy.add-thermostat",
     QT_TRANSLATE_NOOP("sentences", "Run {device} through a thermostat, with its probe where the heat arrives.")},
    {"remedy.place-probe",
     QT_TRANSLATE_NOOP("sentences", "Fix the probe where {device} heats, and enter its place in the plan.")},
    {"remedy.mat-to-wall",
     QT_TRANSLATE_NOOP("sentences", "Move {device} to the outside of a wall, above the bed, and keep its thermostat.")},
    {"remedy.raise-lamp", QT_TRANSLATE_NOOP("sentences", "Raise {device} by {by}, to {to} above the base.")},
    {"remedy.lower-lamp", QT_TRANSLATE_NOOP("sentences", "Lower {device} by {by}, to {to} above the base.")},
    {"remedy.guard-lamp", QT_TRANSLATE_NOOP("sentences", "Put a guard around {device}.")},
    {"remedy.move-lamp", QT_TRANSLATE_NOOP("sentences", "Move {device} {by} further away.")},
    {"remedy.lamp-under-pane", QT_TRANSLATE_NOOP("sentences", "Hang {device} inside, below the pane.")},
    {"remedy.lower-perch", QT_TRANSLATE_NOOP("sentences", "Make {fitting} lower by {by}.")},
    {"remedy.move-perch", QT_TRANSLATE_NOOP("sentences", "Move {fitting} away from beneath the lamp.")},
    {"remedy.carry-to-warmth",
     QT_TRANSLATE_NOOP("sentences", "Keep an insulated carrier and warmth that needs no mains ready, such as wrapped "
                                    "bottles of warm water beside the animals, and have them in it within {within}.")},
    {"remedy.carry-to-cool",
     QT_TRANSLATE_NOOP("sentences", "Switch the heat off at the plug, and keep a carrier and a cool room ready to have "
                                    "the animals there within {within}.")},
    {"remedy.cooler-room", QT_TRANSLATE_NOOP("sentences", "Keep the room {by} cooler {case}, at {to} or less.")},
    {"remedy.warmer-room", QT_TRANSLATE_NOOP("sentences", "Keep the room {by} warmer {case}, at {to} or more.")},
    {"remedy.shade-from-sun",
     QT_TRANSLATE_NOOP("sentences",
                       "Move the enclosure or shade the window, so that no sun reaches the glass at any season.")},
    {"remedy.night-heat",
     QT_TRANSLATE_NOOP("sentences", "Add about {power} of heat without light for the night, on a thermostat.")},

    {"remedy.measure-first",
     QT_TRANSLATE_NOOP("sentences", "Measure it in the finished enclosure: what is predicted ranges as widely as the "
                                    "target, so a reading tells more than a change.")},
    {"remedy.several-changes",
     QT_TRANSLATE_NOOP("sentences", "No single change that was tried does it without harm elsewhere. Change more than "
                                    "one thing, such as lamp, box and room, and look again.")},

    {"remedy.remove-cover", QT_TRANSLATE_NOOP("sentences", "Take {cover} away.")},
    {"remedy.move-cover", QT_TRANSLATE_NOOP("sentences", "Move {cover} at least {by} further from the lamp.")},
    {"remedy.away-from-wall",
     QT_TRANSLATE_NOOP("sentences", "Hang {device} further from the wall, or take a weaker one, until the wall stays "
                                    "at {to} or less.")},
    {"remedy.add-cover",
     QT_TRANSLATE_NOOP("sentences",
                       "Cover {area} more of the top, so that {fraction:percent} of it is covered, clear of the "
                       "lamps.")},
    {"remedy.more-misting", QT_TRANSLATE_NOOP("sentences", "Mist {by} more {case}, which makes {to}.")},
    {"remedy.less-misting", QT_TRANSLATE_NOOP("sentences", "Mist {by} less {case}, which makes {to}.")},
    {"remedy.mist-less-or-air-more",
     QT_TRANSLATE_NOOP("sentences",
                       "Mist less, or uncover some of the top so that more dries off. Feel the bed at its base: "
                       "water must not stand there.")},
    {"remedy.weaker-lamp-or-probe",
     QT_TRANSLATE_NOOP("sentences",
                       "While its probe is still cool a thermostat drives the lamp at full power: take a weaker "
                       "lamp, or put the probe where the lamp warms it first.")},
    {"remedy.drier-bed",
     QT_TRANSLATE_NOOP("sentences",
                       "Let the surface of the bed dry out, and damp only the hide that should be humid.")},
    {"remedy.dry-corner",
     QT_TRANSLATE_NOOP("sentences", "Leave one corner of the bed dry, away from the water and the mist.")},

    {"remedy.bigger-bowl",
     QT_TRANSLATE_NOOP("sentences", "Take a bowl in place of {fitting} whose side is {by} longer, which makes {to}.")},
    {"remedy.shallower-water",
     QT_TRANSLATE_NOOP("sentences", "Fill {fitting} no deeper than {to}, and put in a stone to climb out on.")},
    {"remedy.deeper-water", QT_TRANSLATE_NOOP("sentences", "Fill {fitting} at least {to} deep.")},
    {"remedy.add-bowl", QT_TRANSLATE_NOOP("sentences", "Add a water bowl.")},
    {"remedy.treat-water",
     QT_TRANSLATE_NOOP(
         "sentences", "Treat the water with conditioner, one that also binds chloramine where your supplier uses it.")},
    {"remedy.no-cool-season",
     QT_TRANSLATE_NOOP("sentences", "Keep {animal} warm and fed through the winter, and take the rest out of the plan. "
                                    "Ask a reptile vet if you are unsure.")},
    {"remedy.vet-check",
     QT_TRANSLATE_NOOP("sentences",
                       "Have a reptile vet see {animal}, with a faecal sample, before its food is stopped.")},
    {"remedy.shorter-rest", QT_TRANSLATE_NOOP("sentences", "Keep the rest of {animal} to {to} in the cold.")},

    {"remedy.add-uv-lamp",
     QT_TRANSLATE_NOOP("sentences", "Add a UV lamp made for Ferguson zone {zone}, with its maker's distance table.")},
    {"remedy.measure-uv",
     QT_TRANSLATE_NOOP(
         "sentences",
         "Enter the maker's distance table of {device}, or measure the UV index at {distance} and enter it.")},
    {"remedy.other-uv-lamp",
     QT_TRANSLATE_NOOP("sentences", "No height of {device} does it. Use a lamp that gives {times} times its UV at the "
                                    "same distance.")},
    {"remedy.replace-lamp",
     QT_TRANSLATE_NOOP("sentences", "Replace {device}: its UV has faded, and a new one reaches the target.")},
    {"remedy.change-times", QT_TRANSLATE_NOOP("sentences", "Set the timer for {to} of light a day, a change of {by}.")},
    {"remedy.timer-for-light", QT_TRANSLATE_NOOP("sentences", "Put {device} on a timer.")},

    {"remedy.less-load", QT_TRANSLATE_NOOP("sentences", "Take {by} off it.")},
    {"remedy.other-circuit", QT_TRANSLATE_NOOP("sentences", "Move {by} to another circuit.")},
    {"remedy.more-outlets", QT_TRANSLATE_NOOP("sentences", "Provide more {supply} outlets: {count}.")},
    {"remedy.plug-into-wall", QT_TRANSLATE_NOOP("sentences", "Plug {strip} straight into the wall.")},
    {"remedy.add-residual-current-protection",
     QT_TRANSLATE_NOOP("sentences", "Feed {strip} through a residual-current device.")},
    {"remedy.undimmed", QT_TRANSLATE_NOOP("sentences", "Run {device} without a dimmer.")},
    {"remedy.dimming-thermostat", QT_TRANSLATE_NOOP("sentences", "Use a dimming thermostat for {device}.")},
    {"remedy.always-on-supply", QT_TRANSLATE_NOOP("sentences", "Put {device} on an outlet that is always on.")},
    {"remedy.drip-loop",
     QT_TRANSLATE_NOOP("sentences",
                       "Let each cable hang in a loop below its plug, and keep plugs above and away from the water.")},
    {"remedy.heat-rated-holder",
     QT_TRANSLATE_NOOP("sentences", "Use a ceramic or other heat-rated holder for {device}.")},

    {"remedy.stronger-holder",
     QT_TRANSLATE_NOOP("sentences", "Use a holder rated for {to} or more for {device}, or a weaker lamp.")},
    {"remedy.stronger-control", QT_TRANSLATE_NOOP("sentences", "Use a control rated for {to} or more for {device}.")},

    {"remedy.state", QT_TRANSLATE_NOOP("sentences", "Enter this in the plan: {where}.")},
    {"remedy.add-prices", QT_TRANSLATE_NOOP("sentences", "Add prices for these to the price list: {needs}.")},
    {"remedy.put-back", QT_TRANSLATE_NOOP("sentences", "Put it back on the list: {need}.")},
    {"remedy.other-price-list", QT_TRANSLATE_NOOP("sentences", "Use a price list in {currency}.")},
};

} // namespace

Sentences remedy_sentences()
{
    return rows;
}

} // namespace loam::words
