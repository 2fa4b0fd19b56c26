// The list being edited as a table for Qt's views: a row for each pack, edits as steps of the document.
#pragma once

#include <QAbstractTableModel>
#include <QIcon>
#include <map>
#include <vector>

#include "app/desk/document/runner.hpp"
#include "app/desk/prices/price_cells.hpp"
#include "app/desk/prices/price_document.hpp"

namespace loam::desk {

class PriceTableModel : public QAbstractTableModel {
    Q_OBJECT

public:
    // `words` names the kinds of need. The document outlives the model.
    PriceTableModel(PriceDocument& document, SharedCatalog words, words::UnitSystem units, QObject* parent);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

    const PackPlace& place(int row) const { return places_[static_cast<std::size_t>(row)]; }
    int row_of(const PackPlace& place) const; // -1: there is no such pack
    QString name_of_need(const std::string& kind) const { return speaker_.need(kind); }

    // The raw codes of need and unit, for those who choose them.
    static constexpr int code_role = Qt::UserRole;
    // For sorting: numbers as numbers.
    static constexpr int order_role = Qt::UserRole + 1;

signals:
    void refused(const QString& why); // what was typed last can't be taken; empty: it was taken

private:
    void refresh();
    QVariant order_of(const PackPlace& place, PriceColumn column) const;

    PriceDocument& document_;
    SharedCatalog words_;
    plan::Plan no_plan_;
    words::Speaker speaker_;
    QIcon mark_; // of a cell that is wrong
    std::vector<PackPlace> places_;
    std::map<std::pair<int, int>, QString> problems_; // by row and column
};

} // namespace loam::desk
