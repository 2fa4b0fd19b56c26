// Price lists kept, edited, used and deleted, through the dialogs' own widgets.
#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMessageBox>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <QTreeWidget>
#include <QtTest>

#include "app/desk/document/plan_document.hpp"
#include "app/desk/prices/new_item_dialog.hpp"
#include "app/desk/prices/price_cells.hpp"
#include "app/desk/prices/price_editor.hpp"
#include "app/desk/prices/price_lists_dialog.hpp"
#include "app/desk/prices/price_spans.hpp"
#include "app/desk/prices/price_table_model.hpp"
#include "app/desk/session/price_choice.hpp"
#include "core/assess/assess.hpp"
#include "core/catalog/catalog.hpp"
#include "tests/app/desk/window_of_its_own.hpp"

using namespace loam;
using desk::PriceColumn;
using test::patience_ms;

class PricesTest : public test::WindowOfItsOwn {
    Q_OBJECT

    QString shelf() const { return home_.filePath(QStringLiteral("prices")); }

    std::unique_ptr<desk::PriceEditor> editor(const QString& path)
    {
        return std::make_unique<desk::PriceEditor>(catalog_->prices, path, shelf_, catalog_, words::UnitSystem::metric,
                                                   nullptr);
    }

    // Types into a cell as a hand would: by the table's own editor.
    static void type(desk::PriceEditor& editor, int row, PriceColumn column, const QString& text)
    {
        auto* table = editor.findChild<QTableView*>(QStringLiteral("priceTable"));
        const QModelIndex index = table->model()->index(row, static_cast<int>(column));
        table->setCurrentIndex(index);
        table->edit(index);
        auto* line = table->viewport()->findChild<QLineEdit*>();
        QVERIFY(line != nullptr);
        line->setText(text);
        QTest::keyClick(line, Qt::Key_Return);
        QCoreApplication::processEvents(); // the table takes the text a moment after the key
        QCoreApplication::sendPostedEvents(nullptr,
                                           QEvent::DeferredDelete); // and the line goes before the next one comes
    }

    static QString shown(desk::PriceEditor& editor, int row, PriceColumn column)
    {
        auto* table = editor.findChild<QTableView*>(QStringLiteral("priceTable"));
        return table->model()->index(row, static_cast<int>(column)).data().toString();
    }

    static QPushButton* button(QWidget& in, const char* name)
    {
        return in.findChild<QPushButton*>(QLatin1String(name));
    }

    static void choose(desk::PriceListsDialog& dialog, const QString& title)
    {
        auto* table = dialog.findChild<QTreeWidget*>(QStringLiteral("priceLists"));
        const auto found = table->findItems(title, Qt::MatchExactly);
        QCOMPARE(found.size(), 1);
        table->setCurrentItem(found.front());
    }

    template <class Dialog> static void when_open(std::function<void(Dialog&)> act)
    {
        QTimer::singleShot(50, qApp, [act] {
            auto* dialog = qobject_cast<Dialog*>(QApplication::activeModalWidget());
            QVERIFY(dialog != nullptr);
            act(*dialog);
        });
    }

    files::PriceShelf shelf_{home_.filePath(QStringLiteral("prices"))};

private slots:
    void initTestCase() { QCOMPARE(load_guidance(), QStringList()); }

    void init()
    {
        QDir(shelf()).removeRecursively();
        open_window();
        window_->prices().use_built_in();
    }

    void cleanup() { close_window(); }

