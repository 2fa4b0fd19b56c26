// Two price lists beside each other: what differs, to be looked at, copied or exported.
#pragma once

#include <QDialog>

#include "app/report/price_lists.hpp"
#include "app/words/numbers.hpp"

namespace loam::desk {

class PriceDifferenceDialog : public QDialog {
    Q_OBJECT

public:
    PriceDifferenceDialog(const catalog::PriceList& first, const catalog::PriceList& second,
                          const words::Formatter& format, QWidget* parent);
};

} // namespace loam::desk
