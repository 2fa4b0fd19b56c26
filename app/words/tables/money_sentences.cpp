#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"money.currency-mismatch",
     QT_TRANSLATE_NOOP("sentences", "The plan is in {plan_currency} and the price list in {list_currency}. Nothing is "
                                    "costed, since no rate is assumed.")},
    {"money.unpriced",
     QT_TRANSLATE_NOOP("sentences",
                       "Things without a price in the list: {count}. The totals leave them out: {needs}.")},
    {"money.no-tariff",
     QT_TRANSLATE_NOOP(
         "sentences",
         "The price of electricity is not stated, so the running costs leave it out. Use: {kwh_per_year} a year.")},
    {"money.prices-illustrative",
     QT_TRANSLATE_NOOP(
         "sentences",
         "The prices are invented examples of {date}. Put your own shop's prices in their place before you decide.")},
    {"money.prices-old", QT_TRANSLATE_NOOP("sentences", "The price list is of {date}, {age_months} old.")},
    {"money.owned-not-in-list",
     QT_TRANSLATE_NOOP(
         "sentences",
         "You own “{item}” ({quantity}), which the price list does not have. It is not set off against anything.")},
    {"money.below-minimum",
     QT_TRANSLATE_NOOP("sentences", "What is bought at “{channel}” comes to {goods}, less than it takes orders for.")},
    {"money.channel-not-in-list",
     QT_TRANSLATE_NOOP("sentences", "You want to buy at “{channel}”, which the price list does not know. Everything is "
                                    "bought wherever it is cheapest.")},
    {"money.wish-idle",
     QT_TRANSLATE_NOOP("sentences", "A change of the needs meets nothing: the plan needs no {need}, or the price list "
                                    "has no such item in its unit ({item}).")},
    {"money.left-out", QT_TRANSLATE_NOOP("sentences", "Left out of the order at your wish: {need}.")},
    {"money.safety-left-out",
     QT_TRANSLATE_NOOP("sentences", "Left out of the order at your wish, though safety hangs on it: {need}.")},
    {"money.too-large", QT_TRANSLATE_NOOP("sentences", "A sum is too large to be computed exactly.")},
};

} // namespace

Sentences money_sentences()
{
    return rows;
}

} // namespace loam::words
