#include "app/desk/session/price_choice.hpp"

#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QStandardPaths>
#include <utility>

#include "app/desk/session/settings.hpp"
#include "app/files/price_file.hpp"

namespace loam::desk {

QString price_file_filter()
{
    return QObject::tr("Price lists (*.json *.csv);;All files (*)");
}

void tell_price_problems(const QString& path, const QStringList& errors, QWidget* parent)
{
    constexpr int shown_lines = 8;
    QMessageBox box(QMessageBox::Warning, QObject::tr("This price list can't be used"),
                    QObject::tr("“%1” can't be used. The prices are as they were.").arg(QFileInfo(path).fileName()),
                    QMessageBox::Ok, parent);
    box.setObjectName(QStringLiteral("priceProblems"));
    box.setInformativeText(errors.mid(0, shown_lines).join(QLatin1Char('\n')));
    if (errors.size() > shown_lines) {
        box.setDetailedText(errors.join(QLatin1Char('\n')));
    }
    box.exec();
}

namespace {

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

std::optional<catalog::PriceList> PriceChoice::read_together(const QStringList& paths, bool told) const
{
    std::vector<catalog::PriceList> lists;
    for (const QString& path : paths) {
        files::PriceFile read = files::read_prices(path);
        if (read.errors.isEmpty() && !lists.empty() && read.prices.currency != lists.front().currency) {
            read.errors << tr("It is in %1 and the other one in %2. Lists of one currency can be used together.")
                               .arg(QString::fromStdString(read.prices.currency),
                                    QString::fromStdString(lists.front().currency));
        }
        if (!read.errors.isEmpty()) {
            if (told) {
                tell_price_problems(path, read.errors, dialog_parent_);
            }
            return std::nullopt;
        }
        lists.push_back(std::move(read.prices));
    }
    return lists.empty() ? built_in_->prices : catalog::put_together(lists);
}

SharedCatalog PriceChoice::initial() const
{
    const auto prices = read_together(paths(), false);
    return prices ? with_list(*prices) : built_in_;
}

QStringList PriceChoice::paths() const
{
    return settings_.price_lists();
}

void PriceChoice::choose_asking()
{
    const QString path =
        QFileDialog::getOpenFileName(dialog_parent_, tr("Use a price list"), folder(), price_file_filter());
    if (!path.isEmpty()) {
        use({path});
    }
}

bool PriceChoice::use(const QStringList& paths)
{
    QStringList absolute;
    for (const QString& path : paths) {
        absolute << QFileInfo(path).absoluteFilePath();
    }
    const auto prices = read_together(absolute, true);
    if (!prices) {
        return false;
    }
    settings_.set_price_lists(absolute);
    emit changed(absolute.isEmpty() ? built_in_ : with_list(*prices));
    return true;
}

void PriceChoice::use_built_in()
{
    use({});
}

void PriceChoice::write_asking(const catalog::PriceList& prices)
{
    const QString path = QFileDialog::getSaveFileName(
        dialog_parent_, tr("Save the price list"), folder() + QLatin1Char('/') + tr("prices") + QStringLiteral(".csv"),
        price_file_filter());
    if (path.isEmpty()) {
        return;
    }
    const QString error = files::write_prices(prices, path);
    if (!error.isEmpty()) {
        QMessageBox::warning(dialog_parent_, tr("The price list was not saved"), error);
    }
}

} // namespace loam::desk
