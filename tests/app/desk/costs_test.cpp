// The costs in the window: read, copied, exported, in either theme.
#include <QAction>
#include <QClipboard>
#include <QFile>
#include <QLabel>
#include <QMimeData>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTextBrowser>
#include <QTreeWidget>
#include <QUndoStack>
#include <QtCharts/QChart>
#include <QtTest>

#include "app/desk/document/plan_document.hpp"
#include "app/desk/look/theme.hpp"
#include "app/desk/session/plan_files.hpp"
#include "app/desk/session/settings.hpp"
#include "app/desk/views/years_chart.hpp"
#include "app/desk/window.hpp"
#include "app/files/guidance.hpp"
#include "app/report/cost_rows.hpp"
#include "core/plan/file.hpp"
#include "tests/app/desk/save_dialog.hpp"
#include "tests/app/desk/window_of_its_own.hpp"

using namespace loam;
using test::patience_ms;

class CostsTest : public test::WindowOfItsOwn {
    Q_OBJECT

    QTreeWidget* table() { return find<QTreeWidget>("costs"); }
    QTreeWidgetItem* row(const char* name)
    {
        const auto items = table()->findItems(QLatin1String(name), Qt::MatchStartsWith | Qt::MatchRecursive);
        return items.isEmpty() ? nullptr : items.front();
    }
    QString typical(const char* name) { return row(name)->text(2); }

private slots:
    void initTestCase() { QCOMPARE(load_guidance(), QStringList()); }

    void init()
    {
        open_window();
        QVERIFY(window_->files().open(QStringLiteral(LOAM_SOURCE_DIR "/examples/upgrade.loamstead.json")));
        find<QTabWidget>("resultTabs")->setCurrentWidget(find<QWidget>("costsView"));
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date() && row("To begin") != nullptr, patience_ms);
    }

    void cleanup() { close_window(); }

    void the_sums_stand_first_and_a_row_says_how_by_key()
    {
        const words::Formatter formatter(words::UnitSystem::metric, QLocale());
        const assess::Costs& costs = window_->assessment()->costs;
        QCOMPARE(table()->topLevelItem(0)->text(2), formatter.money_bare(costs.startup.typical));
        QCOMPARE(table()->topLevelItem(1)->text(2), formatter.money_bare(costs.running_per_year.typical));
        table()->setFocus();
        table()->setCurrentItem(table()->topLevelItem(0));
        QTest::keyClick(table(), Qt::Key_Down);
        QVERIFY(find<QTextBrowser>("whyText")->toPlainText().startsWith(QStringLiteral("To run, a year: ")));
        QCOMPARE(row("Month by month")->childCount(), 12);
    }

    void an_edit_is_followed_and_undone_and_what_was_folded_stays_folded()
    {
        const std::string before = plan::write(window_->document().plan());
        const QString was = typical("Electricity");
        row("Month by month")->setExpanded(false);
        plan::Plan dearer = window_->document().plan();
        dearer.site.electricity_price_per_kwh = Decimal::parse("9.99");
        window_->document().edit(QStringLiteral("Dearer"), {}, dearer);
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date() && typical("Electricity") != was, patience_ms);
        QVERIFY(!row("Month by month")->isExpanded());
        QVERIFY(row("What runs up in a year")->isExpanded());
        window_->document().undo_stack().undo();
        QCOMPARE(plan::write(window_->document().plan()), before);
        QTRY_COMPARE_WITH_TIMEOUT(typical("Electricity"), was, patience_ms);
    }

    void the_copy_and_the_export_hold_the_rows_in_view()
    {
        find<QAction>("costsCopy")->trigger();
        const QMimeData* copied = QGuiApplication::clipboard()->mimeData();
        const QString net = QStringLiteral("Net present cost\t\t%1\t").arg(typical("Net present cost"));
        QVERIFY2(copied->text().split(QLatin1Char('\n')).contains(net), qPrintable(copied->text()));
        QVERIFY(copied->html().contains(QStringLiteral("<td align=\"right\">%1</td>").arg(typical("To run"))));
        QVERIFY(copied->text().contains(QStringLiteral("invented")));

        const QString path = home_.filePath(QStringLiteral("costs.csv"));
        const SaveDialogHand hand(path, QMessageBox::Yes, window_.get());
        find<QAction>("costsExport")->trigger();
        QVERIFY(!hand.was_asked()); // there was nothing to replace
        const words::Speaker speaker(words::Formatter(words::UnitSystem::metric, QLocale()), window_->document().plan(),
                                     *catalog_);
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(file.readAll(), QByteArray::fromStdString(report::costs_csv(window_->assessment()->costs, speaker)));
    }

    void an_export_that_cant_be_written_says_so()
    {
        QString said;
        QTimer listen;
        connect(&listen, &QTimer::timeout, this, [&said] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            if (box != nullptr && box->windowTitle() == QStringLiteral("The table was not saved")) {
                said = box->text();
                box->close();
            }
        });
        listen.start(30);
        const SaveDialogHand hand(home_.filePath(QStringLiteral("no-such-folder/costs.csv")), QMessageBox::Yes,
                                  window_.get());
        find<QAction>("costsExport")->trigger();
        QVERIFY2(!said.isEmpty(), "nothing was said");
    }

    void the_chart_takes_the_paper_of_a_theme_that_is_chosen_later()
    {
        auto* chart = find<desk::YearsChart>("yearsChart");
        for (const auto theme : {desk::Theme::dark, desk::Theme::light}) {
            desk::apply_theme(*qApp, theme);
            QTRY_COMPARE(chart->chart()->backgroundBrush().color(), qApp->palette().color(QPalette::Base));
            QCOMPARE(chart->chart()->titleBrush().color(), qApp->palette().color(QPalette::Text));
        }
        QVERIFY(!chart->accessibleDescription().isEmpty());
    }
};

QTEST_MAIN(CostsTest)
#include "costs_test.moc"
