// Several enclosures at a glance, commands found by a word, and the drawing as a file.
#include <QApplication>
#include <QFileDialog>
#include <QImage>
#include <QListWidget>
#include <QMenu>
#include <QSvgRenderer>
#include <QTabWidget>
#include <QTreeWidget>
#include <QXmlStreamReader>
#include <QtTest>

#include "app/desk/command_finder.hpp"
#include "app/desk/document/plan_document.hpp"
#include "app/desk/print/drawing_export.hpp"
#include "app/desk/session/plan_files.hpp"
#include "app/desk/views/drawing_view.hpp"
#include "tests/app/desk/save_dialog.hpp"
#include "tests/app/desk/window_of_its_own.hpp"

using namespace loam;
using test::patience_ms;

class OverviewTest : public test::WindowOfItsOwn {
    Q_OBJECT

    QTabWidget* tabs() { return find<QTabWidget>("resultTabs"); }
    QTreeWidget* overview() { return find<QTreeWidget>("overview"); }
    bool overview_is_there() { return tabs()->isTabVisible(tabs()->indexOf(overview())); }

    // Looks for these words and takes what is found first; the text of it.
    QString find_and_take(const QString& words)
    {
        QString taken;
        QTimer::singleShot(50, this, [&taken, words] {
            auto* finder = qobject_cast<desk::CommandFinder*>(QApplication::activeModalWidget());
            QVERIFY(finder != nullptr);
            auto* line = finder->findChild<QLineEdit*>(QStringLiteral("commandLine"));
            QTest::keyClicks(line, words);
            const auto* item = finder->findChild<QListWidget*>(QStringLiteral("commandList"))->currentItem();
            taken = item != nullptr ? item->text() : QString();
            QTest::keyClick(line, item != nullptr ? Qt::Key_Return : Qt::Key_Escape);
        });
        find<QAction>("helpFind")->trigger();
        return taken;
    }

private slots:
    void initTestCase() { QCOMPARE(load_guidance(), QStringList()); }
    void init() { open_window(); }
    void cleanup() { close_window(); }

    void each_enclosure_has_a_row_that_leads_to_it_and_the_sums_are_those_of_the_rows()
    {
        window_->show_example();
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        QVERIFY(!overview_is_there()); // one alone is its own overview
        QVERIFY(window_->files().open(QStringLiteral(LOAM_SOURCE_DIR "/examples/upgrade.loamstead.json")));
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date() && overview_is_there(), patience_ms);
        const auto& results = window_->assessment()->enclosures;
        QCOMPARE(overview()->topLevelItemCount(), static_cast<int>(results.size()) + 1);
        double connected_w = 0.0;
        for (std::size_t i = 0; i < results.size(); ++i) {
            QCOMPARE(overview()->topLevelItem(static_cast<int>(i))->text(0), QString::fromStdString(results[i].name));
            connected_w += results[i].power.connected_w.likely;
        }
        const QTreeWidgetItem* sum = overview()->topLevelItem(static_cast<int>(results.size()));
        QCOMPARE(sum->text(4), words::Formatter(words::UnitSystem::metric).value(connected_w, words::Quantity::power));
        emit overview()->itemActivated(overview()->topLevelItem(1), 0);
        QCOMPARE(find<desk::DrawingView>("drawing")->picture().enclosure.id, results[1].id);
    }

    void a_command_is_found_by_words_in_any_order_and_done()
    {
        window_->show_example();
        QVERIFY(find_and_take(QStringLiteral("dark")).contains(QStringLiteral("Dark")));
        QCOMPARE(settings_->theme(), desk::Theme::dark);
        QVERIFY(find_and_take(QStringLiteral("light appear")).contains(QStringLiteral("Light")));
        QCOMPARE(settings_->theme(), desk::Theme::light);
        QVERIFY(find_and_take(QStringLiteral("nothing of the kind")).isEmpty());
        QVERIFY(find_and_take(QStringLiteral("close comparison")).isEmpty()); // can't be done now
    }

    void every_command_of_the_menus_is_in_the_finder()
    {
        desk::CommandFinder finder(*window_->menuBar(), nullptr);
        const auto* list = finder.findChild<QListWidget*>(QStringLiteral("commandList"));
        int enabled = 0;
        for (const QAction* action : window_->findChildren<QAction*>()) {
            const bool of_a_menu = !action->associatedObjects().isEmpty() &&
                                   qobject_cast<QMenu*>(action->associatedObjects().front()) != nullptr;
            enabled += of_a_menu && action->isEnabled() && !action->isSeparator() && action->menu() == nullptr &&
                               !action->text().isEmpty() && !action->objectName().isEmpty()
                           ? 1
                           : 0;
        }
        QVERIFY(list->count() >= enabled);
        QVERIFY(enabled > 15);
    }

    void the_drawing_is_saved_as_svg_and_as_png_that_open_again()
    {
        window_->show_example();
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        const drawing::Picture& picture = find<desk::DrawingView>("drawing")->picture();
        const QByteArray svg = desk::drawing_as_svg(picture, QStringLiteral("A <b> & \"box\""));
        QXmlStreamReader reader(svg);
        int texts = 0;
        QString title;
        while (!reader.atEnd()) {
            reader.readNext();
            if (reader.isStartElement() && reader.name() == QStringLiteral("title")) {
                title = reader.readElementText();
            }
            texts += reader.isStartElement() && reader.name() == QStringLiteral("text") ? 1 : 0;
        }
        QVERIFY2(!reader.hasError(), qPrintable(reader.errorString()));
        QCOMPARE(title, QStringLiteral("A <b> & \"box\""));
        QVERIFY(texts > 8); // dimensions and names stay text
        QVERIFY(QSvgRenderer(svg).isValid());
        const QImage png = QImage::fromData(desk::drawing_as_png(picture), "PNG");
        QCOMPARE(png.size(), QSize(2400, 1440));
    }

    void exporting_the_drawing_writes_the_kind_that_the_name_says()
    {
        window_->show_example();
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        for (const char* name : {"box.svg", "box.png"}) {
            const QString path = home_.filePath(QLatin1String(name));
            SaveDialogHand hand(path, QMessageBox::Yes, this);
            find<QAction>("fileDrawing")->trigger();
            QFile file(path);
            QVERIFY(file.open(QIODevice::ReadOnly));
            const QByteArray start = file.read(8);
            QVERIFY(QByteArray(name).endsWith("png") ? start.startsWith("\x89PNG") : start.startsWith("<?xml"));
        }
    }
};

QTEST_MAIN(OverviewTest)
#include "overview_test.moc"
