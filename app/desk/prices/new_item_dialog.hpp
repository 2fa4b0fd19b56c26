// Asks what a further item of a price list is: nothing is assumed, and without a price there is none.
#pragma once

#include <QDialog>
#include <optional>

#include "app/desk/prices/price_delegates.hpp"
#include "app/desk/prices/price_edits.hpp"
#include "app/words/numbers.hpp"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace loam::desk {

class NewItemDialog : public QDialog {
    Q_OBJECT

public:
    NewItemDialog(const std::vector<Choice>& needs, words::Formatter format, QWidget* parent);

    std::optional<NewItem> item() const; // nullopt while something is missing

private:
    void refresh();

    words::Formatter format_;
    QComboBox* need_;
    QLineEdit* name_;
    QLineEdit* pack_;
    QLineEdit* amount_;
    QLineEdit* price_;
    QLabel* missing_;
    QPushButton* add_;
};

} // namespace loam::desk
