// The open plan beside another, driven through the window's own actions.
#include <QAction>
#include <QCheckBox>
#include <QClipboard>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTextBrowser>
#include <QTimer>
#include <QTreeWidget>
#include <QUndoStack>
#include <QtTest>

#include "app/desk/document/plan_document.hpp"
#include "app/desk/session/comparison_choice.hpp"
#include "app/desk/session/plan_files.hpp"
#include "app/desk/session/settings.hpp"
#include "app/desk/window.hpp"
#include "app/files/guidance.hpp"
#include "app/files/plan_file.hpp"
#include "core/plan/file.hpp"
#include "tests/app/desk/save_dialog.hpp"
#include "tests/app/desk/window_of_its_own.hpp"

using namespace loam;
using test::patience_ms;

class ComparisonTest : public test::WindowOfItsOwn {
    Q_OBJECT

    QAction* action(const char* name) { return find<QAction>(name); }
    QTreeWidget* table() { return find<QTreeWidget>("comparison"); }
    bool tab_is_there()
    {
        auto* tabs = find<QTabWidget>("resultTabs");
        return tabs->isTabVisible(tabs->indexOf(find<QWidget>("comparisonView")));
    }
    bool compared() { return window_->up_to_date() && window_->comparison().assessment() != nullptr; }
    QString change(const QString& name)
    {
        const auto items = table()->findItems(name, Qt::MatchExactly | Qt::MatchRecursive);
        return items.isEmpty() ? QString() : items.front()->text(3);
    }
    int rows_in_view()
    {
        int rows = 0;
        for (QTreeWidgetItemIterator item(table(), QTreeWidgetItemIterator::NotHidden); *item != nullptr; ++item) {
            rows += (*item)->text(3).isEmpty() || (*item)->parent()->isHidden() ? 0 : 1;
        }
        return rows;
    }
    void make_longer(double by_m)
    {
        plan::Plan plan = window_->document().plan();
        plan.enclosures.front().shell.length_m += by_m;
        window_->document().edit(QStringLiteral("Longer"), {}, plan);
    }

private slots:
    void initTestCase() { QCOMPARE(load_guidance(), QStringList()); }

    void init()
    {
        open_window();
        window_->show_example();
    }

    void cleanup() { close_window(); }

    void what_was_kept_stands_beside_every_edit_until_it_is_closed()
    {
        QVERIFY(!tab_is_there());
        QVERIFY(!action("compareKept")->isEnabled() && !action("compareClose")->isEnabled());
        const std::string before = plan::write(window_->document().plan());
        action("compareKeep")->trigger();
        QVERIFY(tab_is_there());
        QCOMPARE(find<QTabWidget>("resultTabs")->currentWidget(), find<QWidget>("comparisonView"));
        QTRY_VERIFY_WITH_TIMEOUT(compared(), patience_ms);
        QTRY_COMPARE_WITH_TIMEOUT(change(QStringLiteral("Floor")), QStringLiteral("same"), patience_ms);
        QCOMPARE(find<QLabel>("comparisonSum")->text(), QStringLiteral("Nothing differs."));

        const double width_m = window_->document().plan().enclosures.front().shell.width_m;
        make_longer(0.2);
        const QString larger = QStringLiteral("+%1 m² larger").arg(0.2 * width_m, 0, 'f', 2);
        QTRY_COMPARE_WITH_TIMEOUT(change(QStringLiteral("Floor")), larger, patience_ms);
        window_->document().undo_stack().undo();
        QCOMPARE(plan::write(window_->document().plan()), before); // comparing is no edit
        QTRY_COMPARE_WITH_TIMEOUT(change(QStringLiteral("Floor")), QStringLiteral("same"), patience_ms);

        find<QPushButton>("closeComparison")->click();
        QVERIFY(!tab_is_there());
        QVERIFY(action("compareKept")->isEnabled()); // it can be taken up again
        QVERIFY(!action("compareClose")->isEnabled());
        action("compareKept")->trigger();
        QVERIFY(tab_is_there());
    }

    void the_plan_as_saved_is_read_from_its_file_and_stays_when_the_plan_goes_on()
    {
        QVERIFY(!action("compareSaved")->isEnabled()); // never saved
        const QString path = home_.filePath(QStringLiteral("saved.loamstead.json"));
        QCOMPARE(files::write_plan(window_->document().plan(), path), QString());
        QVERIFY(window_->files().open(path));
        make_longer(0.2);
        action("compareSaved")->trigger();
        QTRY_VERIFY_WITH_TIMEOUT(compared() && change(QStringLiteral("Floor")).startsWith(QLatin1Char('+')),
                                 patience_ms);
        QVERIFY(find<QLabel>("comparedWith")->text().contains(QStringLiteral("saved.loamstead.json as saved on")));
        // Saving the change doesn't take away what it is compared with.
        QVERIFY(window_->files().save());
        QVERIFY(change(QStringLiteral("Floor")).startsWith(QLatin1Char('+')));
        QVERIFY(!window_->isWindowModified());
    }

