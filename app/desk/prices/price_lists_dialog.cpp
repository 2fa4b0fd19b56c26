#include "app/desk/prices/price_lists_dialog.hpp"

#include <QDate>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QScrollArea>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/desk/look/table_manners.hpp"
#include "app/desk/prices/price_difference_dialog.hpp"
#include "app/desk/prices/price_editor.hpp"
#include "app/report/price_lists.hpp"
#include "app/words/speaker.hpp"

namespace loam::desk {

namespace {

enum Column { title_column, place_column, date_column, currency_column, packs_column, used_column };

std::size_t packs_of(const catalog::PriceList& prices)
{
    std::size_t packs = 0;
    for (const catalog::Item& item : prices.items) {
        packs += item.packs.size();
    }
    return packs;
}

std::string copy_title(const catalog::PriceList& prices)
{
    return QObject::tr("Copy of %1").arg(QString::fromStdString(prices.title)).toStdString();
}

std::chrono::year_month_day today()
{
    const QDate date = QDate::currentDate();
    return std::chrono::year(date.year()) / date.month() / date.day();
}

} // namespace

PriceListsDialog::PriceListsDialog(PriceChoice& choice, const QString& shelf_folder, words::UnitSystem units,
                                   QWidget* parent)
    : QDialog(parent), choice_(choice), shelf_(shelf_folder), units_(units), table_(new QTreeWidget(this)),
      about_(new QLabel(this))
{
    setObjectName(QStringLiteral("priceListsDialog"));
    setWindowTitle(tr("Price lists"));
    table_->setObjectName(QStringLiteral("priceLists"));
    table_->setAccessibleName(tr("Price lists"));
    table_->setRootIsDecorated(false);
    table_->setHeaderLabels({tr("Name"), tr("Place"), tr("Date"), tr("Currency"), tr("Packs"), tr("In use")});
    set_table_manners(*table_);
    about_->setObjectName(QStringLiteral("priceListAbout"));
    about_->setTextFormat(Qt::PlainText);
    about_->setWordWrap(true);
    about_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    about_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    about_->setMargin(6);
    auto* about_area = new QScrollArea(this);
    about_area->setWidgetResizable(true);
    about_area->setWidget(about_);
    about_area->setFrameShape(QFrame::NoFrame);

    auto* left = new QVBoxLayout;
    left->addWidget(table_, 3);
    left->addWidget(about_area, 2);
    auto* row = new QHBoxLayout;
    row->addLayout(left, 1);
    row->addWidget(build_buttons());
    auto* close = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* column = new QVBoxLayout(this);
    column->addLayout(row, 1);
    column->addWidget(close);
    connect(close, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(table_, &QTreeWidget::currentItemChanged, this, &PriceListsDialog::refresh);
    connect(table_, &QTreeWidget::itemDoubleClicked, this, [this] {
        if (readable()) {
            edit(table_->indexOfTopLevelItem(table_->currentItem()));
        }
    });
    resize(860, 480);
    read_lists(choice_.paths().value(0));
}

QWidget* PriceListsDialog::build_buttons()
{
    auto* column_widget = new QWidget(this);
    auto* column = new QVBoxLayout(column_widget);
    column->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& text, const char* name, auto slot) {
        auto* button = new QPushButton(text, column_widget);
        button->setObjectName(QString::fromLatin1(name));
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, slot);
        column->addWidget(button);
        return button;
    };
    use_ = add(tr("&Use it"), "listUse", [this] { use_chosen(); });
    together_ = add(tr("Use it t&oo"), "listTogether", [this] { use_too_or_leave_off(); });
    together_->setToolTip(tr("Buys from several lists, each a place of its own, wherever the whole comes cheapest"));
    edit_ = add(tr("&Edit…"), "listEdit", [this] { edit(table_->indexOfTopLevelItem(table_->currentItem())); });
    copy_ = add(tr("&Copy it"), "listCopy", [this] { copy_chosen(); });
    compare_ = add(tr("Beside the one in use…"), "listCompare", [this] { compare_with_used(); });
    column->addSpacing(12);
    add(tr("&Take in a file…"), "listTakeIn", [this] { take_in_asking(); });
    write_ = add(tr("&Write it to a file…"), "listWrite", [this] { write_out_asking(); });
    column->addSpacing(12);
    delete_ = add(tr("&Delete…"), "listDelete", [this] { delete_asking(); });
    column->addStretch(1);
    return column_widget;
}

