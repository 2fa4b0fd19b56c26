#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"out-of-order", QT_TRANSLATE_NOOP("sentences", "“{0}” ({1}) must not be larger than “{2}” ({3}).")},
    {"not-exactly-one", QT_TRANSLATE_NOOP("sentences", "Exactly one of these must stand here: {0}.")},
    {"unknown-format", QT_TRANSLATE_NOOP("sentences", "“{0}” is not a format that is known. The file is left out.")},
    {"classes-order",
     QT_TRANSLATE_NOOP("sentences", "The size classes must ascend, and only the last may leave out its upper end.")},
    {"shares-exceed-one",
     QT_TRANSLATE_NOOP("sentences", "The shares add up to {0}, and they can't be more than 1 together.")},
    {"missing-for-use", QT_TRANSLATE_NOOP("sentences", "“{0}” is missing. It is needed for the use “{1}”.")},
    {"too-many-decimals", QT_TRANSLATE_NOOP("sentences", "{0} has too many decimals: {1} has {2}.")},
    {"not-a-need-kind",
     QT_TRANSLATE_NOOP(
         "sentences",
         "“{0}” is not a kind of need. Write it as two parts with a point between them, such as “substrate.bark”.")},
    {"no-such-date", QT_TRANSLATE_NOOP("sentences", "There is no such date: “{0}”.")},

    {"unknown-rule", QT_TRANSLATE_NOOP("sentences", "It names the space rule “{0}”, which no file has.")},
    {"unknown-material", QT_TRANSLATE_NOOP("sentences", "It names the material “{0}”, which no file has.")},
    {"not-a-substrate",
     QT_TRANSLATE_NOOP("sentences", "It names “{0}” as a substrate, and the material's file does not list that use.")},
    {"measure-differs",
     QT_TRANSLATE_NOOP("sentences",
                       "It names the space rule “{0}”, which goes by {1:measure}, and the sheet gives {2:measure}.")},
    {"unserved-need", QT_TRANSLATE_NOOP("sentences", "Nothing in the price list serves “{0}”.")},
    {"missing-device", QT_TRANSLATE_NOOP("sentences", "There are no figures for equipment of the kind “{0}”.")},

    {"csv-open-quote", QT_TRANSLATE_NOOP("sentences", "A quotation mark is opened and never closed.")},
    {"csv-stray-quote",
     QT_TRANSLATE_NOOP(
         "sentences",
         "There is text beside a quoted cell. Put the whole cell in quotation marks, and double those inside it.")},
    {"csv-too-many-rows", QT_TRANSLATE_NOOP("sentences", "There are too many rows; at most {0} are read.")},
    {"csv-cell-count", QT_TRANSLATE_NOOP("sentences", "This row has {0} cells, and the header has {1}.")},
    {"csv-missing-column", QT_TRANSLATE_NOOP("sentences", "The column “{0}” is missing.")},
    {"csv-unknown-column", QT_TRANSLATE_NOOP("sentences", "“{0}” is not a known column.[ Did you mean “{1}”?]")},
    {"csv-duplicate-column", QT_TRANSLATE_NOOP("sentences", "The column “{0}” stands here twice.")},
    {"csv-not-a-number", QT_TRANSLATE_NOOP("sentences", "“{0}” is not a number. Write it in digits with a point.")},
    {"csv-not-a-flag", QT_TRANSLATE_NOOP("sentences", "“{0}” must be “true” or “false”.")},
    {"csv-differs",
     QT_TRANSLATE_NOOP("sentences",
                       "“{0}” differs from “{1}” in the item's first row. All rows of an item must agree.")},
    {"csv-no-rows", QT_TRANSLATE_NOOP("sentences", "There are no rows below the header.")},
};

} // namespace

Sentences catalog_problem_sentences()
{
    return rows;
}

} // namespace loam::words
