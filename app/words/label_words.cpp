#include "app/words/label_words.hpp"

#include <QCoreApplication>

namespace loam::words {

namespace {

struct LabelWord {
    std::string_view label;
    std::string_view value;
    const char* text;
};

constexpr LabelWord rows[] = {
    {"case", "winter-day", QT_TRANSLATE_NOOP("labels", "on a winter day")},
    {"case", "winter-night", QT_TRANSLATE_NOOP("labels", "on a winter night")},
    {"case", "summer-day", QT_TRANSLATE_NOOP("labels", "on a summer day")},
    {"case", "summer-night", QT_TRANSLATE_NOOP("labels", "on a summer night")},
    {"case", "heat-wave", QT_TRANSLATE_NOOP("labels", "in a heat wave")},
    {"case", "power-cut", QT_TRANSLATE_NOOP("labels", "in a power cut")},
    {"case", "lamp-out", QT_TRANSLATE_NOOP("labels", "with the lamp burnt out")},
    {"case", "mat-stuck-on", QT_TRANSLATE_NOOP("labels", "if the mat sticks on")},
    {"case", "covers-off", QT_TRANSLATE_NOOP("labels", "with the covers forgotten off")},
    {"course", "winter", QT_TRANSLATE_NOOP("labels", "the winter day")},
    {"course", "summer", QT_TRANSLATE_NOOP("labels", "the summer day")},
    {"course", "warm-up", QT_TRANSLATE_NOOP("labels", "the first warming up")},
    {"course", "power-cut", QT_TRANSLATE_NOOP("labels", "a power cut")},
    {"course", "lamp-out", QT_TRANSLATE_NOOP("labels", "a burnt-out lamp")},
    {"course", "mat-stuck-on", QT_TRANSLATE_NOOP("labels", "a mat that sticks on")},
    {"course", "heat-wave", QT_TRANSLATE_NOOP("labels", "a heat wave")},
    {"course", "covers-off", QT_TRANSLATE_NOOP("labels", "a box whose covers are forgotten off")},
    {"season", "winter", QT_TRANSLATE_NOOP("labels", "in winter")},
    {"season", "summer", QT_TRANSLATE_NOOP("labels", "in summer")},
    {"measure", "surface", QT_TRANSLATE_NOOP("labels", "at the surface")},
    {"measure", "ground", QT_TRANSLATE_NOOP("labels", "in the shade at ground level")},
    {"measure", "operative", QT_TRANSLATE_NOOP("labels", "at the animal's back")},
    {"zone", "basking", QT_TRANSLATE_NOOP("labels", "basking spot")},
    {"zone", "warm", QT_TRANSLATE_NOOP("labels", "warm side")},
    {"zone", "cool", QT_TRANSLATE_NOOP("labels", "cool side")},
    {"zone", "night", QT_TRANSLATE_NOOP("labels", "night")},
    {"combustible", "yes", QT_TRANSLATE_NOOP("labels", "can burn")},
    {"combustible", "no", QT_TRANSLATE_NOOP("labels", "can't burn")},
    {"regulated", "yes", QT_TRANSLATE_NOOP("labels", "Its thermostat holds it.")},
    {"regulated", "no", QT_TRANSLATE_NOOP("labels", "No thermostat holds it.")},
    {"answer", "yes", QT_TRANSLATE_NOOP("labels", "yes")},
    {"answer", "no", QT_TRANSLATE_NOOP("labels", "no")},
    {"answer", "unknown", QT_TRANSLATE_NOOP("labels", "not known")},
    {"answer", "absent", QT_TRANSLATE_NOOP("labels", "not stated")},
    {"resident", "yes", QT_TRANSLATE_NOOP("labels", "away from those that already live here")},
    {"resident", "no", QT_TRANSLATE_NOOP("labels", "also where it is the first")},
    {"side", "warm", QT_TRANSLATE_NOOP("labels", "warm")},
    {"side", "cool", QT_TRANSLATE_NOOP("labels", "cool")},
    {"side_name", "long", QT_TRANSLATE_NOOP("labels", "longer side")},
    {"side_name", "short", QT_TRANSLATE_NOOP("labels", "shorter side")},
    {"side_name", "length", QT_TRANSLATE_NOOP("labels", "length")},
    {"side_name", "width", QT_TRANSLATE_NOOP("labels", "width")},
    {"supply", "timed", QT_TRANSLATE_NOOP("labels", "timed")},
    {"supply", "always-on", QT_TRANSLATE_NOOP("labels", "always-on")},
    {"load", "resistive", QT_TRANSLATE_NOOP("labels", "a plain heating load")},
    {"load", "ballast", QT_TRANSLATE_NOOP("labels", "a lamp with a ballast")},
    {"load", "electronic", QT_TRANSLATE_NOOP("labels", "an electronic load")},
    {"load", "motor", QT_TRANSLATE_NOOP("labels", "a motor")},
    {"thing", "walls", QT_TRANSLATE_NOOP("labels", "a wall")},
    {"thing", "base", QT_TRANSLATE_NOOP("labels", "the base")},
    {"thing", "top", QT_TRANSLATE_NOOP("labels", "the top")},
    {"part", "wall", QT_TRANSLATE_NOOP("labels", "wall")},
    {"part", "walls", QT_TRANSLATE_NOOP("labels", "walls")},
    {"part", "base", QT_TRANSLATE_NOOP("labels", "base")},
    {"part", "top", QT_TRANSLATE_NOOP("labels", "top")},
    {"part", "cover", QT_TRANSLATE_NOOP("labels", "cover")},
    {"part", "substrate", QT_TRANSLATE_NOOP("labels", "substrate")},
    {"part", "below", QT_TRANSLATE_NOOP("labels", "what lies below")},
    {"rule_kind", "statutory", QT_TRANSLATE_NOOP("labels", "statutory")},
    {"rule_kind", "welfare", QT_TRANSLATE_NOOP("labels", "welfare advice")},
    {"rule_kind", "veterinary", QT_TRANSLATE_NOOP("labels", "veterinary advice")},
    {"rule_kind", "laboratory", QT_TRANSLATE_NOOP("labels", "laboratory minimum")},
    {"jurisdiction", "none", QT_TRANSLATE_NOOP("labels", "no particular place")},
    {"reason", "material-not-known", QT_TRANSLATE_NOOP("labels", "a material is not on file")},
    {"reason", "material-incomplete", QT_TRANSLATE_NOOP("labels", "a material's figures are incomplete")},
    {"reason", "assumption-missing",
     QT_TRANSLATE_NOOP("labels", "something is not stated, and nothing on file stands in for it")},
    {"reason", "box-not-physical", QT_TRANSLATE_NOOP("labels", "a length or thickness is not possible")},
    {"reason", "power-not-known", QT_TRANSLATE_NOOP("labels", "the power of a device is not known")},
    {"reason", "no-table", QT_TRANSLATE_NOOP("labels", "the lamp has no distance table or meter reading")},
    {"reason", "too-near", QT_TRANSLATE_NOOP("labels", "the animal comes nearer than the lamp's readings reach")},
    {"reason", "too-far", QT_TRANSLATE_NOOP("labels", "the animal is further away than the lamp's readings reach")},
    {"reason", "off-beam", QT_TRANSLATE_NOOP("labels", "the place lies beside the lamp, and its beam is not known")},
    {"reason", "age-unknown",
     QT_TRANSLATE_NOOP("labels", "it has burnt for a while, and how fast it fades is not known")},
    {"reason", "bowl-under-device", QT_TRANSLATE_NOOP("labels", "a water bowl stands under a device")},
    {"reason", "mister", QT_TRANSLATE_NOOP("labels", "a mister sprays in the box")},
    {"reason", "water-present", QT_TRANSLATE_NOOP("labels", "there is water in the box")},
    {"reason", "species-does-not-rest",
     QT_TRANSLATE_NOOP("labels", "its species does not rest through the winter, and the cold harms it")},
    {"reason", "ill", QT_TRANSLATE_NOOP("labels", "it is ill")},
    {"reason", "underweight", QT_TRANSLATE_NOOP("labels", "it is underweight")},
    {"reason", "first-winter", QT_TRANSLATE_NOOP("labels", "this is its first winter")},
    {"reason", "health-not-stated", QT_TRANSLATE_NOOP("labels", "it is not stated whether it is well")},
    {"reason", "age-not-stated",
     QT_TRANSLATE_NOOP("labels", "its age is not stated, and an animal in its first winter must stay warm")},
    {"reason", "weight-not-stated",
     QT_TRANSLATE_NOOP("labels", "its weight is not stated, and the rest ends by weight")},
    {"reason", "cold-not-known",
     QT_TRANSLATE_NOOP("labels", "no temperatures for a rest are on file for its species; it does not need one")},
    {"reason", "date-not-a-day", QT_TRANSLATE_NOOP("labels", "its day is not in the calendar")},
    {"reason", "date-to-come", QT_TRANSLATE_NOOP("labels", "its day is still to come")},
    {"reason", "over", QT_TRANSLATE_NOOP("labels", "the rest that is stated is over; enter the next one")},
    {"reason", "latitude-not-stated", QT_TRANSLATE_NOOP("labels", "the latitude is not stated")},
    {"reason", "sheets-without-hours",
     QT_TRANSLATE_NOOP("labels", "the species here have no hours of light on file that suit all")},
};

} // namespace

std::optional<QString> label_word(std::string_view label, std::string_view value)
{
    for (const LabelWord& row : rows) {
        if (row.label == label && row.value == value) {
            return QCoreApplication::translate("labels", row.text);
        }
    }
    return std::nullopt;
}

} // namespace loam::words
