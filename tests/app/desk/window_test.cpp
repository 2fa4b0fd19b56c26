// The whole window, driven through its widgets.
#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QMessageBox>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTextBrowser>
#include <QTimer>
#include <QToolButton>
#include <QTreeWidget>
#include <QTreeWidgetItemIterator>
#include <QtTest>

#include "app/desk/document/plan_document.hpp"
#include "app/desk/session/plan_files.hpp"
#include "app/desk/session/price_choice.hpp"
#include "app/desk/session/settings.hpp"
#include "app/desk/views/explanation.hpp"
#include "app/desk/window.hpp"
#include "app/files/guidance.hpp"
#include "app/files/identity.hpp"
#include "app/files/plan_file.hpp"
#include "app/files/price_file.hpp"
#include "core/plan/file.hpp"
#include "tests/app/desk/window_of_its_own.hpp"

using namespace loam;

namespace {

constexpr int patience_ms = 30000; // an upper bound only: a slow machine must not fail the test

// Answers the next message box by the button with this role, as soon as it is there.
void answer_next_box(QMessageBox::ButtonRole role)
{
    QTimer::singleShot(50, [role] {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        if (box == nullptr) {
            answer_next_box(role);
            return;
        }
        for (QAbstractButton* button : box->buttons()) {
            if (box->buttonRole(button) == role) {
                button->click();
                return;
            }
        }
        box->close();
    });
}

} // namespace

class WindowTest : public test::WindowOfItsOwn {
    Q_OBJECT

    void trigger(const char* name) { window_->findChild<QAction*>(QLatin1String(name))->trigger(); }
    QWidget* page(const char* name) { return find<QWidget>(name); }
    void turn_to(const QString& chapter)
    {
        auto* chapters = find<QListWidget>("chapters");
        const auto items = chapters->findItems(chapter, Qt::MatchExactly);
        QCOMPARE(items.size(), 1);
        chapters->setCurrentItem(items.front());
    }
    void type_into(QLineEdit* field, const QString& text)
    {
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, text);
        QTest::keyClick(field, Qt::Key_Return);
    }

