// Moving, resizing, turning, duplicating and taking out on the drawing, by mouse and by keyboard: every act is one step
// that goes back to the same bytes and forth again.
#include <QMenu>
#include <QUndoStack>
#include <QtTest>
#include <algorithm>

#include "app/desk/document/plan_document.hpp"
#include "app/desk/views/sheet.hpp"
#include "app/drawing/in_hand.hpp"
#include "app/drawing/placing.hpp"
#include "core/plan/file.hpp"
#include "tests/app/desk/window_of_its_own.hpp"

using namespace loam;
using test::patience_ms;

class SheetTest : public test::WindowOfItsOwn {
    Q_OBJECT

    desk::Sheet* sheet() const { return window_->findChild<desk::Sheet*>(QStringLiteral("sheet")); }
    const plan::Enclosure& box() const { return window_->document().plan().enclosures.front(); }
    QUndoStack& steps() const { return window_->document().undo_stack(); }
    std::string bytes() const { return plan::write(window_->document().plan()); }
    drawing::Frame frame() const { return drawing::lay_out(sheet()->picture, sheet()->area()); }
    QPoint point_at(const QPointF& at_m) const { return drawing::on_plan(frame(), at_m.x(), at_m.y()).toPoint(); }
    drawing::Placed thing(const QString& id) const { return *drawing::placed_thing(box(), id); }
    QString bowl() const { return first(plan::FittingKind::water_bowl); }
    QString first(plan::FittingKind kind) const
    {
        for (const plan::Fitting& fitting : box().fittings) {
            if (fitting.kind == kind) {
                return QString::fromStdString(fitting.id);
            }
        }
        return {};
    }

    void drag(const QPoint& from, const QPoint& to, Qt::KeyboardModifiers with = {})
    {
        QTest::mousePress(sheet(), Qt::LeftButton, {}, from);
        QTest::mouseMove(sheet(), (from + to) / 2);
        QMouseEvent move(QEvent::MouseMove, QPointF(to), sheet()->mapToGlobal(QPointF(to)), Qt::NoButton,
                         Qt::LeftButton, with);
        QCoreApplication::sendEvent(sheet(), &move);
        QTest::mouseRelease(sheet(), Qt::LeftButton, with, to);
    }

    void choose(const QString& id)
    {
        QTest::mouseClick(sheet(), Qt::LeftButton, {}, point_at(thing(id).footprint_m.center()));
        QCOMPARE(sheet()->picture.highlighted, id);
        QVERIFY(sheet()->hasFocus());
    }

    // Undone and redone to the same bytes.
    void check_one_step(const std::string& before)
    {
        const std::string after = bytes();
        QVERIFY(after != before);
        QCOMPARE(steps().count(), 1);
        steps().undo();
        QCOMPARE(bytes(), before);
        steps().redo();
        QCOMPARE(bytes(), after);
        steps().undo();
        steps().clear();
    }

private slots:
    void initTestCase() { QCOMPARE(load_guidance(), QStringList()); }

    void init()
    {
        open_window();
        window_->resize(1280, 800);
        window_->show_example();
        window_->activateWindow();
        QTRY_VERIFY_WITH_TIMEOUT(window_->isActiveWindow(), patience_ms);
    }

    void cleanup() { close_window(); }

    void a_bowl_is_moved_by_the_mouse_and_stays_in_the_box()
    {
        const std::string before = bytes();
        const QPointF from_m = thing(bowl()).footprint_m.center();
        drag(point_at(from_m), point_at(from_m + QPointF(0.07, 0.03)));
        const QPointF moved_m = thing(bowl()).footprint_m.center() - from_m;
        QVERIFY(std::abs(moved_m.x() - 0.07) < 0.03 && std::abs(moved_m.y() - 0.03) < 0.03);
        check_one_step(before);

        drag(point_at(from_m), QPoint(sheet()->width() - 3, 3));
        const QRectF at = thing(bowl()).footprint_m;
        QVERIFY(at.right() <= box().shell.length_m + 1e-9 && at.bottom() <= box().shell.width_m + 1e-9);
        check_one_step(before);
    }

