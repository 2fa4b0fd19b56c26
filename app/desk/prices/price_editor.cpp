#include "app/desk/prices/price_editor.hpp"

#include <QAction>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMessageBox>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QTabWidget>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <set>
#include <utility>

#include "app/desk/prices/new_item_dialog.hpp"
#include "app/desk/prices/price_delegates.hpp"
#include "app/desk/prices/price_edits.hpp"
#include "app/desk/prices/price_table_model.hpp"
#include "app/desk/prices/price_terms.hpp"
#include "app/files/price_file.hpp"
#include "app/words/capitals.hpp"
#include "app/words/problems.hpp"

namespace loam::desk {

namespace {

std::vector<Choice> kinds_of_need(const catalog::PriceList& kinds, const PriceTableModel& model)
{
    std::set<std::string> codes;
    for (const catalog::Item& item : kinds.items) {
        codes.insert(item.serves);
    }
    std::vector<Choice> choices;
    choices.reserve(codes.size());
    for (const std::string& code : codes) {
        choices.push_back({QString::fromStdString(code), words::capitalised(model.name_of_need(code))});
    }
    std::sort(choices.begin(), choices.end(),
              [](const Choice& a, const Choice& b) { return a.text.localeAwareCompare(b.text) < 0; });
    return choices;
}

std::vector<Choice> units_of_items()
{
    std::vector<Choice> choices;
    for (const char* unit : {"each", "l", "ml", "m2", "kg", "g", "month", "year"}) {
        choices.push_back({QString::fromLatin1(unit), QString::fromLatin1(unit)});
    }
    return choices;
}

} // namespace

PriceEditor::PriceEditor(catalog::PriceList prices, QString path, const files::PriceShelf& shelf, SharedCatalog words,
                         words::UnitSystem units, QWidget* parent)
    : QDialog(parent), document_(std::move(prices)), path_(std::move(path)), shelf_(shelf), words_(std::move(words)),
      units_(units), model_(new PriceTableModel(document_, words_, units, this)),
      sorted_(new QSortFilterProxyModel(this)), table_(new QTableView(this)), filter_(new QLineEdit(this)),
      message_(new QLabel(this)), problems_(new QListWidget(this))
{
    setObjectName(QStringLiteral("priceEditor"));
    message_->setObjectName(QStringLiteral("priceMessage"));
    message_->setTextFormat(Qt::PlainText);
    message_->setWordWrap(true);
    message_->hide();
    problems_->setObjectName(QStringLiteral("priceProblemList"));
    problems_->setAccessibleName(tr("What is wrong with the list"));
    problems_->setWordWrap(true);
    problems_->setMaximumHeight(fontMetrics().lineSpacing() * 6);
    auto* tabs = new QTabWidget(this);
    tabs->setObjectName(QStringLiteral("priceTabs"));
    tabs->addTab(build_table(), tr("&Prices"));
    tabs->addTab(new PriceTerms(document_, words::Formatter(units_, QLocale()), this), tr("&List and terms"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(tabs, 1);
    column->addWidget(message_);
    column->addWidget(problems_);
    build_buttons();
    connect(&document_, &PriceDocument::changed, this, &PriceEditor::refresh);
    connect(&document_.undo_stack(), &QUndoStack::cleanChanged, this, &PriceEditor::refresh);
    connect(model_, &PriceTableModel::refused, this, &PriceEditor::say);
    connect(problems_, &QListWidget::itemActivated, this, [this](QListWidgetItem* item) {
        go_to(document_.problems()[static_cast<std::size_t>(problems_->row(item))]);
    });
    connect(problems_, &QListWidget::itemClicked, problems_, &QListWidget::itemActivated);
    resize(1100, 640);
    refresh();
}

QWidget* PriceEditor::build_tools()
{
    auto* tools = new QWidget(this);
    filter_->setObjectName(QStringLiteral("priceFilter"));
    filter_->setPlaceholderText(tr("Show rows with…"));
    filter_->setAccessibleName(tr("Show only rows with this text"));
    filter_->setClearButtonEnabled(true);
    auto* item = new QPushButton(tr("New &item…"), tools);
    item->setObjectName(QStringLiteral("priceNewItem"));
    pack_ = new QPushButton(tr("Further pac&k"), tools);
    pack_->setObjectName(QStringLiteral("priceNewPack"));
    pack_->setToolTip(tr("Another size of the item that is chosen"));
    remove_ = new QPushButton(tr("&Take out"), tools);
    remove_->setObjectName(QStringLiteral("priceRemove"));
    remove_->setToolTip(tr("Takes the chosen packs out of the list"));
    auto* row = new QHBoxLayout(tools);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(filter_, 1);
    row->addWidget(item);
    row->addWidget(pack_);
    row->addWidget(remove_);
    for (QAction* action : {document_.undo_stack().createUndoAction(this, tr("&Undo")),
                            document_.undo_stack().createRedoAction(this, tr("&Redo"))}) {
        auto* button = new QToolButton(tools);
        button->setDefaultAction(action);
        row->addWidget(button);
    }
    const QList<QToolButton*> buttons = tools->findChildren<QToolButton*>();
    buttons.front()->defaultAction()->setShortcut(QKeySequence::Undo);
    buttons.back()->defaultAction()->setShortcut(QKeySequence::Redo);
    connect(item, &QPushButton::clicked, this, &PriceEditor::add_item_asking);
    connect(pack_, &QPushButton::clicked, this, &PriceEditor::add_pack_here);
    connect(remove_, &QPushButton::clicked, this, &PriceEditor::remove_chosen);
    connect(filter_, &QLineEdit::textChanged, sorted_, &QSortFilterProxyModel::setFilterFixedString);
    return tools;
}

QWidget* PriceEditor::build_table()
{
    sorted_->setSourceModel(model_);
    sorted_->setSortRole(PriceTableModel::order_role);
    sorted_->setFilterCaseSensitivity(Qt::CaseInsensitive);
    sorted_->setFilterKeyColumn(-1); // any column
    table_->setObjectName(QStringLiteral("priceTable"));
    table_->setAccessibleName(tr("Prices, a row for each pack"));
    table_->setModel(sorted_);
    table_->setSortingEnabled(true);
    table_->sortByColumn(-1, Qt::AscendingOrder); // as the list has it, until a head is clicked
    table_->setSelectionBehavior(QAbstractItemView::SelectItems);
    table_->setAlternatingRowColors(true);
    table_->setWordWrap(false);
    table_->setTabKeyNavigation(true);
    table_->verticalHeader()->hide();
    table_->setCornerButtonEnabled(false); // a nameless button
    table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 9);
    table_->horizontalHeader()->setStretchLastSection(false);
    const auto column = [](PriceColumn which) { return static_cast<int>(which); };
    table_->setItemDelegateForColumn(column(PriceColumn::need),
                                     new ChoiceDelegate(kinds_of_need(words_->prices, *model_), table_));
    table_->setItemDelegateForColumn(column(PriceColumn::unit), new ChoiceDelegate(units_of_items(), table_));
    table_->resizeColumnsToContents();
    for (const auto& [which, most] :
         {std::pair{PriceColumn::item, 44}, {PriceColumn::need, 24}, {PriceColumn::pack, 22}}) {
        const int most_px = fontMetrics().averageCharWidth() * most;
        table_->setColumnWidth(column(which), std::min(table_->columnWidth(column(which)), most_px));
    }
    connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this, [this] {
        pack_->setEnabled(!chosen_rows().empty());
        remove_->setEnabled(!chosen_rows().empty());
    });
    auto* page = new QWidget(this);
    auto* layout = new QVBoxLayout(page);
    layout->addWidget(build_tools());
    layout->addWidget(table_, 1);
    return page;
}

void PriceEditor::build_buttons()
{
    auto* buttons = new QDialogButtonBox(this);
    save_ = buttons->addButton(tr("&Save"), QDialogButtonBox::ApplyRole);
    save_->setObjectName(QStringLiteral("priceSave"));
    save_->setShortcut(QKeySequence::Save);
    save_->setAutoDefault(false); // Enter ends the typing in a cell and must not save
    QPushButton* close = buttons->addButton(tr("&Close"), QDialogButtonBox::RejectRole);
    close->setObjectName(QStringLiteral("priceClose"));
    close->setAutoDefault(false);
    for (QPushButton* button : findChildren<QPushButton*>()) {
        button->setAutoDefault(false);
    }
    connect(save_, &QPushButton::clicked, this, &PriceEditor::save);
    connect(buttons, &QDialogButtonBox::rejected, this, &PriceEditor::reject);
    layout()->addWidget(buttons);
}

void PriceEditor::refresh()
{
    setWindowTitle(QString::fromStdString(document_.prices().title) + QStringLiteral("[*] — ") + tr("Price list"));
    setWindowModified(document_.modified());
    problems_->clear();
    for (const json::Problem& problem : document_.problems()) {
        const auto cell = cell_of_problem(problem.where);
        QString text = words::problem(problem);
        if (cell && cell->place.item < document_.prices().items.size()) {
            text = tr("%1, %2: %3")
                       .arg(QString::fromStdString(document_.prices().items[cell->place.item].name),
                            price_column_head(cell->column), words::problem_sentence(problem));
        }
        problems_->addItem(text);
    }
    problems_->setVisible(problems_->count() > 0);
    save_->setEnabled((document_.modified() || path_.isEmpty()) && document_.problems().empty());
    save_->setToolTip(document_.problems().empty() ? QString() : tr("First mend what is wrong with the list."));
    pack_->setEnabled(!chosen_rows().empty());
    remove_->setEnabled(!chosen_rows().empty());
}

void PriceEditor::say(const QString& text)
{
    message_->setText(text);
    message_->setVisible(!text.isEmpty());
}

std::vector<int> PriceEditor::chosen_rows() const
{
    std::set<int> rows;
    for (const QModelIndex& index : table_->selectionModel()->selectedIndexes()) {
        rows.insert(sorted_->mapToSource(index).row());
    }
    return {rows.begin(), rows.end()};
}

void PriceEditor::show_row(int row, int column)
{
    if (row < 0) {
        return;
    }
    const QModelIndex source = model_->index(row, column);
    if (!sorted_->mapFromSource(source).isValid()) {
        filter_->clear(); // the row was filtered out
    }
    const QModelIndex index = sorted_->mapFromSource(source);
    table_->setCurrentIndex(index);
    table_->scrollTo(index, QAbstractItemView::PositionAtCenter);
    table_->setFocus();
}

void PriceEditor::add_pack_here()
{
    const std::vector<int> rows = chosen_rows();
    if (rows.empty()) {
        return;
    }
    catalog::PriceList changed = document_.prices();
    const PackPlace added = add_pack(changed, model_->place(rows.back()));
    document_.edit(tr("Further pack"), {}, std::move(changed));
    show_row(model_->row_of(added), static_cast<int>(PriceColumn::pack));
}

void PriceEditor::add_item_asking()
{
    NewItemDialog dialog(kinds_of_need(words_->prices, *model_), words::Formatter(units_, QLocale()), this);
    if (dialog.exec() != QDialog::Accepted || !dialog.item()) {
        return;
    }
    catalog::PriceList changed = document_.prices();
    const PackPlace added = add_item(changed, *dialog.item(), words_->prices);
    document_.edit(tr("New item"), {}, std::move(changed));
    show_row(model_->row_of(added), static_cast<int>(PriceColumn::item));
}

void PriceEditor::remove_chosen()
{
    std::vector<PackPlace> places;
    for (const int row : chosen_rows()) {
        places.push_back(model_->place(row));
    }
    catalog::PriceList changed = document_.prices();
    remove_packs(changed, places);
    document_.edit(tr("Take out"), {}, std::move(changed));
}

void PriceEditor::go_to(const json::Problem& problem)
{
    auto* tabs = findChild<QTabWidget*>(QStringLiteral("priceTabs"));
    const auto cell = cell_of_problem(problem.where);
    tabs->setCurrentIndex(cell ? 0 : 1);
    if (cell) {
        show_row(model_->row_of(cell->place), static_cast<int>(cell->column));
    }
}

bool PriceEditor::save()
{
    const files::PriceShelf::Put put =
        path_.isEmpty() ? shelf_.put(document_.prices())
                        : files::PriceShelf::Put{path_, files::write_prices(document_.prices(), path_)};
    if (!put.error.isEmpty()) {
        QMessageBox::warning(this, tr("The price list was not saved"), put.error);
        return false;
    }
    path_ = put.path;
    document_.undo_stack().setClean();
    say(tr("Saved as “%1”.").arg(QFileInfo(path_).fileName()));
    emit saved(path_);
    return true;
}

void PriceEditor::reject()
{
    if (!document_.modified()) {
        QDialog::reject();
        return;
    }
    const bool good = document_.problems().empty();
    QMessageBox box(QMessageBox::Question, tr("Unsaved changes"),
                    good ? tr("The price list has changes that are not saved.")
                         : tr("The price list has changes that are not saved, and can't be saved before what is wrong "
                              "with it is mended."),
                    QMessageBox::NoButton, this);
    box.setObjectName(QStringLiteral("priceQuestion"));
    QPushButton* keep = good ? box.addButton(tr("&Save"), QMessageBox::AcceptRole) : nullptr;
    QPushButton* drop = box.addButton(tr("&Discard them"), QMessageBox::DestructiveRole);
    QPushButton* stay = box.addButton(tr("Go on &editing"), QMessageBox::RejectRole);
    box.setDefaultButton(keep != nullptr ? keep : stay);
    box.setEscapeButton(stay);
    box.exec();
    if (box.clickedButton() == drop || (keep != nullptr && box.clickedButton() == keep && save())) {
        QDialog::reject();
    }
}

} // namespace loam::desk