    void only_what_differs_is_shown_where_that_is_asked_for()
    {
        action("compareKeep")->trigger();
        QTRY_VERIFY_WITH_TIMEOUT(compared() && rows_in_view() > 20, patience_ms);
        const int all = rows_in_view();
        auto* only = find<QCheckBox>("onlyDiffering");
        only->setFocus();
        QTest::keyClick(only, Qt::Key_Space);
        QVERIFY(only->isChecked());
        QCOMPARE(rows_in_view(), 0);
        plan::Plan plan = window_->document().plan();
        plan.budget.horizon_years = plan.budget.horizon_years.value_or(5) + 3; // touches money only
        window_->document().edit(QStringLiteral("Longer"), {}, plan);
        QTRY_VERIFY_WITH_TIMEOUT(rows_in_view() > 0, patience_ms);
        QVERIFY2(rows_in_view() <= 3, qPrintable(QString::number(rows_in_view())));
        QVERIFY(change(QStringLiteral("Net present cost")).endsWith(QStringLiteral("dearer")));
        QTest::keyClick(only, Qt::Key_Space);
        QCOMPARE(rows_in_view(), all);
    }

    void a_broken_file_is_named_and_the_comparison_and_the_plan_stay()
    {
        action("compareKeep")->trigger();
        QTRY_VERIFY_WITH_TIMEOUT(compared() && rows_in_view() > 20, patience_ms);
        const QString with = find<QLabel>("comparedWith")->text();
        const std::string before = plan::write(window_->document().plan());
        const QString path = home_.filePath(QStringLiteral("broken.loamstead.json"));
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("{\"format\": \"loamstead-plan\", \"version\": 1, \"titel\": \"x\"}");
        file.close();
        QString said;
        QTimer answer; // as soon as the box is there
        connect(&answer, &QTimer::timeout, this, [&said] {
            if (auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget())) {
                said = box->text() + QLatin1Char('\n') + box->informativeText();
                box->close();
            }
        });
        answer.start(20);
        QVERIFY(!window_->comparison().with_file(path));
        QVERIFY2(said.contains(QStringLiteral("broken.loamstead.json")) && said.contains(QStringLiteral("titel")),
                 qPrintable(said));
        QCOMPARE(find<QLabel>("comparedWith")->text(), with);
        QVERIFY(rows_in_view() > 20);
        QCOMPARE(plan::write(window_->document().plan()), before);
        QVERIFY(!window_->comparison().with_file(home_.filePath(QStringLiteral("not-there.json"))));
        QVERIFY2(said.contains(QStringLiteral("not-there.json")), qPrintable(said));
        QVERIFY(window_->comparison().active());
    }

    void what_is_compared_can_be_copied_and_exported()
    {
        action("compareKeep")->trigger();
        make_longer(0.2);
        QTRY_VERIFY_WITH_TIMEOUT(compared() && change(QStringLiteral("Floor")).startsWith(QLatin1Char('+')),
                                 patience_ms);
        action("comparisonCopy")->trigger();
        const QMimeData* copied = QGuiApplication::clipboard()->mimeData();
        // The word says which way; a sign in front would be taken for a formula's.
        const QString larger = change(QStringLiteral("Floor")).mid(1);
        QVERIFY2(copied->text().contains(QLatin1Char('\t') + larger + QLatin1Char('\n')), qPrintable(copied->text()));
        QVERIFY(copied->html().contains(QStringLiteral("<td>%1</td>").arg(larger)));
        const QString path = home_.filePath(QStringLiteral("comparison.csv"));
        const SaveDialogHand hand(path, QMessageBox::Yes, window_.get());
        action("comparisonExport")->trigger();
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QString csv = QString::fromUtf8(file.readAll());
        QVERIFY2(csv.startsWith(QStringLiteral("Of,Figure,")), qPrintable(csv));
        QVERIFY(csv.contains(QLatin1Char(',') + larger + QStringLiteral("\r\n")));
        QVERIFY(csv.contains(QStringLiteral(",\"Winter day, warm side\",")));
    }

    void another_plan_of_other_boxes_shows_what_is_new_and_a_row_says_why()
    {
        const QString path = QStringLiteral(LOAM_SOURCE_DIR "/examples/upgrade.loamstead.json");
        QVERIFY(window_->comparison().with_file(path));
        QTRY_VERIFY_WITH_TIMEOUT(compared() && rows_in_view() > 20, patience_ms);
        // The other plan has two boxes, this one has one.
        QCOMPARE(table()->topLevelItem(1)->child(0)->text(3), QStringLiteral("gone"));
        table()->setCurrentItem(table()->topLevelItem(0)->child(2));
        const QString why = find<QTextBrowser>("whyText")->toPlainText();
        QVERIFY2(why.contains(QStringLiteral("Other plan: ")) && why.contains(QStringLiteral("This plan: ")),
                 qPrintable(why));
        table()->setCurrentItem(table()->findItems(QStringLiteral("To start"), Qt::MatchRecursive).front());
        QVERIFY(find<QTextBrowser>("whyText")->toPlainText().contains(QStringLiteral("Net of what is owned")));
        QVERIFY(!table()->accessibleName().isEmpty());
        // A verdict is a word beside its mark, never the mark alone.
        int judged = 0;
        for (QTreeWidgetItemIterator item(table()); *item != nullptr; ++item) {
            for (const int side : {1, 2}) {
                if (!(*item)->icon(side).isNull()) {
                    QVERIFY(!(*item)->text(side).isEmpty());
                    ++judged;
                }
            }
        }
        QVERIFY(judged > 10);
    }
};

QTEST_MAIN(ComparisonTest)
#include "comparison_test.moc"
