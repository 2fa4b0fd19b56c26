// One price list in short, and the difference of two: `loamstead-cli prices`.
#pragma once

#include <QString>
#include <QStringList>
#include <chrono>
#include <string>

#include "app/report/pasted_table.hpp"
#include "app/words/speaker.hpp"
#include "core/catalog/price_difference.hpp"
#include "core/catalog/price_state.hpp"

namespace loam::report {

struct PriceListShown {
    const catalog::PriceList& prices;
    const catalog::PriceState& state;
    std::chrono::year_month_day date; // of which the age is
};

std::string price_list_json(const PriceListShown& list);
QString text_price_list(const PriceListShown& list, const words::Speaker& speaker);
// What a keeper should know before relying on the list, a sentence each: that it is old, invented, what is out of stock
// and what has no price. Empty: nothing.
QStringList price_list_remarks(const PriceListShown& list, const words::Speaker& speaker);
QString price_list_age(const PriceListShown& list, const words::Formatter& format); // "2026-11-01, 0.9 months old on …"

struct TwoPriceLists {
    const catalog::PriceList& first;
    const catalog::PriceList& second;
    const catalog::PriceDifference& difference;
};

std::string price_difference_json(const TwoPriceLists& lists);
std::string price_difference_csv(const TwoPriceLists& lists); // a row for each pack that differs
PastedTable price_difference_table(const TwoPriceLists& lists, const words::Formatter& format);
QString text_price_difference(const TwoPriceLists& lists, const words::Formatter& format);

// Where the lists' prices can't be compared, why; else empty.
QString not_compared(const TwoPriceLists& lists);

} // namespace loam::report
