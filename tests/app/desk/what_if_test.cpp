// Trying out cover and misting in the window.
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QSlider>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QUndoStack>
#include <QtTest>

#include "app/desk/document/plan_document.hpp"
#include "app/desk/session/settings.hpp"
#include "app/desk/views/reading_track.hpp"
#include "app/desk/views/what_if_view.hpp"
#include "app/desk/window.hpp"
#include "app/files/guidance.hpp"

using namespace loam;

namespace {

assess::TrialRoom room()
{
    return {.covered_share = 0.5, .most_covered_share = 0.62, .mesh = true, .misting_l_per_day = 0.2};
}

words::Formatter metric()
{
    return words::Formatter(words::UnitSystem::metric, QLocale::c());
}

assess::EnclosureResult result()
{
    assess::EnclosureResult enclosure;
    enclosure.id = "e1";
    for (const char* id : {"winter-day", "summer-day"}) {
        assess::HumidityCase& humidity = enclosure.humidity.emplace_back();
        humidity.id = id;
        humidity.relative_humidity = Range{0.4, 0.5, 0.6};
        humidity.target = {0.6, 0.8, {}};
        assess::HeatCase& heat = enclosure.heat.emplace_back();
        heat.id = id;
        heat.known = true;
        heat.detail.warm.ground_c = {26.0, 28.0, 30.0};
        heat.detail.cool.ground_c = {22.0, 23.0, 24.0};
    }
    return enclosure;
}

desk::SharedTrialAnswer answer(const assess::Trial& trial)
{
    assess::Tried tried;
    for (const char* id : {"winter-day", "summer-day"}) {
        tried.now.push_back({id, {0.4, 0.5, 0.6}, {26.0, 28.0, 30.0}, {22.0, 23.0, 24.0}, false});
        tried.then.push_back({id, {0.6, 0.7, 0.8}, {25.0, 27.0, 29.0}, {21.5, 22.5, 23.5}, false});
    }
    return std::make_shared<const desk::TrialAnswer>(desk::TrialAnswer{"e1", trial, tried});
}

} // namespace

Q_DECLARE_METATYPE(loam::assess::Trial)

class WhatIfTest : public QObject {
    Q_OBJECT

private slots:
    void the_keyboard_moves_a_slider_and_asks_for_what_it_shows()
    {
        desk::WhatIfView view;
        view.show_room("e1", room(), metric());
        view.show();
        assess::Trial wanted;
        int asked = 0;
        connect(&view, &desk::WhatIfView::wanted, this, [&](const std::string& enclosure, const assess::Trial& trial) {
            QCOMPARE(enclosure, std::string("e1"));
            wanted = trial;
            ++asked;
        });
        auto* cover = view.findChild<QSlider*>(QStringLiteral("coverSlider"));
        auto* misting = view.findChild<QSlider*>(QStringLiteral("mistingSlider"));
        QVERIFY(cover->focusPolicy() & Qt::TabFocus);
        QVERIFY(!cover->accessibleName().isEmpty() && !misting->accessibleName().isEmpty());
        QTest::keyClick(cover, Qt::Key_Right);
        QCOMPARE(asked, 1);
        QCOMPARE(*wanted.covered_share, 0.55);
        QVERIFY(!wanted.misting_l_per_day);
        QTest::keyClick(cover, Qt::Key_End); // no further than a cover may go
        QCOMPARE(*wanted.covered_share, 0.62);
        QTest::keyClick(misting, Qt::Key_Right);
        QCOMPARE(*wanted.misting_l_per_day, 0.25);
        QCOMPARE(view.findChild<QLabel*>(QStringLiteral("coverFigure"))->text(), QStringLiteral("50% → 62%"));
        // Back where the plan stands nothing is tried.
        QTest::keyClick(misting, Qt::Key_Left);
        QVERIFY(!view.trial().misting_l_per_day);
    }

