#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"reading.inconsistent",
     QT_TRANSLATE_NOOP("sentences", "The {reading} doesn't fit: it says {value}, measured {measure}, where {range} is "
                                    "expected from all the rest. It is left out. Check the thermometer and its place, "
                                    "then what the plan says of lamps, covers and mesh.")},
    {"reading.inconsistent",
     QT_TRANSLATE_NOOP("sentences",
                       "The {reading} is too warm to fit: it says {value}, measured {measure}, where {range} "
                       "is expected from all the rest. It is left out, and if it is right, the box is "
                       "warmer than told here. Check the thermometer and its place, then what the plan "
                       "says of lamps, covers and mesh."),
     Verdict::not_known, Direction::above},
    {"reading.inconsistent",
     QT_TRANSLATE_NOOP("sentences",
                       "The {reading} is too cold to fit: it says {value}, measured {measure}, where {range} "
                       "is expected from all the rest. It is left out, and if it is right, the box is "
                       "colder than told here. Check the thermometer and its place, then what the plan "
                       "says of lamps, covers and mesh."),
     Verdict::not_known, Direction::below},
    {"reading.outside-box",
     QT_TRANSLATE_NOOP("sentences", "The {reading} lies outside the floor of the box, so it is not used.")},
    {"reading.lamps-not-stated",
     QT_TRANSLATE_NOOP("sentences", "The {reading}: whether the lamps were on is not stated, so it is not used.")},
    {"reading.dimmer-not-stated",
     QT_TRANSLATE_NOOP("sentences", "The {reading} was taken with a dimmer on whose level is not stated, so it is not "
                                    "used. State the level it was set to.")},
    {"reading.other-conditions",
     QT_TRANSLATE_NOOP("sentences",
                       "The {reading} was taken with the room at {room}. No case here has its lamps as then "
                       "and a room within {alike_within} of that, so it narrows none.")},
    {"readings.too-few",
     QT_TRANSLATE_NOOP("sentences", "Readings used: {count}. With {needed} or more, one at the basking spot, one on "
                                    "the warm and one on the cool side, they tell more.")},
    {"readings.do-not-fit",
     QT_TRANSLATE_NOOP("sentences",
                       "The readings don't fit the box of this plan, all together ({chance:percent} chance "
                       "of a worse fit if all were as assumed). None is used. Check whether the box still "
                       "is as it was when they were taken.")},
    {"readings.not-computable",
     QT_TRANSLATE_NOOP("sentences", "The readings could not be compared with the box, so none is used.")},
};

} // namespace

Sentences reading_sentences()
{
    return rows;
}

} // namespace loam::words
