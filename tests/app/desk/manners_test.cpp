// What holds for the whole window: every control has a name for those who hear it, no text is too small to read, and
// whatever is edited in whatever order comes back to the same bytes.
#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAccessible>
#include <QComboBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QListWidget>
#include <QScrollBar>
#include <QTabBar>
#include <QTabWidget>
#include <QUndoStack>
#include <QtTest>
#include <random>

#include "app/desk/document/plan_document.hpp"
#include "app/desk/prices/price_editor.hpp"
#include "app/desk/prices/price_lists_dialog.hpp"
#include "app/desk/print/calendar_dialog.hpp"
#include "app/desk/session/plan_files.hpp"
#include "app/desk/views/sheet.hpp"
#include "core/plan/file.hpp"
#include "tests/app/desk/window_of_its_own.hpp"

using namespace loam;
using test::patience_ms;

namespace {

bool is_control(const QWidget& widget)
{
    const bool one = qobject_cast<const QAbstractButton*>(&widget) != nullptr ||
                     qobject_cast<const QComboBox*>(&widget) != nullptr ||
                     qobject_cast<const QLineEdit*>(&widget) != nullptr ||
                     qobject_cast<const QAbstractItemView*>(&widget) != nullptr ||
                     qobject_cast<const desk::Sheet*>(&widget) != nullptr;
    // Parts of other controls are heard as those.
    const bool part = qobject_cast<const QComboBox*>(widget.parentWidget()) != nullptr ||
                      qobject_cast<const QLineEdit*>(widget.parentWidget()) != nullptr ||
                      qobject_cast<const QHeaderView*>(&widget) != nullptr ||
                      qobject_cast<const QTabBar*>(widget.parentWidget()) != nullptr ||
                      widget.objectName().startsWith(QStringLiteral("qt_")) || widget.inherits("QComboBoxListView") ||
                      widget.inherits("QTableCornerButton"); // never shown
    return one && !part;
}

QStringList nameless_in(QWidget& whole)
{
    QStringList nameless;
    for (QWidget* widget : whole.findChildren<QWidget*>()) {
        if (!is_control(*widget)) {
            continue;
        }
        QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(widget);
        if (heard == nullptr || heard->text(QAccessible::Name).trimmed().isEmpty()) {
            nameless << QStringLiteral("%1 “%2” in %3")
                            .arg(QString::fromLatin1(widget->metaObject()->className()), widget->objectName(),
                                 widget->parentWidget() != nullptr ? widget->parentWidget()->objectName() : QString());
        }
    }
    return nameless;
}

} // namespace

class MannersTest : public test::WindowOfItsOwn {
    Q_OBJECT

    QListWidget* chapters() { return find<QListWidget>("chapters"); }
    QUndoStack& steps() { return window_->document().undo_stack(); }
    std::string bytes() { return plan::write(window_->document().plan()); }

private slots:
    void initTestCase() { QCOMPARE(load_guidance(), QStringList()); }

    void init()
    {
        open_window();
        window_->show_example();
        QTRY_VERIFY_WITH_TIMEOUT(window_->up_to_date(), patience_ms);
    }

    void cleanup() { close_window(); }

    void every_control_has_a_name_that_is_heard()
    {
        for (int row = 0; row < chapters()->count(); ++row) {
            chapters()->setCurrentRow(row);
            QCoreApplication::processEvents();
        }
        const QStringList nameless = nameless_in(*window_);
        QVERIFY2(nameless.isEmpty(), qPrintable(nameless.join(QLatin1Char('\n'))));
    }

    void so_has_every_control_of_the_price_lists()
    {
        const files::PriceShelf shelf(home_.filePath(QStringLiteral("prices")));
        desk::PriceListsDialog lists(window_->prices(), home_.filePath(QStringLiteral("prices")),
                                     words::UnitSystem::metric, nullptr);
        desk::PriceEditor editor(catalog_->prices, {}, shelf, catalog_, words::UnitSystem::metric, nullptr);
        const QStringList nameless = nameless_in(lists) + nameless_in(editor);
        QVERIFY2(nameless.isEmpty(), qPrintable(nameless.join(QLatin1Char('\n'))));
    }

    void so_has_every_control_of_the_calendar()
    {
        const desk::SheetJob job{window_->document().plan(), *window_->assessment(), *catalog_,
                                 words::UnitSystem::metric, sheets::Paper::a4};
        desk::CalendarDialog calendar(job);
        const QStringList nameless = nameless_in(calendar);
        QVERIFY2(nameless.isEmpty(), qPrintable(nameless.join(QLatin1Char('\n'))));
    }

    void no_text_is_smaller_than_nine_points()
    {
        for (QWidget* widget : window_->findChildren<QWidget*>()) {
            const double points = widget->fontInfo().pointSizeF();
            QVERIFY2(points >= 8.9, qPrintable(widget->objectName()));
        }
    }

    // Random keys and clicks on the drawing, random values in random fields of the form.
    void a_thousand_random_edits_are_undone_to_the_same_bytes_and_redone()
    {
        std::mt19937 random(2026);
        auto* sheet = find<desk::Sheet>("sheet");
        const std::string before = bytes();
        constexpr Qt::Key keys[] = {Qt::Key_Left, Qt::Key_Right, Qt::Key_Up, Qt::Key_Down,
                                    Qt::Key_R,    Qt::Key_Tab,   Qt::Key_D,  Qt::Key_Delete};
        for (int edit = 0; edit < 1000; ++edit) {
            if (random() % 3 != 0) {
                const Qt::Key key = keys[random() % std::size(keys)];
                const Qt::KeyboardModifiers with = key == Qt::Key_D                         ? Qt::ControlModifier
                                                   : key == Qt::Key_R || key == Qt::Key_Tab ? Qt::NoModifier
                                                   : random() % 2 == 0                      ? Qt::ShiftModifier
                                                                                            : Qt::ControlModifier;
                if (key == Qt::Key_Delete && random() % 4 != 0) {
                    continue; // or nothing would be left soon
                }
                sheet->setFocus();
                QTest::keyClick(sheet, key, with);
            } else {
                chapters()->setCurrentRow(static_cast<int>(random() % static_cast<unsigned>(chapters()->count())));
                QList<QLineEdit*> fields;
                for (QLineEdit* field : find<QWidget>("form")->findChildren<QLineEdit*>()) {
                    if (field->isVisible() && field->isEnabled() && !field->isReadOnly()) {
                        fields << field;
                    }
                }
                if (fields.isEmpty()) {
                    continue;
                }
                QLineEdit* field = fields[static_cast<qsizetype>(random() % static_cast<unsigned>(fields.size()))];
                field->setFocus();
                field->selectAll();
                QTest::keyClicks(field, QString::number(random() % 90));
                QTest::keyClick(field, Qt::Key_Return);
            }
            QVERIFY(plan::problems_of(window_->document().plan()).empty());
        }
        QVERIFY(steps().count() > 150);
        const std::string after = bytes();
        while (steps().canUndo()) {
            steps().undo();
        }
        QCOMPARE(bytes(), before);
        while (steps().canRedo()) {
            steps().redo();
        }
        QCOMPARE(bytes(), after);
    }
};

QTEST_MAIN(MannersTest)
#include "manners_test.moc"