    void every_edit_of_the_table_goes_back_to_the_same_bytes_and_forth_again()
    {
        const auto open = editor(shelf() + QStringLiteral("/x.json"));
        const std::string before = catalog::write(open->document().prices());
        type(*open, 0, PriceColumn::item, QStringLiteral("Glass box"));
        type(*open, 0, PriceColumn::typical, QStringLiteral("131.50"));
        type(*open, 0, PriceColumn::amount, QStringLiteral("1 – 2 – 3"));
        type(*open, 0, PriceColumn::fits, QStringLiteral("0.1 – 0.25"));
        type(*open, 0, PriceColumn::mass, QStringLiteral("12 kg"));
        type(*open, 0, PriceColumn::months, QStringLiteral("100 – 150 – 200"));
        const catalog::Item& item = open->document().prices().items.front();
        QCOMPARE(item.name, std::string("Glass box"));
        QCOMPARE(item.packs.front().typical.text(), std::string("131.50"));
        QVERIFY(item.packs.front().amount == (Range{1, 2, 3}));
        QCOMPARE(item.fits_to, std::optional(0.25));
        QCOMPARE(item.packs.front().mass_kg, std::optional(12.0));
        QCOMPARE(item.life_months->high, 200.0);
        QCOMPARE(item.life_months->source.confidence, Confidence::memory); // no longer the figure of its old source
        button(*open, "priceNewPack")->click();
        button(*open, "priceRemove")->click();
        const std::string after = catalog::write(open->document().prices());
        QUndoStack& steps = open->document().undo_stack();
        QCOMPARE(steps.count(), 8);
        while (steps.canUndo()) {
            steps.undo();
        }
        QCOMPARE(catalog::write(open->document().prices()), before);
        QVERIFY(!open->document().modified());
        while (steps.canRedo()) {
            steps.redo();
        }
        QCOMPARE(catalog::write(open->document().prices()), after);
    }

    void what_is_no_price_changes_nothing_and_says_why()
    {
        const auto open = editor(shelf() + QStringLiteral("/x.json"));
        const std::string before = catalog::write(open->document().prices());
        for (const auto& [column, wrong] : {std::pair{PriceColumn::low, "ten"},
                                            {PriceColumn::low, "-4"},
                                            {PriceColumn::amount, "0"},
                                            {PriceColumn::amount, "3 – 2 – 1"},
                                            {PriceColumn::fits, "9 – 3"},
                                            {PriceColumn::item, " "},
                                            {PriceColumn::months, "long"}}) {
            type(*open, 0, column, QString::fromLatin1(wrong));
            QCOMPARE(catalog::write(open->document().prices()), before);
            QVERIFY(!open->findChild<QLabel*>(QStringLiteral("priceMessage"))->text().isEmpty());
        }
        type(*open, 0, PriceColumn::low, QStringLiteral("81"));
        QVERIFY(open->findChild<QLabel*>(QStringLiteral("priceMessage"))->text().isEmpty());
    }

    void a_list_that_could_not_be_opened_again_is_not_saved()
    {
        const auto open = editor(shelf() + QStringLiteral("/x.json"));
        auto* problems = open->findChild<QListWidget*>(QStringLiteral("priceProblemList"));
        type(*open, 3, PriceColumn::low, QStringLiteral("99999"));
        QCOMPARE(problems->count(), 1);
        QVERIFY(problems->item(0)->text().contains(QStringLiteral("99999")));
        QVERIFY(!button(*open, "priceSave")->isEnabled());
        // A click leads to the cell.
        auto* table = open->findChild<QTableView*>(QStringLiteral("priceTable"));
        table->setCurrentIndex(table->model()->index(0, 0));
        emit problems->itemActivated(problems->item(0));
        QCOMPARE(table->currentIndex().row(), 3);
        open->document().undo_stack().undo();
        QCOMPARE(problems->count(), 0);
    }

    void the_filter_shows_rows_with_the_text_and_edits_the_right_one()
    {
        const auto open = editor(shelf() + QStringLiteral("/x.json"));
        auto* table = open->findChild<QTableView*>(QStringLiteral("priceTable"));
        const int all = table->model()->rowCount();
        open->findChild<QLineEdit*>(QStringLiteral("priceFilter"))->setText(QStringLiteral("COIR"));
        QVERIFY(table->model()->rowCount() > 0 && table->model()->rowCount() < all);
        const QString name = shown(*open, 0, PriceColumn::item);
        type(*open, 0, PriceColumn::high, QStringLiteral("77"));
        int changed = 0;
        for (std::size_t i = 0; i < catalog_->prices.items.size(); ++i) {
            if (open->document().prices().items[i] != catalog_->prices.items[i]) {
                ++changed;
                QCOMPARE(QString::fromStdString(catalog_->prices.items[i].name), name);
            }
        }
        QCOMPARE(changed, 1);
    }