private slots:
    void initTestCase() { QCOMPARE(load_guidance(), QStringList()); }

    void init()
    {
        open_window();
        window_->show_example();
    }

    void cleanup() { close_window(); }

    void it_opens_with_an_example_that_gets_assessed()
    {
        QVERIFY(find<QWidget>("welcomeBar")->isVisible());
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        QVERIFY(window_->assessment()->complete);
        QVERIFY(find<QListView>("findings")->model()->rowCount() > 3);
        QVERIFY(find<QTreeWidget>("figures")->topLevelItemCount() > 4);
        QVERIFY(find<QTreeWidget>("shopping")->topLevelItemCount() > 3);
        QVERIFY(find<QTreeWidget>("costs")->topLevelItemCount() >= 2);
    }

    void every_figure_shopping_line_and_cost_says_why()
    {
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        for (const char* name : {"figures", "shopping", "costs"}) {
            int lines = 0;
            for (QTreeWidgetItemIterator item(find<QTreeWidget>(name)); *item != nullptr; ++item) {
                const QVariant held = (*item)->data(0, desk::explanation_role);
                if ((*item)->parent() == nullptr && !held.isValid()) {
                    continue; // the heading of a group
                }
                const auto why = held.value<desk::Explanation>();
                QVERIFY2(!why.title.isEmpty() && !(why.how + why.inputs + why.source).isEmpty(),
                         qPrintable((*item)->text(0)));
                ++lines;
            }
            QVERIFY(lines > 3);
        }
    }

    void a_length_typed_in_the_form_changes_the_plan_and_undo_takes_it_back()
    {
        turn_to(QStringLiteral("Box"));
        const std::string before = plan::write(window_->document().plan());
        auto* length = find<QLineEdit>("length_m", page("boxPage"));
        const double longer_m = window_->document().plan().enclosures.front().shell.length_m + 0.30;
        type_into(length, QString::number(longer_m * 100.0, 'f', 1) + QStringLiteral(" cm"));
        QCOMPARE(window_->document().plan().enclosures.front().shell.length_m, longer_m);
        QVERIFY(window_->isWindowModified());
        trigger("editUndo");
        QCOMPARE(plan::write(window_->document().plan()), before);
        trigger("editRedo");
        QCOMPARE(window_->document().plan().enclosures.front().shell.length_m, longer_m);
    }

    void the_undo_key_reaches_the_plan_while_a_field_has_the_focus()
    {
        turn_to(QStringLiteral("Box"));
        const std::string before = plan::write(window_->document().plan());
        auto* length = find<QLineEdit>("length_m", page("boxPage"));
        type_into(length, QStringLiteral("155 cm"));
        QVERIFY(plan::write(window_->document().plan()) != before);
        QKeyEvent key(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier);
        key.ignore();
        QCoreApplication::sendEvent(length, &key);
        QVERIFY(!key.isAccepted()); // so the window's action gets it
        QTest::keyClicks(length, QStringLiteral("1"));
        key.ignore();
        QCoreApplication::sendEvent(length, &key);
        QVERIFY(key.isAccepted()); // an unfinished entry is the line's own to undo
    }

    void changing_the_units_edits_nothing()
    {
        turn_to(QStringLiteral("Box"));
        const std::string before = plan::write(window_->document().plan());
        auto* length = find<QLineEdit>("length_m", page("boxPage"));
        const QString metric = length->text();
        trigger("unitsUs");
        QVERIFY(length->text() != metric);
        length->setFocus();
        QTest::keyClick(length, Qt::Key_Return); // entered and left without a change
        find<QLineEdit>("width_m", page("boxPage"))->setFocus();
        trigger("unitsMetric");
        QCOMPARE(length->text(), metric);
        QCOMPARE(plan::write(window_->document().plan()), before);
        QVERIFY(!window_->isWindowModified());
    }

    void what_cannot_be_read_stays_in_the_line_and_changes_nothing()
    {
        turn_to(QStringLiteral("Box"));
        const std::string before = plan::write(window_->document().plan());
        auto* length = find<QLineEdit>("length_m", page("boxPage"));
        type_into(length, QStringLiteral("quite long"));
        QCOMPARE(plan::write(window_->document().plan()), before);
        QCOMPARE(length->text(), QStringLiteral("quite long"));
        type_into(length, QStringLiteral("99999 cm"));
        QCOMPARE(plan::write(window_->document().plan()), before);
    }

    void a_reading_is_added_and_typed_in_and_undo_takes_both_back()
    {
        const plan::Plan before = window_->document().plan();
        turn_to(QStringLiteral("Readings"));
        QWidget* readings = page("readingsPage");
        find<QAbstractButton>("add", readings)->click();
        QCOMPARE(window_->document().plan().enclosures.front().readings.size(),
                 before.enclosures.front().readings.size() + 1);
        type_into(find<QLineEdit>("value_c", readings), QStringLiteral("31.5"));
        QCOMPARE(window_->document().plan().enclosures.front().readings.back().value_c, 31.5);
        trigger("editUndo");
        trigger("editUndo");
        QVERIFY(window_->document().plan() == before);
    }

    void every_chapter_shows_and_every_add_can_be_undone()
    {
        auto* chapters = find<QListWidget>("chapters");
        const std::string before = plan::write(window_->document().plan());
        int added = 0;
        for (int row = 0; row < chapters->count(); ++row) {
            chapters->setCurrentRow(row);
            for (QToolButton* add : window_->findChildren<QToolButton*>(QStringLiteral("add"))) {
                if (add->isVisible() && add->isEnabled()) {
                    const std::string was = plan::write(window_->document().plan());
                    add->click();
                    if (plan::write(window_->document().plan()) != was) {
                        ++added;
                        QVERIFY(plan::problems_of(window_->document().plan()).empty());
                        trigger("editUndo");
                        QCOMPARE(plan::write(window_->document().plan()), was);
                    }
                }
            }
        }
        QVERIFY(added >= 9);
        QCOMPARE(plan::write(window_->document().plan()), before);
    }

    void enclosures_are_added_copied_and_removed()
    {
        const std::size_t count = window_->document().plan().enclosures.size();
        find<QToolButton>("copyEnclosure")->click();
        QCOMPARE(window_->document().plan().enclosures.size(), count + 1);
        QVERIFY(plan::problems_of(window_->document().plan()).empty());
        QCOMPARE(find<QComboBox>("enclosureChooser")->count(), static_cast<int>(count) + 1);
        find<QToolButton>("removeEnclosure")->click();
        QCOMPARE(window_->document().plan().enclosures.size(), count);
        find<QToolButton>("addEnclosure")->click();
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        QCOMPARE(window_->assessment()->enclosures.size(), count + 1);
    }

    void a_plan_is_saved_and_opened_again_unchanged()
    {
        const QString path = home_.filePath(QStringLiteral("saved.loamstead.json"));
        QCOMPARE(files::write_plan(window_->document().plan(), path), QString());
        const std::string before = plan::write(window_->document().plan());
        QVERIFY(window_->files().open(path));
        QCOMPARE(plan::write(window_->document().plan()), before);
        QVERIFY(!window_->isWindowModified());
        QVERIFY(settings_->recent_files().contains(path));
        QVERIFY(!find<QWidget>("welcomeBar")->isVisible());
    }

    void a_broken_file_is_refused_with_its_problems_and_the_plan_stays()
    {
        const QString path = home_.filePath(QStringLiteral("broken.loamstead.json"));
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("{\"format\": \"loamstead-plan\", \"version\": 1, \"titel\": \"x\"}");
        file.close();
        const std::string before = plan::write(window_->document().plan());
        QString said;
        QTimer::singleShot(50, [&said] {
            if (auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget())) {
                said = box->informativeText();
                box->close();
            }
        });
        QVERIFY(!window_->files().open(path));
        QVERIFY2(said.contains(QStringLiteral("titel")), qPrintable(said));
        QCOMPARE(plan::write(window_->document().plan()), before);
    }

    void unsaved_work_is_asked_for_before_it_is_thrown_away()
    {
        find<QToolButton>("addEnclosure")->click();
        const std::string edited = plan::write(window_->document().plan());
        answer_next_box(QMessageBox::RejectRole);
        QVERIFY(!window_->files().start_new());
        QCOMPARE(plan::write(window_->document().plan()), edited);
        answer_next_box(QMessageBox::DestructiveRole);
        QVERIFY(window_->files().start_new());
        QVERIFY(plan::write(window_->document().plan()) != edited);
    }

    void a_chosen_line_says_why()
    {
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        auto* findings = find<QListView>("findings");
        findings->setCurrentIndex(findings->model()->index(1, 0));
        auto* why = find<QTextBrowser>("whyText");
        QVERIFY(why->toPlainText().contains(QStringLiteral("How it was worked out")));
    }

    void a_price_list_of_ones_own_changes_the_costs_and_is_remembered()
    {
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        const Money before = window_->assessment()->costs.startup.typical;
        catalog::PriceList dearer = catalog_->prices;
        for (catalog::Item& item : dearer.items) {
            for (catalog::Pack& pack : item.packs) {
                pack.typical = pack.high;
            }
        }
        const QString path = home_.filePath(QStringLiteral("dearer.csv"));
        QCOMPARE(files::write_prices(dearer, path), QString());
        QVERIFY(window_->prices().use({path}));
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        QVERIFY(window_->assessment()->costs.startup.typical.minor_units() > before.minor_units());
        QCOMPARE(settings_->price_lists(), QStringList(path));
        trigger("pricesBuiltIn");
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        QCOMPARE(window_->assessment()->costs.startup.typical.minor_units(), before.minor_units());
    }

    void an_empty_plan_is_assessed_without_complaint()
    {
        QVERIFY(window_->files().start_new());
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        QVERIFY(window_->assessment()->complete);
    }

    void the_last_edit_wins()
    {
        turn_to(QStringLiteral("Box"));
        plan::Plan plan = window_->document().plan();
        for (int i = 0; i < 20; ++i) {
            plan.title = "edit " + std::to_string(i);
            plan.enclosures.front().shell.height_m = 0.5 + 0.01 * i;
            window_->document().edit(QStringLiteral("x"), {}, plan);
            QCoreApplication::processEvents();
        }
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        QCOMPARE(window_->assessment()->plan_title, std::string("edit 19"));
    }
};

QTEST_MAIN(WindowTest)
#include "window_test.moc"