    void what_is_moved_comes_to_rest_in_line_with_the_box_unless_alt_is_held()
    {
        const QRectF at = thing(bowl()).footprint_m;
        const double short_m = 3.0 / frame().pixels_per_m; // three pixels from the front
        const QPointF to_m = at.center() - QPointF(0.0, at.top() - short_m);
        drag(point_at(at.center()), point_at(to_m));
        QCOMPARE(thing(bowl()).footprint_m.top(), 0.0);
        steps().undo();
        drag(point_at(at.center()), point_at(to_m), Qt::AltModifier);
        QVERIFY(thing(bowl()).footprint_m.top() > 0.001);
    }

    void escape_gives_up_a_drag_and_leaves_no_step()
    {
        const std::string before = bytes();
        const QPoint from = point_at(thing(bowl()).footprint_m.center());
        QTest::mousePress(sheet(), Qt::LeftButton, {}, from);
        QTest::mouseMove(sheet(), from + QPoint(30, 0));
        QVERIFY(bytes() != before);
        QTest::keyClick(sheet(), Qt::Key_Escape);
        QCOMPARE(bytes(), before);
        QCOMPARE(steps().count(), 0);
        QTest::mouseMove(sheet(), from + QPoint(60, 0)); // the hand holds nothing any more
        QTest::mouseRelease(sheet(), Qt::LeftButton, {}, from + QPoint(60, 0));
        QCOMPARE(bytes(), before);
    }

    void arrow_keys_move_by_half_a_centimetre_and_are_one_step()
    {
        choose(bowl());
        const std::string before = bytes();
        const QRectF from = thing(bowl()).footprint_m;
        const double way = from.left() > 0.1 ? -1.0 : 1.0; // where there is room
        const int key = way < 0.0 ? Qt::Key_Left : Qt::Key_Right;
        for (int i = 0; i < 4; ++i) {
            QTest::keyClick(sheet(), Qt::Key(key));
        }
        QVERIFY(std::abs(thing(bowl()).footprint_m.left() - from.left() - way * 0.02) < 1e-9);
        check_one_step(before);
        QTest::keyClick(sheet(), Qt::Key(key), Qt::ShiftModifier);
        QVERIFY(std::abs(thing(bowl()).footprint_m.left() - from.left() - way * 0.05) < 1e-9);
        check_one_step(before);
    }

    void sizes_change_by_key_and_by_the_handle_within_the_box()
    {
        choose(bowl());
        const std::string before = bytes();
        const QRectF from = thing(bowl()).footprint_m;
        QTest::keyClick(sheet(), Qt::Key_Right, Qt::ControlModifier);
        QTest::keyClick(sheet(), Qt::Key_Up, Qt::ControlModifier);
        QVERIFY(std::abs(thing(bowl()).footprint_m.width() - from.width() - 0.005) < 1e-9);
        QVERIFY(std::abs(thing(bowl()).footprint_m.height() - from.height() - 0.005) < 1e-9);
        QVERIFY(std::abs(thing(bowl()).footprint_m.left() - from.left()) < 1e-9); // its corner stays
        check_one_step(before);

        const QPoint handle = drawing::handle_of(thing(bowl()), frame()).center().toPoint();
        drag(handle, handle + QPoint(20, -15));
        QVERIFY(thing(bowl()).footprint_m.width() > from.width());
        check_one_step(before);
        drag(handle, handle - QPoint(2000, -2000));
        QVERIFY(thing(bowl()).footprint_m.width() >= drawing::raster_m - 1e-9);
        check_one_step(before);
    }

