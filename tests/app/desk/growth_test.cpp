// Measurements over time: entered in the form, drawn and told in the tab, undone like everything else.
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QTabWidget>
#include <QToolButton>
#include <QUndoStack>
#include <QtTest>

#include "app/desk/document/plan_document.hpp"
#include "app/desk/session/plan_files.hpp"
#include "app/desk/views/growth_chart.hpp"
#include "core/plan/file.hpp"
#include "tests/app/desk/window_of_its_own.hpp"

using namespace loam;
using test::patience_ms;

class GrowthTest : public test::WindowOfItsOwn {
    Q_OBJECT

    std::string bytes() { return plan::write(window_->document().plan()); }
    plan::Animal& animal(plan::Plan& plan) { return plan.enclosures[0].animals[0]; }

private slots:
    void initTestCase() { QCOMPARE(load_guidance(), QStringList()); }

    void init()
    {
        open_window();
        window_->show_example();
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
    }

    void cleanup() { close_window(); }

    void without_measurements_the_tab_says_what_it_is_for()
    {
        auto* text = find<QLabel>("growthText");
        QVERIFY(text->text().contains(QStringLiteral("Animals")));
        QVERIFY(find<QWidget>("lengthChart")->isHidden());
    }

    void a_measurement_is_entered_drawn_and_undone()
    {
        const std::string before = bytes();
        find<QListWidget>("chapters")->setCurrentRow(0);
        auto* page = find<QWidget>("animalsPage");
        QToolButton* add = nullptr;
        for (QToolButton* button : page->findChildren<QToolButton*>()) {
            if (button->toolTip().contains(QStringLiteral("measurement")) &&
                button->toolTip().contains(QStringLiteral("Add"))) {
                add = button;
            }
        }
        QVERIFY(add != nullptr);
        add->click();
        QCOMPARE(animal(const_cast<plan::Plan&>(window_->document().plan())).measurements.size(), std::size_t(1));
        auto* length = page->findChild<QLineEdit*>(QStringLiteral("measurements/length_m"));
        if (length == nullptr) {
            for (QLineEdit* line : page->findChildren<QLineEdit*>()) {
                if (line->accessibleName() == QStringLiteral("Length then")) {
                    length = line;
                }
            }
        }
        QVERIFY(length != nullptr);
        length->setFocus();
        length->selectAll();
        QTest::keyClicks(length, QStringLiteral("12.5 cm"));
        QTest::keyClick(length, Qt::Key_Return);
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
        QCOMPARE(animal(const_cast<plan::Plan&>(window_->document().plan())).measurements[0].length_m.value_or(0.0),
                 0.125);
        QVERIFY(!find<QWidget>("lengthChart")->isHidden());
        QVERIFY(find<QLabel>("growthText")->text().contains(QStringLiteral("three months")));
        while (window_->document().undo_stack().canUndo()) {
            window_->document().undo_stack().undo();
        }
        QCOMPARE(bytes(), before);
    }
};

QTEST_MAIN(GrowthTest)
#include "growth_test.moc"