void PriceListsDialog::read_lists(const QString& then_choose)
{
    lists_.clear();
    files::PriceFile built_in;
    built_in.prices = choice_.built_in()->prices;
    lists_.push_back({QString(), std::move(built_in)});
    for (files::ShelvedPrices& shelved : shelf_.lists()) {
        lists_.push_back({shelved.path, std::move(shelved.file)});
    }
    for (const QString& used : choice_.paths()) {
        const bool listed =
            std::any_of(lists_.begin(), lists_.end(), [&used](const Listed& each) { return each.path == used; });
        if (!listed) {
            lists_.push_back({used, files::read_prices(used)}); // one that lies elsewhere
        }
    }
    table_->clear();
    for (const Listed& each : lists_) {
        const catalog::PriceList& prices = each.file.prices;
        auto* item = new QTreeWidgetItem(table_);
        const bool good = each.file.errors.isEmpty();
        item->setText(title_column, good ? QString::fromStdString(prices.title) : QFileInfo(each.path).fileName());
        item->setText(place_column, good ? QString::fromStdString(prices.place) : tr("can't be read"));
        if (good) {
            item->setText(date_column, QString::fromStdString(prices.date));
            item->setText(currency_column, QString::fromStdString(prices.currency));
            item->setText(packs_column, QLocale().toString(static_cast<qulonglong>(packs_of(prices))));
        }
        item->setTextAlignment(packs_column, Qt::AlignRight | Qt::AlignVCenter);
        item->setText(used_column, in_use(each) ? tr("in use") : QString());
        if (each.path == then_choose) {
            table_->setCurrentItem(item);
        }
    }
    if (table_->currentItem() == nullptr) {
        table_->setCurrentItem(table_->topLevelItem(0));
    }
    refresh();
}

bool PriceListsDialog::in_use(const Listed& listed) const
{
    const QStringList used = choice_.paths();
    return listed.path.isEmpty() ? used.isEmpty() : used.contains(listed.path);
}

const PriceListsDialog::Listed* PriceListsDialog::chosen() const
{
    const int row = table_->indexOfTopLevelItem(table_->currentItem());
    return row < 0 || row >= static_cast<int>(lists_.size()) ? nullptr : &lists_[static_cast<std::size_t>(row)];
}

bool PriceListsDialog::readable() const
{
    return chosen() != nullptr && chosen()->file.errors.isEmpty();
}

QString PriceListsDialog::remarks_of(const Listed& listed) const
{
    if (!listed.file.errors.isEmpty()) {
        return QFileInfo(listed.path).fileName() + QStringLiteral(":\n") + listed.file.errors.join(QLatin1Char('\n'));
    }
    const catalog::PriceList& prices = listed.file.prices;
    const catalog::PriceState state = catalog::price_state(prices, choice_.built_in()->prices, today());
    const report::PriceListShown shown{prices, state, today()};
    const plan::Plan none;
    const words::Speaker speaker(words::Formatter(units_, QLocale()), none, *choice_.built_in());
    QStringList lines{listed.path.isEmpty() ? tr("Comes with the program; a copy of it can be changed.")
                      : shelf_.holds(listed.path)
                          ? tr("Kept with the program as %1.").arg(QFileInfo(listed.path).fileName())
                          : tr("A file of its own: %1").arg(listed.path)};
    lines << tr("Prices of %1.").arg(report::price_list_age(shown, speaker.formatter()));
    return (lines << report::price_list_remarks(shown, speaker)).join(QLatin1Char('\n'));
}

void PriceListsDialog::refresh()
{
    const Listed* listed = chosen();
    const bool good = readable();
    const bool used = listed != nullptr && in_use(*listed);
    const bool alone = used && choice_.paths().size() <= 1;
    about_->setText(listed != nullptr ? remarks_of(*listed) : QString());
    use_->setEnabled(good && !alone);
    together_->setEnabled(good && !alone && !listed->path.isEmpty() && !choice_.paths().isEmpty());
    together_->setText(used ? tr("Leave it &off") : tr("Use it t&oo"));
    edit_->setEnabled(good);
    copy_->setEnabled(good);
    write_->setEnabled(good);
    compare_->setEnabled(good && !used);
    delete_->setEnabled(listed != nullptr && shelf_.holds(listed->path));
}

