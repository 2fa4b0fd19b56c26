#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"need.shell", QT_TRANSLATE_NOOP("sentences", "the box itself")},
    {"need.stand", QT_TRANSLATE_NOOP("sentences", "carries the box")},
    {"need.device", QT_TRANSLATE_NOOP("sentences", "equipment of the plan")},
    {"need.own-line", QT_TRANSLATE_NOOP("sentences", "a line of your own")},
    {"need.spare-lamp", QT_TRANSLATE_NOOP("sentences", "a spare: warmth or UV hangs on this lamp")},
    {"need.holder", QT_TRANSLATE_NOOP("sentences", "holds a hot lamp safely")},
    {"need.guard", QT_TRANSLATE_NOOP("sentences", "keeps animals off a hot lamp")},
    {"need.control", QT_TRANSLATE_NOOP("sentences", "regulates a heater or lamp")},
    {"need.timer", QT_TRANSLATE_NOOP("sentences", "switches the lamps on and off")},
    {"need.strip", QT_TRANSLATE_NOOP("sentences", "gives outlets enough")},
    {"need.residual-current", QT_TRANSLATE_NOOP("sentences", "cuts the power near water before a shock harms")},
    {"need.thermometers", QT_TRANSLATE_NOOP("sentences", "to read the warm and the cool end")},
    {"need.infrared", QT_TRANSLATE_NOOP("sentences", "to read the temperature of surfaces")},
    {"need.hygrometer", QT_TRANSLATE_NOOP("sentences", "to read the humidity")},
    {"need.substrate", QT_TRANSLATE_NOOP("sentences", "the bed, filled in before it settles")},
    {"need.cover", QT_TRANSLATE_NOOP("sentences", "covers a part of the top")},
    {"need.fitting", QT_TRANSLATE_NOOP("sentences", "furniture of the plan")},
    {"need.filter-cartridge", QT_TRANSLATE_NOOP("sentences", "a year of filtered water, by the cartridge's litres")},
    {"need.conditioner", QT_TRANSLATE_NOOP("sentences", "a year of treated tap water")},
    {"need.scale", QT_TRANSLATE_NOOP("sentences", "to weigh the animals")},
    {"need.quarantine", QT_TRANSLATE_NOOP("sentences", "to keep a new animal apart at first")},
    {"need.disinfectant", QT_TRANSLATE_NOOP("sentences", "to clean with")},
    {"need.gloves", QT_TRANSLATE_NOOP("sentences", "for hygiene")},
    {"need.food", QT_TRANSLATE_NOOP("sentences", "the first month")},
    {"need.calcium", QT_TRANSLATE_NOOP("sentences", "a supplement to the food")},
    {"need.vet", QT_TRANSLATE_NOOP("sentences", "the first year's visit")},
};

} // namespace

Sentences need_sentences()
{
    return rows;
}

} // namespace loam::words
