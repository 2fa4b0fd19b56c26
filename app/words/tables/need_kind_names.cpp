// Needs that are not named by a material, a device or a fitting.
#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"animal.adoption", QT_TRANSLATE_NOOP("sentences", "adoption fee")},
    {"animal.permit", QT_TRANSLATE_NOOP("sentences", "permit")},
    {"care.calcium", QT_TRANSLATE_NOOP("sentences", "calcium powder")},
    {"control.dimmer", QT_TRANSLATE_NOOP("sentences", "dimmer")},
    {"control.thermostat-dimming", QT_TRANSLATE_NOOP("sentences", "dimming thermostat")},
    {"control.thermostat-on-off", QT_TRANSLATE_NOOP("sentences", "on/off thermostat")},
    {"control.timer", QT_TRANSLATE_NOOP("sentences", "timer")},
    {"device.fan", QT_TRANSLATE_NOOP("sentences", "fan")},
    {"electrical.rcd-adapter", QT_TRANSLATE_NOOP("sentences", "residual-current adapter")},
    {"electrical.strip", QT_TRANSLATE_NOOP("sentences", "outlet strip")},
    {"fixture.ballast", QT_TRANSLATE_NOOP("sentences", "ballast")},
    {"fixture.lamp-guard", QT_TRANSLATE_NOOP("sentences", "lamp guard")},
    {"fixture.lamp-holder", QT_TRANSLATE_NOOP("sentences", "heat-rated lamp holder")},
    {"fixture.uv-fixture", QT_TRANSLATE_NOOP("sentences", "UV fixture")},
    {"food.fruit-flies", QT_TRANSLATE_NOOP("sentences", "fruit fly cultures")},
    {"food.greens", QT_TRANSLATE_NOOP("sentences", "greens")},
    {"food.insects", QT_TRANSLATE_NOOP("sentences", "insects")},
    {"food.mice", QT_TRANSLATE_NOOP("sentences", "frozen mice")},
    {"food.powder", QT_TRANSLATE_NOOP("sentences", "powdered food")},
    {"food.rats", QT_TRANSLATE_NOOP("sentences", "frozen rats")},
    {"health.sick-reserve", QT_TRANSLATE_NOOP("sentences", "reserve for illness")},
    {"health.vet-visit", QT_TRANSLATE_NOOP("sentences", "visit to the vet")},
    {"hygiene.disinfectant", QT_TRANSLATE_NOOP("sentences", "disinfectant")},
    {"hygiene.gloves", QT_TRANSLATE_NOOP("sentences", "gloves")},
    {"hygiene.quarantine-box", QT_TRANSLATE_NOOP("sentences", "quarantine box")},
    {"measure.hygrometer", QT_TRANSLATE_NOOP("sentences", "hygrometer")},
    {"measure.infrared-thermometer", QT_TRANSLATE_NOOP("sentences", "infrared thermometer")},
    {"measure.scale", QT_TRANSLATE_NOOP("sentences", "scale")},
    {"measure.thermometer", QT_TRANSLATE_NOOP("sentences", "thermometer")},
    {"measure.uv-meter", QT_TRANSLATE_NOOP("sentences", "UV index meter")},
    {"shell.glass", QT_TRANSLATE_NOOP("sentences", "glass box")},
    {"shell.plastic", QT_TRANSLATE_NOOP("sentences", "plastic box")},
    {"shell.wood", QT_TRANSLATE_NOOP("sentences", "wooden box")},
    {"stand", QT_TRANSLATE_NOOP("sentences", "stand")},
    {"water.conditioner", QT_TRANSLATE_NOOP("sentences", "water conditioner")},
    {"water.filter-cartridge", QT_TRANSLATE_NOOP("sentences", "filter cartridge")},
    {"water.mister", QT_TRANSLATE_NOOP("sentences", "mister")},
};

} // namespace

Sentences need_kind_names()
{
    return rows;
}

} // namespace loam::words