std::optional<QString> PriceListsDialog::copy_to_shelf(const catalog::PriceList& prices)
{
    const files::PriceShelf::Put put = shelf_.put(prices);
    if (!put.error.isEmpty()) {
        QMessageBox::warning(this, tr("The price list was not saved"), put.error);
        return std::nullopt;
    }
    return put.path;
}

void PriceListsDialog::use_chosen()
{
    const QString path = chosen()->path;
    if (choice_.use(path.isEmpty() ? QStringList() : QStringList(path))) { // else it said why
        read_lists(path);
    }
}

void PriceListsDialog::use_too_or_leave_off()
{
    const QString path = chosen()->path;
    QStringList paths = choice_.paths();
    if (!paths.removeOne(path)) {
        paths << path;
    }
    if (choice_.use(paths)) {
        read_lists(path);
    }
}

void PriceListsDialog::copy_chosen()
{
    catalog::PriceList copy = chosen()->file.prices;
    copy.title = copy_title(copy);
    if (const auto path = copy_to_shelf(copy)) {
        read_lists(*path);
    }
}

void PriceListsDialog::edit(int row)
{
    table_->setCurrentItem(table_->topLevelItem(row));
    if (!readable()) {
        return;
    }
    catalog::PriceList prices = chosen()->file.prices;
    if (chosen()->path.isEmpty()) {
        prices.title = copy_title(prices); // what comes with the program stays as it is
    }
    PriceEditor editor(std::move(prices), chosen()->path, shelf_, choice_.built_in(), units_, this);
    connect(&editor, &PriceEditor::saved, this, [this](const QString& saved) {
        if (choice_.paths().contains(saved)) {
            choice_.use(choice_.paths()); // the figures follow
        }
    });
    editor.exec();
    read_lists(editor.path());
}

void PriceListsDialog::take_in_asking()
{
    const QString path = QFileDialog::getOpenFileName(this, tr("Take in a price list"), {}, price_file_filter());
    if (path.isEmpty()) {
        return;
    }
    const files::PriceFile read = files::read_prices(path);
    if (!read.errors.isEmpty()) {
        tell_price_problems(path, read.errors, this);
    } else if (const auto taken = copy_to_shelf(read.prices)) {
        read_lists(*taken);
    }
}

void PriceListsDialog::write_out_asking()
{
    choice_.write_asking(chosen()->file.prices);
}

void PriceListsDialog::delete_asking()
{
    const Listed listed = *chosen();
    const QString name = listed.file.errors.isEmpty() ? QString::fromStdString(listed.file.prices.title)
                                                      : QFileInfo(listed.path).fileName();
    QMessageBox box(QMessageBox::Question, tr("Delete this price list?"),
                    tr("“%1” is deleted. It can be taken back from the waste bin where the desktop has one.").arg(name),
                    QMessageBox::NoButton, this);
    box.setObjectName(QStringLiteral("deleteListQuestion"));
    QPushButton* drop = box.addButton(tr("&Delete it"), QMessageBox::DestructiveRole);
    QPushButton* keep = box.addButton(tr("&Keep it"), QMessageBox::RejectRole);
    box.setDefaultButton(keep);
    box.setEscapeButton(keep);
    box.exec();
    if (box.clickedButton() != drop) {
        return;
    }
    QStringList paths = choice_.paths();
    if (paths.removeOne(listed.path) && !choice_.use(paths)) {
        choice_.use_built_in(); // an order never hangs on a file that is gone
    }
    const QString error = shelf_.remove(listed.path);
    if (!error.isEmpty()) {
        QMessageBox::warning(this, tr("The price list was not deleted"), error);
    }
    read_lists(choice_.paths().value(0));
}

void PriceListsDialog::compare_with_used()
{
    const auto used = std::find_if(lists_.begin(), lists_.end(), [this](const Listed& each) { return in_use(each); });
    if (used == lists_.end() || !used->file.errors.isEmpty()) {
        QMessageBox::information(this, tr("Nothing to compare with"), tr("The list in use can't be read any more."));
        return;
    }
    PriceDifferenceDialog(used->file.prices, chosen()->file.prices, words::Formatter(units_, QLocale()), this).exec();
}

} // namespace loam::desk
