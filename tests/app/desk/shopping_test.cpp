// The shopping list in the window: grouped, ticked off, copied and exported.
#include <QAction>
#include <QClipboard>
#include <QFile>
#include <QLineEdit>
#include <QListWidget>
#include <QMimeData>
#include <QPushButton>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTextBrowser>
#include <QTreeWidget>
#include <QUndoStack>
#include <QtTest>
#include <algorithm>

#include "app/desk/document/plan_document.hpp"
#include "app/desk/session/plan_files.hpp"
#include "app/desk/session/settings.hpp"
#include "app/desk/window.hpp"
#include "app/files/guidance.hpp"
#include "app/report/shopping.hpp"
#include "core/plan/file.hpp"
#include "tests/app/desk/save_dialog.hpp"
#include "tests/app/desk/window_of_its_own.hpp"

using namespace loam;
using test::patience_ms;

namespace {

const auto hygrometer = QStringLiteral("Digital hygrometer");

} // namespace

class ShoppingTest : public test::WindowOfItsOwn {
    Q_OBJECT

    QTreeWidget* table() { return find<QTreeWidget>("shopping"); }
    QTreeWidgetItem* line(const QString& name)
    {
        const auto items = table()->findItems(name, Qt::MatchStartsWith | Qt::MatchRecursive);
        return items.isEmpty() ? nullptr : items.front();
    }
    bool ticked(const QString& name) { return line(name)->checkState(0) == Qt::Checked; }
    std::string plan() { return plan::write(window_->document().plan()); }
    void open_upgrade()
    {
        QVERIFY(window_->files().open(QStringLiteral(LOAM_SOURCE_DIR "/examples/upgrade.loamstead.json")));
        find<QTabWidget>("resultTabs")->setCurrentWidget(find<QWidget>("shoppingView"));
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date() && line(hygrometer) != nullptr, patience_ms);
    }

