#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"record.growth",
     QT_TRANSLATE_NOOP("sentences", "The newest length of {animal} is {length}. Its first length made {min}[ to {max}] "
                                    "expected ({species}).")},
    {"record.growth",
     QT_TRANSLATE_NOOP("sentences",
                       "{animal} has grown more slowly than expected: {length}, where its first length made "
                       "{min}[ to {max}] expected ({species})."),
     Verdict::falls_short, Direction::below},
    {"record.growth",
     QT_TRANSLATE_NOOP("sentences",
                       "{animal} may have grown more slowly than expected: {length}, where its first length "
                       "made {min}[ to {max}] expected ({species})."),
     Verdict::tight, Direction::below},
    {"record.growth",
     QT_TRANSLATE_NOOP("sentences",
                       "{animal} has grown faster than published: {length}, where {min}[ to {max}] was "
                       "expected ({species}). It needs more room sooner; ask whether it is fed too richly."),
     Verdict::tight, Direction::above},
    {"record.weight-loss",
     QT_TRANSLATE_NOOP("sentences",
                       "{animal} has lost {lost:percent} of its weight: from {from} on {date} to {to}, within "
                       "{days}.")},
    {"proving.both-run",
     QT_TRANSLATE_NOOP("sentences",
                       "{old} keeps running while {new} is proved, {daily} a day: {energy_min} to {energy_max} over "
                       "{days_min} to {days_max}. It is in the loads of circuits and strips, and in no running cost.")},
    {"proving.overload-meanwhile",
     QT_TRANSLATE_NOOP("sentences",
                       "Too much hangs on {carrier} only while both boxes run: up to {both}, and {afterwards} "
                       "once the old one has gone.")},
    {"record.not-used", QT_TRANSLATE_NOOP("sentences", "A measurement of {animal} is not used ({day}): {reason}.")},
};

} // namespace

Sentences record_sentences()
{
    return rows;
}

} // namespace loam::words
