// One price list as a table to be edited, with undo, a filter and what is wrong with it. Saved in one step or not at
// all.
#pragma once

#include <QDialog>

#include "app/desk/document/runner.hpp"
#include "app/desk/prices/price_document.hpp"
#include "app/files/price_shelf.hpp"
#include "app/words/units.hpp"

class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QSortFilterProxyModel;
class QTableView;

namespace loam::desk {

class PriceTableModel;

class PriceEditor : public QDialog {
    Q_OBJECT

public:
    // `path` is where the list came from and goes to; empty: it becomes a further list of the shelf once it is saved.
    // `words` names the needs, its prices serve every kind of need.
    PriceEditor(catalog::PriceList prices, QString path, const files::PriceShelf& shelf, SharedCatalog words,
                words::UnitSystem units, QWidget* parent);

    PriceDocument& document() { return document_; }
    const QString& path() const { return path_; }
    bool save(); // says why where it can't

    void reject() override; // asks before unsaved work is lost

signals:
    void saved(const QString& path);

private:
    QWidget* build_table();
    QWidget* build_tools();
    void build_buttons();
    void refresh();
    void say(const QString& text); // below the table; empty: nothing
    void add_pack_here();
    void add_item_asking();
    void remove_chosen();
    void go_to(const json::Problem& problem);
    void show_row(int row, int column);
    std::vector<int> chosen_rows() const; // of the model

    PriceDocument document_;
    QString path_;
    const files::PriceShelf& shelf_;
    SharedCatalog words_;
    words::UnitSystem units_;
    PriceTableModel* model_;
    QSortFilterProxyModel* sorted_;
    QTableView* table_;
    QLineEdit* filter_;
    QLabel* message_;
    QListWidget* problems_;
    QPushButton* save_ = nullptr;
    QPushButton* remove_ = nullptr;
    QPushButton* pack_ = nullptr;
};

} // namespace loam::desk
