// The price list that is being edited, with its undo stack and what is wrong with it. The list may be wrong for a
// while: what is wrong is told, and it can't be saved so.
#pragma once

#include <QObject>
#include <QString>
#include <QUndoStack>

#include "core/catalog/prices.hpp"
#include "core/json/problem.hpp"

namespace loam::desk {

class PriceDocument : public QObject {
    Q_OBJECT

public:
    explicit PriceDocument(catalog::PriceList prices, QObject* parent = nullptr);

    const catalog::PriceList& prices() const { return prices_; }
    const json::Problems& problems() const { return problems_; } // with JSON Pointers into the list
    QUndoStack& undo_stack() { return undo_stack_; }
    bool modified() const { return !undo_stack_.isClean(); }

    // One step of the user, named for the undo button. Successive edits of one non-empty `field` become one step; what
    // changes nothing is dropped.
    void edit(const QString& text, const QString& field, catalog::PriceList changed);

signals:
    void changed();

private:
    void put(const catalog::PriceList& prices);

    catalog::PriceList prices_;
    json::Problems problems_;
    QUndoStack undo_stack_;
};

} // namespace loam::desk