    void turning_duplicating_and_taking_out_are_steps_of_their_own()
    {
        choose(bowl());
        const std::string before = bytes();
        const QRectF from = thing(bowl()).footprint_m;
        QTest::keyClick(sheet(), Qt::Key_R);
        QVERIFY(std::abs(thing(bowl()).footprint_m.width() - from.height()) < 1e-9);
        check_one_step(before);
        for (int i = 0; i < 4; ++i) {
            QTest::keyClick(sheet(), Qt::Key_R);
        }
        QCOMPARE(bytes(), before); // once round
        steps().clear();

        const std::size_t fittings = box().fittings.size();
        QTest::keyClick(sheet(), Qt::Key_D, Qt::ControlModifier);
        QCOMPARE(box().fittings.size(), fittings + 1);
        QVERIFY(sheet()->picture.highlighted != bowl()); // the new one, to be moved on
        QVERIFY(plan::problems_of(window_->document().plan()).empty());
        check_one_step(before);

        choose(bowl());
        const QString gone = bowl();
        QTest::keyClick(sheet(), Qt::Key_Delete);
        QCOMPARE(box().fittings.size(), fittings - 1);
        QVERIFY(!drawing::placed_thing(box(), gone));
        check_one_step(before);
    }

    void tab_goes_through_every_thing_and_on_to_the_next_control()
    {
        const auto things = drawing::placed_things(box());
        sheet()->setFocus(Qt::TabFocusReason);
        QStringList met;
        while (sheet()->hasFocus() && met.size() <= static_cast<int>(things.size())) {
            met << sheet()->picture.highlighted;
            QTest::keyClick(sheet(), Qt::Key_Tab);
        }
        QCOMPARE(met.size(), static_cast<qsizetype>(things.size()));
        for (std::size_t i = 0; i < things.size(); ++i) {
            QCOMPARE(met[static_cast<qsizetype>(i)], things[i].id);
        }
        QVERIFY(!sheet()->hasFocus());
    }

    void what_is_chosen_is_said_with_its_place()
    {
        choose(bowl());
        QVERIFY(sheet()->accessibleDescription().contains(QStringLiteral("from the left")));
        const QString before = sheet()->accessibleDescription();
        QTest::keyClick(sheet(), Qt::Key_Right, Qt::ShiftModifier);
        QTest::keyClick(sheet(), Qt::Key_Up, Qt::ShiftModifier);
        QVERIFY(sheet()->accessibleDescription() != before);
    }

    void the_menu_aligns_what_it_was_opened_on()
    {
        choose(bowl());
        const std::string before = bytes();
        QTimer::singleShot(50, this, [] {
            auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
            QVERIFY(menu != nullptr);
            menu->findChild<QAction*>(QStringLiteral("alignBack"))->trigger();
            menu->close();
        });
        const QPoint middle = sheet()->rect().center();
        QContextMenuEvent asked(QContextMenuEvent::Keyboard, middle, sheet()->mapToGlobal(middle));
        QCoreApplication::sendEvent(sheet(), &asked);
        QVERIFY(std::abs(thing(bowl()).footprint_m.bottom() - box().shell.width_m) < 1e-9);
        check_one_step(before);
    }

    void enlarged_the_drawing_is_moved_about_and_picked_as_before()
    {
        const double scale = frame().pixels_per_m;
        QTest::keyClick(sheet(), Qt::Key_Plus);
        QTest::keyClick(sheet(), Qt::Key_Plus);
        QVERIFY(frame().pixels_per_m > 1.4 * scale);
        QVERIFY(sheet()->area().contains(QRectF(sheet()->rect())));
        const QPointF middle_m = thing(bowl()).footprint_m.center();
        const QPoint at = point_at(middle_m);
        if (sheet()->rect().contains(at)) {
            QTest::mouseClick(sheet(), Qt::LeftButton, {}, at);
            QCOMPARE(sheet()->picture.highlighted, bowl());
        }
        QTest::mousePress(sheet(), Qt::MiddleButton, {}, sheet()->rect().center());
        QTest::mouseMove(sheet(), QPoint(5000, 5000));
        QTest::mouseRelease(sheet(), Qt::MiddleButton, {}, QPoint(5000, 5000));
        QCOMPARE(sheet()->area().topLeft(), QPointF(0, 0)); // no further than its edge
        QTest::keyClick(sheet(), Qt::Key_0);
        QCOMPARE(sheet()->area(), QRectF(sheet()->rect()));
        QCOMPARE(frame().pixels_per_m, scale);
    }
};

QTEST_MAIN(SheetTest)
#include "sheet_test.moc"