    void each_reading_goes_from_the_plans_to_the_trials_with_its_verdict()
    {
        desk::WhatIfView view;
        const assess::EnclosureResult enclosure = result();
        view.show_room("e1", room(), metric());
        view.show_result(&enclosure);
        auto* damp = view.findChild<desk::ReadingTrack*>(QStringLiteral("track-winter-day-0"));
        auto* warm = view.findChild<desk::ReadingTrack*>(QStringLiteral("track-summer-day-1"));
        QCOMPARE(damp->accessibleName(), QStringLiteral("Humidity, winter day, ground of the cool side"));
        QCOMPARE(damp->accessibleDescription(), QStringLiteral("50%; target 60–80%; falls short (too dry)"));
        view.show_answer(answer({0.6, {}})); // of a trial that is over: nothing is tried
        QCOMPARE(damp->accessibleDescription(), QStringLiteral("50%; target 60–80%; falls short (too dry)"));
        QTest::keyClick(view.findChild<QSlider*>(QStringLiteral("coverSlider")), Qt::Key_Right);
        view.show_answer(answer(view.trial()));
        QCOMPARE(damp->accessibleDescription(), QStringLiteral("50% → 70%; target 60–80%; fits"));
        QVERIFY(warm->accessibleDescription().startsWith(QStringLiteral("28 °C → 27 °C")));
        QTest::mouseClick(view.findChild<QPushButton*>(QStringLiteral("dropTrial")), Qt::LeftButton);
        QCOMPARE(view.trial(), assess::Trial{});
        QCOMPARE(damp->accessibleDescription(), QStringLiteral("50%; target 60–80%; falls short (too dry)"));
        QVERIFY(!view.findChild<QPushButton*>(QStringLiteral("takeTrial"))->isEnabled());
    }

    void what_cant_be_covered_says_why()
    {
        desk::WhatIfView view;
        auto closed = room();
        closed.mesh = false;
        closed.most_covered_share = 0.0;
        view.show_room("e1", closed, metric());
        QVERIFY(!view.findChild<QSlider*>(QStringLiteral("coverSlider"))->isEnabled());
        QVERIFY(view.findChild<QSlider*>(QStringLiteral("mistingSlider"))->isEnabled());
        QVERIFY(view.findChild<QLabel*>(QStringLiteral("trialNote"))->text().contains(QStringLiteral("no mesh")));
        view.show_room("e1", std::nullopt, metric());
        QVERIFY(!view.findChild<QSlider*>(QStringLiteral("mistingSlider"))->isEnabled());
    }

    void in_the_window_a_trial_is_worked_out_taken_as_one_step_and_undone()
    {
        QTemporaryDir home;
        qputenv("XDG_CONFIG_HOME", home.path().toUtf8());
        desk::Settings settings;
        settings.set_units(words::UnitSystem::metric);
        const auto catalog = std::make_shared<const catalog::Catalog>(files::load_guidance(QString()).catalog);
        desk::Window window(catalog, settings, home.path());
        window.show();
        window.show_example();
        QTRY_VERIFY_WITH_TIMEOUT(window.up_to_date(), 30000);
        auto* view = window.findChild<desk::WhatIfView*>(QStringLiteral("whatIf"));
        window.findChild<QTabWidget*>(QStringLiteral("resultTabs"))->setCurrentWidget(view);
        auto* damp = window.findChild<desk::ReadingTrack*>(QStringLiteral("track-winter-day-0"));
        const QString planned = damp->accessibleDescription();
        const plan::Plan before = window.document().plan();
        const int steps = window.document().undo_stack().count();
        auto* misting = window.findChild<QSlider*>(QStringLiteral("mistingSlider"));
        misting->setFocus();
        for (int i = 0; i < 4; ++i) {
            QTest::keyClick(misting, Qt::Key_Right);
        }
        QTRY_VERIFY_WITH_TIMEOUT(damp->accessibleDescription().contains(QStringLiteral("→")), 30000);
        QCOMPARE(window.document().plan(), before); // nothing is changed yet
        const double tried_l = *view->trial().misting_l_per_day;
        QTest::mouseClick(window.findChild<QPushButton*>(QStringLiteral("takeTrial")), Qt::LeftButton);
        QCOMPARE(window.document().undo_stack().count(), steps + 1);
        QCOMPARE(*window.document().plan().enclosures.front().moisture.misting_l_per_day, tried_l);
        QCOMPARE(view->trial(), assess::Trial{});
        QTRY_VERIFY_WITH_TIMEOUT(window.up_to_date(), 30000);
        QVERIFY(damp->accessibleDescription() != planned);
        window.document().undo_stack().undo();
        QCOMPARE(window.document().plan(), before);
    }
};

QTEST_MAIN(WhatIfTest)
#include "what_if_test.moc"
