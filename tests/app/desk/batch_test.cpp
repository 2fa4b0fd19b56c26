// A club's day in the window: the list is looked at before anything is made, made beside the window's own work, and can
// be stopped. The sheets themselves are tested with the command line.
#include <QAbstractButton>
#include <QAccessible>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QTreeWidget>
#include <QtTest>

#include "app/desk/batch/batch_dialog.hpp"
#include "app/files/plan_file.hpp"
#include "tests/app/desk/window_of_its_own.hpp"

using namespace loam;
using test::patience_ms;

class BatchTest : public test::WindowOfItsOwn {
    Q_OBJECT

    plan::Plan template_;
    std::unique_ptr<desk::BatchDialog> dialog_;

    QString file(const char* name, const QByteArray& content)
    {
        const QString path = home_.filePath(QLatin1String(name));
        QFile file(path);
        (void)file.open(QIODevice::WriteOnly);
        file.write(content);
        return path;
    }

    template <class T> T* part(const char* name) { return find<T>(name, dialog_.get()); }
    QString summary() { return part<QLabel>("batchSummary")->text(); }
    QString result() { return part<QLabel>("batchResult")->text(); }

    void give(const QByteArray& list, const char* folder)
    {
        part<QLineEdit>("batchList")->setText(file("adopters.csv", list));
        part<QLineEdit>("batchFolder")->setText(home_.filePath(QLatin1String(folder)));
    }

private slots:
    void initTestCase()
    {
        QCOMPARE(load_guidance(), QStringList());
        template_ = files::read_plan(QStringLiteral(LOAM_SOURCE_DIR "/examples/club-template.loamstead.json")).plan;
    }

    void init()
    {
        dialog_ = std::make_unique<desk::BatchDialog>(
            template_, catalog_,
            desk::BatchSettings{{}, QStringLiteral("en"), words::UnitSystem::metric, sheets::Paper::a4}, nullptr);
        dialog_->show();
    }

    void cleanup() { dialog_.reset(); }

    void nothing_can_be_started_before_list_and_folder_are_there()
    {
        QVERIFY(!part<QPushButton>("batchStart")->isEnabled());
        part<QLineEdit>("batchFolder")->setText(home_.filePath(QStringLiteral("x")));
        QVERIFY(!part<QPushButton>("batchStart")->isEnabled());
        part<QLineEdit>("batchList")->setText(home_.filePath(QStringLiteral("none.csv")));
        QTRY_VERIFY_WITH_TIMEOUT(summary().contains(QStringLiteral("does not exist")), patience_ms);
        QVERIFY(!part<QPushButton>("batchStart")->isEnabled());
        QVERIFY(!part<QPushButton>("batchCancel")->isEnabled());
        QVERIFY(!part<QPushButton>("batchOpen")->isEnabled());
    }

    void rows_are_shown_with_what_is_wrong_with_them()
    {
        give("name,winter_day_c,winter\nAda,19,\nBo,warm,\n", "preview");
        auto* rows = part<QTreeWidget>("batchRows");
        QTRY_COMPARE_WITH_TIMEOUT(rows->topLevelItemCount(), 2, patience_ms);
        QCOMPARE(rows->topLevelItem(0)->text(1), QStringLiteral("Ada"));
        QVERIFY(rows->topLevelItem(0)->text(2).isEmpty());
        QVERIFY(rows->topLevelItem(0)->text(3).contains(QStringLiteral("winter_day_c: 19")));
        QCOMPARE(rows->topLevelItem(1)->text(0), QStringLiteral("3"));
        QVERIFY(rows->topLevelItem(1)->text(2).startsWith(QStringLiteral("winter_day_c: “warm” is not a number")));
        QVERIFY(summary().contains(QStringLiteral("2 rows. 1 of them fail")));
        QVERIFY(summary().contains(QStringLiteral("“winter” is not known")));
        QVERIFY(!QDir(home_.filePath(QStringLiteral("preview"))).exists()); // nothing is made yet
        QVERIFY(part<QPushButton>("batchStart")->isEnabled());
    }

    void the_sheets_are_made_while_the_window_lives_on()
    {
        give("name,winter_day_c\nAda,19\nBo,warm\n", "made");
        QTRY_VERIFY_WITH_TIMEOUT(part<QPushButton>("batchStart")->isEnabled(), patience_ms);
        part<QPushButton>("batchStart")->click();
        QVERIFY(part<QPushButton>("batchCancel")->isEnabled());
        QVERIFY(part<QLineEdit>("batchList")->isReadOnly());
        QTRY_VERIFY_WITH_TIMEOUT(!result().isEmpty(), patience_ms);
        QVERIFY2(result().contains(QStringLiteral("failed.csv")), qPrintable(result()));
        const QDir made(home_.filePath(QStringLiteral("made")));
        QVERIFY(made.exists(QStringLiteral("0002-ada.pdf")));
        QVERIFY(made.exists(QStringLiteral("club-order.csv")));
        QVERIFY(part<QPushButton>("batchOpen")->isEnabled());
        QVERIFY(part<QPushButton>("batchStart")->isEnabled());
    }

    void a_run_that_is_stopped_says_so()
    {
        give("name,winter_day_c\nAda,21\nBo,22\nCy,23\n", "stopped");
        QTRY_VERIFY_WITH_TIMEOUT(part<QPushButton>("batchStart")->isEnabled(), patience_ms);
        part<QPushButton>("batchStart")->click();
        part<QPushButton>("batchCancel")->click();
        QTRY_VERIFY_WITH_TIMEOUT(result().startsWith(QStringLiteral("Stopped")), patience_ms);
        QVERIFY(part<QPushButton>("batchStart")->isEnabled());
    }

    void a_folder_with_something_else_in_it_is_refused_in_words()
    {
        QDir(home_.path()).mkdir(QStringLiteral("other"));
        file("other/mine.txt", "mine");
        give("name\nAda\n", "other");
        QTRY_VERIFY_WITH_TIMEOUT(part<QPushButton>("batchStart")->isEnabled(), patience_ms);
        part<QPushButton>("batchStart")->click();
        QTRY_VERIFY_WITH_TIMEOUT(result().contains(QStringLiteral("holds other files")), patience_ms);
    }

    void every_control_has_a_name_that_is_heard()
    {
        for (QWidget* widget : dialog_->findChildren<QWidget*>()) {
            const bool control =
                qobject_cast<QAbstractButton*>(widget) != nullptr || qobject_cast<QLineEdit*>(widget) != nullptr ||
                qobject_cast<QTreeWidget*>(widget) != nullptr || qobject_cast<QProgressBar*>(widget) != nullptr;
            if (control && !widget->objectName().startsWith(QStringLiteral("qt_"))) {
                QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(widget);
                QVERIFY2(heard != nullptr && !heard->text(QAccessible::Name).isEmpty(),
                         qPrintable(widget->objectName()));
            }
        }
    }

    void the_menu_opens_it_for_the_open_plan()
    {
        open_window();
        QVERIFY(find<QAction>("fileBatch") != nullptr);
        bool seen = false;
        QTimer::singleShot(0, window_.get(), [&] {
            auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
            seen = dialog != nullptr && dialog->objectName() == QStringLiteral("batchDialog");
            if (dialog != nullptr) {
                dialog->reject();
            }
        });
        find<QAction>("fileBatch")->trigger();
        QVERIFY(seen);
        close_window();
    }
};

QTEST_MAIN(BatchTest)
#include "batch_test.moc"
