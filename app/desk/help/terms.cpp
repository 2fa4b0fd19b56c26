#include "app/desk/help/terms.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace loam::desk {

namespace {

struct Row {
    const char* word;
    const char* meaning;
};

constexpr Row rows[] = {
    {QT_TRANSLATE_NOOP("terms", "Warm and cool side"),
     QT_TRANSLATE_NOOP("terms",
                       "An animal that can't make its own warmth has to choose it. Heat therefore goes to one end "
                       "of the box, the other stays cooler, and the difference between the two is part of every "
                       "target.")},
    {QT_TRANSLATE_NOOP("terms", "Basking place"),
     QT_TRANSLATE_NOOP("terms", "Where a lamp warms an animal from above. Its figure is what a body lying there feels, "
                                "not the air beside it.")},
    {QT_TRANSLATE_NOOP("terms", "Operative temperature"),
     QT_TRANSLATE_NOOP("terms",
                       "What a body exchanges heat with: the air and all that radiates on it, as one figure. A "
                       "thermometer in a small black globe reads about this.")},
    {QT_TRANSLATE_NOOP("terms", "Ground level"),
     QT_TRANSLATE_NOOP("terms", "The air just above the bed, where the animal lives. Lay a shaded thermometer or "
                                "hygrometer there to compare.")},
    {QT_TRANSLATE_NOOP("terms", "Surface temperature"),
     QT_TRANSLATE_NOOP("terms",
                       "What an infrared thermometer reads on the bed or a stone. Under a lamp it is far above "
                       "the air.")},
    {QT_TRANSLATE_NOOP("terms", "Range and likely value"),
     QT_TRANSLATE_NOOP("terms",
                       "Nothing here is exact. A figure is given from its least to its greatest plausible value, "
                       "with the likeliest between. What is not stated in the plan widens it; a measurement "
                       "narrows it.")},
    {QT_TRANSLATE_NOOP("terms", "fits, tight, falls short, danger, not known"),
     QT_TRANSLATE_NOOP("terms",
                       "The five verdicts. Tight: the likely value is within its target, an end of its range is "
                       "not. Falls short: the likely value misses it. Danger: someone may be hurt. Not known: a "
                       "figure is missing that can't be guessed safely.")},
    {QT_TRANSLATE_NOOP("terms", "Relative humidity"),
     QT_TRANSLATE_NOOP("terms", "How much of the moisture that air can hold at its temperature is in it. Warm the same "
                                "air and the figure falls.")},
    {QT_TRANSLATE_NOOP("terms", "Dew point"),
     QT_TRANSLATE_NOOP("terms", "The temperature at which the air's moisture begins to settle. A pane that is colder "
                                "fogs.")},
    {QT_TRANSLATE_NOOP("terms", "UV index"),
     QT_TRANSLATE_NOOP("terms",
                       "Strength of ultraviolet light as it acts on skin. It can only be measured with a meter "
                       "or read from the lamp's own table: watts say nothing about it.")},
    {QT_TRANSLATE_NOOP("terms", "Ferguson zone"),
     QT_TRANSLATE_NOOP("terms",
                       "One of four groups of species by the UV index they were met in, from shade dwellers to "
                       "sun baskers. The target for a species comes from its zone.")},
    {QT_TRANSLATE_NOOP("terms", "Open share of the mesh"),
     QT_TRANSLATE_NOOP("terms", "How much of a screen is holes. It decides how much light, UV and moisture pass.")},
    {QT_TRANSLATE_NOOP("terms", "Timed and always on"),
     QT_TRANSLATE_NOOP("terms",
                       "Timed: on an outlet that a timer switches, for lamps. Always on: with a thermostat or for "
                       "what must not stop at night.")},
    {QT_TRANSLATE_NOOP("terms", "Thermostat and probe"),
     QT_TRANSLATE_NOOP("terms", "The thermostat keeps the place where its probe lies at the set temperature, and only "
                                "that place. The probe's place is therefore part of the plan.")},
    {QT_TRANSLATE_NOOP("terms", "Residual current protection"),
     QT_TRANSLATE_NOOP("terms",
                       "A switch that cuts the mains when current leaks away, through water or a person. Where "
                       "water and mains are near one another it is a must.")},
    {QT_TRANSLATE_NOOP("terms", "Carapace length, snout to vent, total length"),
     QT_TRANSLATE_NOOP("terms",
                       "How animals are measured: the shell in a straight line for turtles and tortoises, from "
                       "the tip of the snout to the vent for lizards and frogs, the whole animal for snakes.")},
    {QT_TRANSLATE_NOOP("terms", "Rule for the floor"),
     QT_TRANSLATE_NOOP("terms",
                       "A published least size: law where the plan names a country that has one, else the advice "
                       "of welfare or veterinary bodies. All that are known are shown, and the strictest "
                       "counts.")},
    {QT_TRANSLATE_NOOP("terms", "Settled depth"),
     QT_TRANSLATE_NOOP("terms",
                       "How deep the bed is after some weeks. Loose material sinks, so more is bought than the "
                       "box seems to need.")},
    {QT_TRANSLATE_NOOP("terms", "Startup and running cost"),
     QT_TRANSLATE_NOOP("terms", "Startup is what is bought before the animal comes. Running is a year of electricity, "
                                "food, bedding, vet, and of each thing that wears out its price over its life.")},
    {QT_TRANSLATE_NOOP("terms", "Winter rest"),
     QT_TRANSLATE_NOOP("terms",
                       "Weeks in the cold that some species need and others don't survive. The program plans one "
                       "only where you ask, and refuses where a species, its age or its health forbid it.")},
    {QT_TRANSLATE_NOOP("terms", "Proving"),
     QT_TRANSLATE_NOOP("terms",
                       "Running the finished box empty for at least a week and reading its thermometers, before "
                       "an animal moves in.")},
    {QT_TRANSLATE_NOOP("terms", "Readings"),
     QT_TRANSLATE_NOOP("terms",
                       "What your thermometers show in the finished box. The program fits its uncertain inputs to "
                       "them, and its ranges become narrower.")},
    {QT_TRANSLATE_NOOP("terms", "Heat wave, power cut, lamp burnt out"),
     QT_TRANSLATE_NOOP("terms",
                       "Drills: the plan is tried on the day something goes wrong, and the hours are told until "
                       "an animal is harmed.")},
};

QString say(const char* text)
{
    return QCoreApplication::translate("terms", text);
}

} // namespace

std::vector<Term> terms()
{
    std::vector<Term> all;
    for (const Row& row : rows) {
        all.push_back({say(row.word), say(row.meaning)});
    }
    std::sort(all.begin(), all.end(),
              [](const Term& one, const Term& other) { return one.word.localeAwareCompare(other.word) < 0; });
    return all;
}

} // namespace loam::desk
