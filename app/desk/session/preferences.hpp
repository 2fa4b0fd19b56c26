// The preferences in one place: language, units, appearance, paper, prices, and whose name stands on printed sheets.
#pragma once

#include <QDialog>

class QFormLayout;

namespace loam::desk {

class PriceChoice;
class Settings;

class Preferences : public QDialog {
    Q_OBJECT

public:
    // What is chosen counts at once; the language when the program next starts, which may be at once too.
    Preferences(Settings& settings, const PriceChoice& prices, QWidget* parent = nullptr);

signals:
    void priceListsWanted();
    void startAgainWanted();

private:
    void add_language(QFormLayout& form);
    void add_choices(QFormLayout& form);
    void add_prices(QFormLayout& form, const PriceChoice& prices);
    void add_printed(QFormLayout& form);

    Settings& settings_;
};

} // namespace loam::desk
