// One order over all enclosures: whole packs, price each, total, what is left over, and for which box.
#pragma once

#include <QTreeWidget>

#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"

namespace loam::desk {

class ShoppingView : public QTreeWidget {
    Q_OBJECT

public:
    explicit ShoppingView(QWidget* parent = nullptr);

    void show_order(const assess::Assessment& assessment, const words::Speaker& speaker);
};

} // namespace loam::desk
