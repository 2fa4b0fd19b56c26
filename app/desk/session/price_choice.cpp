#include "app/desk/session/price_choice.hpp"

#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QStandardPaths>
#include <utility>

#include "app/desk/session/settings.hpp"
#include "app/files/price_file.hpp"

namespace loam::desk {

namespace {

QString filter()
{
    return QObject::tr("Price lists (*.json *.csv);;All files (*)");
}

QString folder()
{
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

} // namespace

PriceChoice::PriceChoice(SharedCatalog built_in, Settings& settings, QWidget* dialog_parent)
    : QObject(dialog_parent), built_in_(std::move(built_in)), settings_(settings), dialog_parent_(dialog_parent)
{
}

SharedCatalog PriceChoice::with_list(const catalog::PriceList& prices) const
{
    auto catalog = std::make_shared<catalog::Catalog>(*built_in_);
    catalog->prices = prices;
    return catalog;
}

SharedCatalog PriceChoice::initial() const
{
    const QString path = settings_.price_list();
    if (path.isEmpty()) {
        return built_in_;
    }
    const files::PriceFile read = files::read_prices(path);
    return read.errors.isEmpty() ? with_list(read.prices) : built_in_;
}

void PriceChoice::choose_asking()
{
    const QString path = QFileDialog::getOpenFileName(dialog_parent_, tr("Use a price list"), folder(), filter());
    if (!path.isEmpty()) {
        use(path);
    }
}

bool PriceChoice::use(const QString& path)
{
    constexpr int shown_lines = 8;
    const files::PriceFile read = files::read_prices(path);
    if (!read.errors.isEmpty()) {
        QMessageBox box(QMessageBox::Warning, tr("This price list can't be used"),
                        tr("“%1” can't be used. The prices are as they were.").arg(QFileInfo(path).fileName()),
                        QMessageBox::Ok, dialog_parent_);
        box.setObjectName(QStringLiteral("priceProblems"));
        box.setInformativeText(QStringList(read.errors.mid(0, shown_lines)).join(QLatin1Char('\n')));
        if (read.errors.size() > shown_lines) {
            box.setDetailedText(read.errors.join(QLatin1Char('\n')));
        }
        box.exec();
        return false;
    }
    settings_.set_price_list(QFileInfo(path).absoluteFilePath());
    emit changed(with_list(read.prices));
    return true;
}

void PriceChoice::use_built_in()
{
    settings_.set_price_list({});
    emit changed(built_in_);
}

void PriceChoice::save_copy_asking(const catalog::PriceList& prices)
{
    const QString path =
        QFileDialog::getSaveFileName(dialog_parent_, tr("Save the price list"),
                                     folder() + QLatin1Char('/') + tr("prices") + QStringLiteral(".csv"), filter());
    if (path.isEmpty()) {
        return;
    }
    const QString error = files::write_prices(prices, path);
    if (!error.isEmpty()) {
        QMessageBox::warning(dialog_parent_, tr("The price list was not saved"), error);
    }
}

} // namespace loam::desk