private slots:
    void initTestCase() { QCOMPARE(load_guidance(), QStringList()); }

    void init() { open_window(); }

    void cleanup() { close_window(); }

    void lines_stand_by_place_and_kind_and_each_says_why()
    {
        open_upgrade();
        QCOMPARE(table()->topLevelItemCount(), 3);
        QCOMPARE(table()->topLevelItem(0)->text(0), QStringLiteral("Turtle, glass box"));
        QCOMPARE(table()->topLevelItem(2)->text(0), QStringLiteral("All enclosures"));
        int lines = 0;
        for (QTreeWidgetItemIterator item(table()); *item != nullptr; ++item) {
            if ((*item)->childCount() == 0) {
                QVERIFY2(!(*item)->text(5).isEmpty(), qPrintable((*item)->text(0)));
                QVERIFY(!(*item)->data(0, Qt::AccessibleTextRole).toString().isEmpty());
                QVERIFY((*item)->parent() != nullptr && (*item)->parent()->parent() != nullptr);
                ++lines;
            }
        }
        QCOMPARE(lines, static_cast<int>(window_->assessment()->shopping.size()));
    }

    void the_space_bar_ticks_a_line_off_and_undo_puts_it_back()
    {
        open_upgrade();
        const std::string before = plan();
        const std::int64_t cost = window_->assessment()->costs.startup.typical.minor_units();
        QVERIFY(!ticked(hygrometer));
        table()->setFocus();
        table()->setCurrentItem(line(hygrometer));
        QTest::keyClick(table(), Qt::Key_Space);
        const std::vector<plan::OwnedItem>& owned = window_->document().plan().owned;
        QCOMPARE(owned.back().quantity, 2.0); // one for each box, as the line asked for
        QVERIFY(!owned.back().age_months);    // it was not asked, so it is not known
        QVERIFY(plan::problems_of(window_->document().plan()).empty());
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        QVERIFY(ticked(hygrometer));
        QCOMPARE(line(hygrometer)->text(3), QStringLiteral("owned"));
        QVERIFY(window_->assessment()->costs.startup.typical.minor_units() < cost);
        QCOMPARE(table()->currentItem(), line(hygrometer)); // where the hand was
        QVERIFY(find<QTextBrowser>("whyText")->toPlainText().contains(QStringLiteral("Budget")));
        window_->document().undo_stack().undo();
        QCOMPARE(plan(), before);
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        QVERIFY(!ticked(hygrometer));
        QCOMPARE(window_->assessment()->costs.startup.typical.minor_units(), cost);
    }

    void a_tick_taken_away_takes_the_thing_off_the_shelf()
    {
        open_upgrade();
        const std::string before = plan();
        const QString mat = QStringLiteral("Heat mat, 13");
        QVERIFY(ticked(mat));
        const std::size_t owned = window_->document().plan().owned.size();
        line(mat)->setCheckState(0, Qt::Unchecked);
        QCOMPARE(window_->document().plan().owned.size(), owned - 1);
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        QVERIFY(!ticked(mat));
        QCOMPARE(line(mat)->text(1), QStringLiteral("1"));
        line(mat)->setCheckState(0, Qt::Checked); // and on again
        QCOMPARE(window_->document().plan().owned.size(), owned);
        window_->document().undo_stack().undo();
        window_->document().undo_stack().undo();
        QCOMPARE(plan(), before);
    }

    void the_age_of_what_was_ticked_off_is_one_step_away()
    {
        open_upgrade();
        const std::string before = plan();
        table()->setFocus();
        table()->setCurrentItem(line(hygrometer));
        QTest::keyClick(table(), Qt::Key_Space);
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date() && ticked(hygrometer), patience_ms);
        QTest::mouseClick(find<QPushButton>("whyGo"), Qt::LeftButton); // "Show in the plan"
        auto* budget = find<QWidget>("budgetPage");
        QVERIFY(budget->isVisible());
        bool chosen = false; // by its name, not by its id
        for (const QListWidget* list : budget->findChildren<QListWidget*>()) {
            const QListWidgetItem* item = list->currentItem();
            chosen = chosen || (item != nullptr && item->text() == QStringLiteral("2 × Digital hygrometer"));
        }
        QVERIFY(chosen);
        auto* age = budget->findChild<QLineEdit*>(QStringLiteral("age_months"));
        age->setFocus();
        age->selectAll();
        QTest::keyClicks(age, QStringLiteral("6"));
        QTest::keyClick(age, Qt::Key_Return);
        QCOMPARE(window_->document().plan().owned.back().age_months, std::optional(6.0));
        window_->document().undo_stack().undo();
        window_->document().undo_stack().undo();
        QCOMPARE(plan(), before);
    }

    void a_line_is_left_out_by_key_and_undo_puts_it_back()
    {
        open_upgrade();
        const std::string before = plan();
        auto* leave_out = find<QAction>("shoppingLeaveOut");
        table()->setCurrentItem(table()->topLevelItem(0));
        QVERIFY(!leave_out->isEnabled()); // a heading is no line
        table()->setCurrentItem(line(QStringLiteral("Disposable gloves")));
        QVERIFY(leave_out->isEnabled());
        QCOMPARE(leave_out->shortcut(), QKeySequence(QKeySequence::Delete));
        leave_out->trigger();
        QVERIFY(plan::problems_of(window_->document().plan()).empty());
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        QVERIFY(line(QStringLiteral("Disposable gloves")) == nullptr);
        QVERIFY(!leave_out->isEnabled());
        QVERIFY(std::any_of(window_->assessment()->findings.begin(), window_->assessment()->findings.end(),
                            [](const Finding& finding) { return finding.code == "money.left-out"; }));
        window_->document().undo_stack().undo();
        QCOMPARE(plan(), before);
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        QVERIFY(line(QStringLiteral("Disposable gloves")) != nullptr);
    }

    void a_line_of_ones_own_is_no_item_to_own_and_goes_when_left_out()
    {
        open_upgrade();
        plan::Plan added = window_->document().plan();
        plan::OwnLine own;
        own.id = plan::fresh_id(added, "l");
        own.name = "Paint for the stand";
        own.price = Decimal::parse("12.00");
        added.own_lines.push_back(own);
        window_->document().edit(QStringLiteral("Own line"), {}, added);
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        const QString paint = QStringLiteral("Paint for the stand");
        QVERIFY(line(paint) != nullptr);
        QVERIFY(!line(paint)->data(0, Qt::CheckStateRole).isValid()); // the price list does not know it
        QCOMPARE(line(paint)->parent()->parent()->text(0), QStringLiteral("Whole site"));
        table()->setCurrentItem(line(paint));
        find<QAction>("shoppingLeaveOut")->trigger();
        QVERIFY(window_->document().plan().own_lines.empty());
        window_->document().undo_stack().undo();
        QCOMPARE(window_->document().plan(), added);
    }

    void a_part_that_is_owned_is_half_ticked_and_a_tick_adds_the_rest()
    {
        open_upgrade();
        plan::Plan half = window_->document().plan();
        plan::OwnedItem one;
        one.id = plan::fresh_id(half, "o");
        for (const assess::ShoppingLine& each : window_->assessment()->shopping) {
            if (QString::fromStdString(each.item_name) == hygrometer) {
                one.item = each.item;
            }
        }
        QVERIFY(!one.item.empty());
        half.owned.push_back(one);
        window_->document().edit(QStringLiteral("One"), {}, half);
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        QCOMPARE(line(hygrometer)->checkState(0), Qt::PartiallyChecked);
        table()->setFocus();
        table()->setCurrentItem(line(hygrometer));
        QTest::keyClick(table(), Qt::Key_Space);
        QCOMPARE(window_->document().plan().owned.back().quantity, 1.0);
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        QVERIFY(ticked(hygrometer));
    }

    void the_copy_holds_a_table_and_tabbed_lines_in_which_names_are_only_names()
    {
        open_upgrade();
        plan::Plan named = window_->document().plan();
        named.title = "<b>=Plan</b>";
        named.enclosures[0].name = "=1+1";
        named.enclosures[1].name = "<i>Gecko</i>";
        window_->document().edit(QStringLiteral("Names"), {}, named);
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        find<QAction>("shoppingCopy")->trigger();
        const QMimeData* copied = QGuiApplication::clipboard()->mimeData();
        QVERIFY(copied->hasHtml() && copied->hasText());
        QVERIFY(copied->html().contains(QStringLiteral("&lt;i&gt;Gecko&lt;/i&gt;")));
        QVERIFY(!copied->html().contains(QStringLiteral("<i>")));
        QVERIFY(copied->html().contains(QStringLiteral("<td>'=1+1</td>")));
        const QStringList lines = copied->text().split(QLatin1Char('\n'));
        QVERIFY(lines.contains(QStringLiteral("Typical prices as of 1 Nov 2026.")));
        int tabbed = 0;
        for (const QString& each : lines) {
            QVERIFY(!each.startsWith(QLatin1Char('=')));
            tabbed += each.count(QLatin1Char('\t')) == 7 ? 1 : 0;
        }
        QCOMPARE(tabbed, static_cast<int>(window_->assessment()->shopping.size()) + 2); // head and total
    }

    void the_export_asks_before_it_replaces_a_file()
    {
        open_upgrade();
        const QString path = home_.filePath(QStringLiteral("order.csv"));
        const words::Speaker speaker(words::Formatter(words::UnitSystem::metric, QLocale()), window_->document().plan(),
                                     *catalog_);
        const std::string expected = report::shopping_csv(window_->assessment()->shopping, speaker);
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("mine");
        file.close();
        // The ending is added before it asks.
        const SaveDialogHand no(home_.filePath(QStringLiteral("order")), QMessageBox::No, window_.get());
        find<QAction>("shoppingExport")->trigger();
        QVERIFY(no.was_asked());
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(file.readAll(), QByteArray("mine"));
        file.close();
        const SaveDialogHand yes(path, QMessageBox::Yes, window_.get());
        find<QAction>("shoppingExport")->trigger();
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(file.readAll(), QByteArray::fromStdString(expected));
    }
};

QTEST_MAIN(ShoppingTest)
#include "shopping_test.moc"
