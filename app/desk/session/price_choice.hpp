// Which price lists are in use: the one that comes with the program, or files of the user's (JSON or CSV).
#pragma once

#include <QObject>
#include <QStringList>
#include <optional>

#include "app/desk/document/runner.hpp"

class QWidget;

namespace loam::desk {

class Settings;

class PriceChoice : public QObject {
    Q_OBJECT

public:
    // `built_in` holds the guidance with its own price list.
    PriceChoice(SharedCatalog built_in, Settings& settings, QWidget* dialog_parent);

    // The catalog to begin with: with the list chosen last time where it can still be read.
    SharedCatalog initial() const;

    const SharedCatalog& built_in() const { return built_in_; }
    QStringList paths() const; // of the lists in use; empty: the one that comes with the program

    void choose_asking(); // file dialog
    // Buys from these lists together, each a place of its own. False: one can't be read or counts in another currency,
    // which was said, and all is as it was.
    bool use(const QStringList& paths);
    void use_built_in();
    void write_asking(const catalog::PriceList& prices); // JSON or CSV by the file's ending

signals:
    void changed(const loam::desk::SharedCatalog& catalog);

private:
    // nullopt where one of them can't be read or counts in another currency; `told` tells why in a dialog.
    std::optional<catalog::PriceList> read_together(const QStringList& paths, bool told) const;
    SharedCatalog with_list(const catalog::PriceList& prices) const;

    SharedCatalog built_in_;
    Settings& settings_;
    QWidget* dialog_parent_;
};

QString price_file_filter(); // of file dialogs
// Says what is wrong with a list that was to be used or taken in, the first lines at once and all under "Details".
void tell_price_problems(const QString& path, const QStringList& errors, QWidget* parent);

} // namespace loam::desk
