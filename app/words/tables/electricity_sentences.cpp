#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"circuit.load-not-known",
     QT_TRANSLATE_NOOP("sentences", "What else runs on {circuit} is not stated. The enclosures alone draw {likely}.")},
    {"circuit.near-limit",
     QT_TRANSLATE_NOOP("sentences", "{circuit} is near its limit: {range} runs on it for hours, and {max} is the most "
                                    "that should ({rating} at {voltage}).")},
    {"strip.rating-not-known",
     QT_TRANSLATE_NOOP("sentences", "What {strip} may carry is not stated. It feeds {likely}.")},
    {"strip.near-limit", QT_TRANSLATE_NOOP("sentences", "{strip} is near its limit: {range} runs on it for hours, and "
                                                        "{max} is the most that should ({rating} at {voltage}).")},
    {"strip.outlets-short",
     QT_TRANSLATE_NOOP("sentences", "{strip} has too few {supply} outlets: {used} are needed, and it has {outlets}.")},
    {"strip.outlets-not-known",
     QT_TRANSLATE_NOOP("sentences", "How many {supply} outlets {strip} has is not stated. Needed: {used}.")},
    {"strip.daisy-chain",
     QT_TRANSLATE_NOOP("sentences", "{strip} is plugged into {fed_from}. Strips fed by strips overheat at the plug.")},
    {"strip.no-residual-current-protection",
     QT_TRANSLATE_NOOP("sentences", "{strip} has no residual-current protection, and there is water near it.")},
    {"strip.residual-current-protection-not-stated",
     QT_TRANSLATE_NOOP("sentences",
                       "It is not stated whether {strip} has residual-current protection. Near water it should.")},
    {"strip.circuit-not-known",
     QT_TRANSLATE_NOOP("sentences", "{strip} names the circuit “{circuit}”, which is not in the plan.")},
    {"device.no-strip",
     QT_TRANSLATE_NOOP(
         "sentences",
         "It is not stated where {device} ({power}) is plugged in, so its load is on no strip and no circuit.")},
    {"device.supply-not-stated",
     QT_TRANSLATE_NOOP("sentences", "It is not stated whether {device} is timed or always on.")},
    {"device.power-not-stated",
     QT_TRANSLATE_NOOP("sentences", "The power of {device} is not stated. For its kind, {range} was taken.")},
    {"control.dimmer-unsuited", QT_TRANSLATE_NOOP("sentences", "{device} should not run on a dimmer: it is {load}.")},
    {"control.thermostat-unsuited",
     QT_TRANSLATE_NOOP("sentences", "{device} should not run on a thermostat: it is {load}.")},
    {"control.on-off-with-lamp",
     QT_TRANSLATE_NOOP("sentences", "{device} gives light, and its thermostat switches it on and off. That flickers by "
                                    "day and shortens the lamp's life.")},
    {"control.heater-unregulated",
     QT_TRANSLATE_NOOP("sentences", "{device} ({power}) runs without a thermostat. Nothing stops it on a warm day.")},
    {"control.thermostat-without-probe",
     QT_TRANSLATE_NOOP(
         "sentences", "It is not stated where the thermostat of {device} has its probe, so it counts as unregulated.")},
    {"control.thermostat-without-setpoint",
     QT_TRANSLATE_NOOP(
         "sentences",
         "It is not stated what temperature the thermostat of {device} is set to, so it counts as unregulated.")},
    {"control.mat-on-timer",
     QT_TRANSLATE_NOOP("sentences",
                       "{device} is on the timer, so it is cold at night, when its warmth may be needed most.")},
    {"electrical.water-near-mains", QT_TRANSLATE_NOOP("sentences", "Water is near mains voltage: {reason}.")},
    {"electrical.lamp-holder",
     QT_TRANSLATE_NOOP("sentences", "{device} ({power}) gets hot and needs a heat-rated holder.")},
};

} // namespace

Sentences electricity_sentences()
{
    return rows;
}

} // namespace loam::words
