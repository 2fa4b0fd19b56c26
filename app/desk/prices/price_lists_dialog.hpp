// The price lists at hand: which is in use, what to know of each, and what can be done with them.
#pragma once

#include <QDialog>
#include <optional>

#include "app/desk/session/price_choice.hpp"
#include "app/files/price_shelf.hpp"
#include "app/words/units.hpp"

class QDialogButtonBox;
class QLabel;
class QPushButton;
class QTreeWidget;

namespace loam::desk {

class PriceListsDialog : public QDialog {
    Q_OBJECT

public:
    // `shelf_folder` holds the lists kept with the program.
    PriceListsDialog(PriceChoice& choice, const QString& shelf_folder, words::UnitSystem units, QWidget* parent);

    // Opens the list for editing; of the one that comes with the program a copy, which is kept once it is saved.
    void edit(int row);

private:
    struct Listed {
        QString path; // empty: comes with the program
        files::PriceFile file;
    };

    QWidget* build_buttons();
    bool in_use(const Listed& listed) const;
    void read_lists(const QString& then_choose);
    void refresh();
    const Listed* chosen() const;
    bool readable() const;
    QString remarks_of(const Listed& listed) const;
    std::optional<QString> copy_to_shelf(const catalog::PriceList& prices);
    void use_chosen();
    void use_too_or_leave_off();
    void copy_chosen();
    void take_in_asking();
    void write_out_asking();
    void delete_asking();
    void compare_with_used();

    PriceChoice& choice_;
    files::PriceShelf shelf_;
    words::UnitSystem units_;
    std::vector<Listed> lists_;
    QTreeWidget* table_;
    QLabel* about_;
    QPushButton* use_ = nullptr;
    QPushButton* together_ = nullptr;
    QPushButton* edit_ = nullptr;
    QPushButton* copy_ = nullptr;
    QPushButton* write_ = nullptr;
    QPushButton* compare_ = nullptr;
    QPushButton* delete_ = nullptr;
};

} // namespace loam::desk