    void a_new_item_needs_a_price_and_takes_unit_and_life_from_its_kind()
    {
        const auto open = editor(shelf() + QStringLiteral("/x.json"));
        when_open<desk::NewItemDialog>([this](desk::NewItemDialog& dialog) {
            auto* need = dialog.findChild<QComboBox*>(QStringLiteral("newItemNeed"));
            need->setCurrentIndex(need->findData(QStringLiteral("lamp.flood-lamp")));
            dialog.findChild<QLineEdit*>(QStringLiteral("newItemName"))->setText(QStringLiteral("Halogen, 50 W"));
            QVERIFY(!button(dialog, "newItemAdd")->isEnabled());
            dialog.findChild<QLineEdit*>(QStringLiteral("newItemPrice"))->setText(QStringLiteral("7.20"));
            QVERIFY(button(dialog, "newItemAdd")->isEnabled());
            button(dialog, "newItemAdd")->click();
        });
        button(*open, "priceNewItem")->click();
        const catalog::Item& added = open->document().prices().items.back();
        QCOMPARE(added.name, std::string("Halogen, 50 W"));
        QCOMPARE(added.serves, std::string("lamp.flood-lamp"));
        QCOMPARE(added.packs.front().high.text(), std::string("7.20"));
        const auto kin = std::find_if(catalog_->prices.items.begin(), catalog_->prices.items.end(),
                                      [](const catalog::Item& item) { return item.serves == "lamp.flood-lamp"; });
        QVERIFY(added.life_hours == kin->life_hours);
        QVERIFY(open->document().problems().empty());
    }

