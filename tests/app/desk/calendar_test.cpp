// The care calendar in the window: the same tasks as worked out, shown with their reasons, saved in one step.
#include <QAction>
#include <QDateEdit>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QtTest>

#include "app/desk/document/plan_document.hpp"
#include "app/desk/print/calendar_dialog.hpp"
#include "app/desk/session/plan_files.hpp"
#include "app/report/calendar_ics.hpp"
#include "core/calendar/care_tasks.hpp"
#include "tests/app/desk/save_dialog.hpp"
#include "tests/app/desk/window_of_its_own.hpp"

using namespace loam;
using test::patience_ms;

class CalendarTest : public test::WindowOfItsOwn {
    Q_OBJECT

    static constexpr std::chrono::sys_days first{std::chrono::year{2028} / 2 / 29};

    // Opens the menu's entry, and works on the dialog while it is shown.
    template <class Work> void in_dialog(Work work)
    {
        bool shown = false;
        QTimer::singleShot(0, this, [&] {
            auto* dialog = qobject_cast<desk::CalendarDialog*>(QApplication::activeModalWidget());
            shown = dialog != nullptr;
            if (shown) {
                work(*dialog);
                dialog->close();
            }
        });
        find<QAction>("fileCalendar")->trigger();
        QVERIFY(shown);
    }

private slots:
    void initTestCase() { QCOMPARE(load_guidance(), QStringList()); }

    void init()
    {
        open_window();
        QVERIFY(window_->files().open(QStringLiteral(LOAM_SOURCE_DIR "/examples/upgrade.loamstead.json")));
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date() && window_->assessment() != nullptr, patience_ms);
    }

    void cleanup() { close_window(); }

    void every_task_is_listed_and_follows_the_first_day()
    {
        in_dialog([&](desk::CalendarDialog& dialog) {
            auto* table = find<QTreeWidget>("calendarTasks", &dialog);
            find<QDateEdit>("calendarStart", &dialog)->setDate(QDate(2028, 2, 29));
            const auto tasks =
                calendar::care_tasks(window_->document().plan(), *window_->assessment(), *catalog_, first);
            QCOMPARE(table->topLevelItemCount(), static_cast<int>(tasks.size()));
            QVERIFY(table->topLevelItem(0)->text(2).contains(QStringLiteral("2028")));
            auto* advice = find<QLabel>("calendarAdvice", &dialog);
            table->setFocus();
            QTest::keyClick(table, Qt::Key_End);
            QVERIFY(advice->text().contains(QStringLiteral("Worked out from the plan.")));
        });
    }

    void it_is_saved_as_the_command_line_would_write_it()
    {
        const QString path = home_.filePath(QStringLiteral("care.ics"));
        SaveDialogHand hand(path, QMessageBox::Yes, this);
        in_dialog([&](desk::CalendarDialog& dialog) {
            find<QDateEdit>("calendarStart", &dialog)->setDate(QDate(2028, 2, 29));
            find<QPushButton>("calendarSave", &dialog)->click();
            QCOMPARE(dialog.saved_as(), path);
        });
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const plan::Plan& plan = window_->document().plan();
        const words::Speaker speaker(words::Formatter(words::UnitSystem::metric, QLocale()), plan, *catalog_);
        const auto tasks = calendar::care_tasks(plan, *window_->assessment(), *catalog_, first);
        QCOMPARE(file.readAll(), report::calendar_ics(tasks, {plan.title, window_->assessment()->date}, speaker));
    }
};

QTEST_MAIN(CalendarTest)
#include "calendar_test.moc"