    void the_shipped_list_is_copied_edited_used_and_the_order_follows()
    {
        window_->show_example();
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date() && window_->assessment() != nullptr, patience_ms);
        const Money before = window_->assessment()->costs.startup.typical;
        desk::PriceListsDialog dialog(window_->prices(), shelf(), words::UnitSystem::metric, nullptr);
        when_open<desk::PriceEditor>([this](desk::PriceEditor& open) {
            // Twice the price for all, so that the order must change whatever it holds.
            catalog::PriceList dearer = open.document().prices();
            for (catalog::Item& item : dearer.items) {
                for (catalog::Pack& pack : item.packs) {
                    pack.low.coefficient *= 2;
                    pack.typical.coefficient *= 2;
                    pack.high.coefficient *= 2;
                }
            }
            open.document().edit(QStringLiteral("Dearer"), {}, dearer);
            auto* title = open.findChild<QLineEdit*>(QStringLiteral("termsTitle"));
            title->setText(QStringLiteral("Club fair"));
            emit title->editingFinished();
            button(open, "priceSave")->click();
            QVERIFY(!open.document().modified());
            button(open, "priceClose")->click();
        });
        dialog.edit(0);
        QCOMPARE(QDir(shelf()).entryList(QDir::Files), {QStringLiteral("club-fair.json")}); // what is shipped stays
        choose(dialog, QStringLiteral("Club fair"));
        button(dialog, "listUse")->click();
        QCOMPARE(window_->prices().paths().size(), 1);
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date() && window_->assessment()->costs.startup.typical != before,
                                 patience_ms);
        QCOMPARE(window_->assessment()->costs.startup.typical.minor_units() > before.minor_units(), true);

        // Deleting the list in use goes back to the shipped one: no order hangs on a file that is gone.
        when_open<QMessageBox>([](QMessageBox& box) {
            for (QAbstractButton* each : box.buttons()) {
                if (box.buttonRole(each) == QMessageBox::DestructiveRole) {
                    each->click();
                }
            }
        });
        button(dialog, "listDelete")->click();
        QCOMPARE(QDir(shelf()).entryList(QDir::Files).size(), 0);
        QVERIFY(window_->prices().paths().isEmpty());
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date() && window_->assessment()->costs.startup.typical == before,
                                 patience_ms);
    }

    void two_lists_are_bought_from_together_and_a_foreign_currency_is_refused()
    {
        window_->show_example();
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date() && window_->assessment() != nullptr, patience_ms);
        catalog::PriceList fair = catalog_->prices;
        fair.title = "Fair";
        fair.channel = "fair";
        catalog::PriceList abroad = fair;
        abroad.title = "Abroad";
        abroad.currency = "EUR";
        for (catalog::Item& item : fair.items) {
            for (catalog::Pack& pack : item.packs) {
                pack.low = pack.typical = pack.low; // dearer nowhere, cheaper where there is a range
            }
        }
        catalog::PriceList shop = catalog_->prices;
        shop.title = "Shop";
        for (const catalog::PriceList& list : {fair, abroad, shop}) {
            QCOMPARE(shelf_.put(list).error, QString());
        }
        const Money alone = window_->assessment()->costs.startup.typical;
        desk::PriceListsDialog dialog(window_->prices(), shelf(), words::UnitSystem::metric, nullptr);
        choose(dialog, QStringLiteral("Shop"));
        QVERIFY(!button(dialog, "listTogether")->isEnabled()); // not with the invented prices
        button(dialog, "listUse")->click();
        choose(dialog, QStringLiteral("Fair"));
        button(dialog, "listTogether")->click();
        QCOMPARE(window_->prices().paths().size(), 2);
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date() &&
                                     window_->assessment()->costs.startup.typical.minor_units() < alone.minor_units(),
                                 patience_ms);
        QCOMPARE(window_->assessment()->shopping.front().channel, std::string("fair"));
        choose(dialog, QStringLiteral("Abroad"));
        when_open<QMessageBox>([](QMessageBox& box) {
            QVERIFY(box.informativeText().contains(QStringLiteral("EUR")));
            box.accept();
        });
        button(dialog, "listTogether")->click();
        QCOMPARE(window_->prices().paths().size(), 2); // as it was

        // All at the shop: the same as the shop alone.
        plan::Plan plan = window_->document().plan();
        plan.budget.channel = "shop";
        window_->document().edit(QStringLiteral("At the shop"), {}, plan);
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date() && window_->assessment()->costs.startup.typical == alone,
                                 patience_ms);
    }

    void a_file_that_is_no_list_is_named_with_its_fault_and_stays()
    {
        QDir().mkpath(shelf());
        QFile file(shelf() + QStringLiteral("/broken.json"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("{\"format\": \"loamstead-prices\", \"version\": 1, \"titel\": \"x\"}");
        file.close();
        desk::PriceListsDialog dialog(window_->prices(), shelf(), words::UnitSystem::metric, nullptr);
        choose(dialog, QStringLiteral("broken.json"));
        const QString about = dialog.findChild<QLabel*>(QStringLiteral("priceListAbout"))->text();
        QVERIFY(about.contains(QStringLiteral("titel")));
        QVERIFY(!button(dialog, "listUse")->isEnabled() && !button(dialog, "listEdit")->isEnabled());
        QVERIFY(button(dialog, "listDelete")->isEnabled());
    }

    void unsaved_changes_are_asked_about_and_can_be_gone_on_with()
    {
        const auto open = editor(shelf() + QStringLiteral("/x.json"));
        open->show();
        type(*open, 0, PriceColumn::high, QStringLiteral("400"));
        when_open<QMessageBox>([](QMessageBox& box) { box.reject(); });
        open->reject();
        QVERIFY(open->isVisible());
        QVERIFY(open->document().modified());
    }

    void spans_read_back_as_they_are_written()
    {
        const words::Formatter german(words::UnitSystem::metric, QLocale(QLocale::German));
        for (const Range& range : {Range{1, 1, 1}, Range{55.5, 60, 65.25}, Range{0.1, 1200, 12345678}}) {
            QVERIFY(desk::read_range(desk::written(range, german), german) == range);
        }
        for (const desk::OpenSpan& span :
             {desk::OpenSpan{}, desk::OpenSpan{75.0, {}}, desk::OpenSpan{{}, 0.275}, desk::OpenSpan{1.0, 2.0}}) {
            const auto read = desk::read_open_span(desk::written(span, german), german);
            QVERIFY(read && read->from == span.from && read->to == span.to);
        }
        QVERIFY(!desk::read_range(QStringLiteral("1 – 2"), german));
    }
};

QTEST_MAIN(PricesTest)
#include "prices_test.moc"
