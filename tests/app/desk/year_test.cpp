// The year's strip and table: the same months, moved through by key, each with its reason.
#include <QTabWidget>
#include <QTextBrowser>
#include <QTreeWidget>
#include <QtTest>

#include "app/desk/views/explanation.hpp"
#include "app/desk/views/results_panel.hpp"
#include "app/desk/views/year_strip.hpp"
#include "app/desk/views/year_view.hpp"

using namespace loam;

class YearTest : public QObject {
    Q_OBJECT

    plan::Plan plan_;
    catalog::Catalog catalog_;

    // Invented: 12 h of light from 07:00 but for a rest in January, and as many kWh as the month's number.
    static assess::EnclosureResult invented()
    {
        assess::EnclosureResult box;
        box.hemisphere_known = true;
        for (int month = 1; month <= 12; ++month) {
            for (const int day : {1, 16}) {
                assess::LightDay one{.month = month, .day = day, .sky_h = 12.0, .planned = {}, .by_the_sky = {}};
                if (month == 1) {
                    one.running_share = 0.0;
                } else {
                    one.planned = assess::LightTimes{12.0, "07:00", "19:00"};
                }
                box.light_year.push_back(one);
            }
            box.power.month_kwh[static_cast<std::size_t>(month - 1)] = {month - 0.5, double(month), month + 0.5};
        }
        return box;
    }

    words::Speaker speaker() const
    {
        return {words::Formatter(words::UnitSystem::metric, QLocale::c()), plan_, catalog_};
    }

private slots:
    void the_table_has_each_month_with_its_times_and_energy()
    {
        desk::YearView view;
        view.show_year(invented(), speaker());
        QTreeWidget* table = view.table();
        QCOMPARE(table->topLevelItemCount(), 12);
        QCOMPARE(table->topLevelItem(2)->text(1), QStringLiteral("07:00"));
        QCOMPARE(table->topLevelItem(2)->text(2), QStringLiteral("19:00"));
        QCOMPARE(table->topLevelItem(2)->text(5), QStringLiteral("3.00"));
        QCOMPARE(table->topLevelItem(0)->text(1), QStringLiteral("rest"));
        const auto why = table->topLevelItem(2)->data(0, desk::explanation_role).value<desk::Explanation>();
        QVERIFY(why.title.contains(QStringLiteral("2.50–3.50")));
        QVERIFY(why.how.contains(QStringLiteral("27.5 days")));
        QVERIFY(!why.source.isEmpty());
    }

    void keys_move_through_the_months_and_the_table_follows()
    {
        desk::YearView view;
        view.show_year(invented(), speaker());
        auto* strip = view.findChild<desk::YearStrip*>(QStringLiteral("yearStrip"));
        QVERIFY(strip != nullptr);
        QTest::keyClick(strip, Qt::Key_Right);
        QTest::keyClick(strip, Qt::Key_Right);
        QCOMPARE(strip->month(), 3);
        QCOMPARE(view.table()->indexOfTopLevelItem(view.table()->currentItem()), 2);
        QTest::keyClick(strip, Qt::Key_End);
        QTest::keyClick(strip, Qt::Key_Right); // there is no thirteenth
        QCOMPARE(strip->month(), 12);
        QTest::keyClick(strip, Qt::Key_Home);
        QCOMPARE(strip->month(), 1);
        view.table()->setCurrentItem(view.table()->topLevelItem(6));
        QCOMPARE(strip->month(), 7);
    }

    void a_month_stays_chosen_when_figures_come_anew()
    {
        desk::YearView view;
        view.show_year(invented(), speaker());
        view.findChild<desk::YearStrip*>(QStringLiteral("yearStrip"))->choose_month(5);
        view.show_year(invented(), speaker());
        QCOMPARE(view.table()->indexOfTopLevelItem(view.table()->currentItem()), 4);
    }

    void the_strip_is_told_to_those_who_do_not_see_it()
    {
        desk::YearView view;
        view.show_year(invented(), speaker());
        const auto* strip = view.findChild<desk::YearStrip*>(QStringLiteral("yearStrip"));
        QVERIFY(strip->accessibleDescription().contains(QStringLiteral("Mar: 12.0 h, 3.00 kWh")));
        QCOMPARE(strip->focusPolicy(), Qt::StrongFocus);
    }

    void a_month_chosen_out_of_sight_leaves_the_why_pane_to_the_tab_in_view()
    {
        desk::ResultsPanel panel(std::make_shared<const catalog::Catalog>(), words::UnitSystem::metric);
        auto* tabs = panel.findChild<QTabWidget*>(QStringLiteral("resultTabs"));
        auto* why = panel.findChild<QTextBrowser*>(QStringLiteral("whyText"));
        QVERIFY(tabs != nullptr && why != nullptr);
        plan::Plan plan;
        plan.enclosures.emplace_back().id = "e1";
        assess::Assessment assessment;
        assessment.enclosures.push_back(invented());
        assessment.enclosures[0].id = "e1";
        panel.show_plan(plan, QStringLiteral("e1"));
        panel.show_assessment(std::make_shared<const assess::Assessment>(assessment), false);
        QVERIFY(!why->toPlainText().contains(QStringLiteral("January")));
        tabs->setCurrentWidget(panel.findChild<QWidget*>(QStringLiteral("year")));
        QVERIFY(why->toPlainText().contains(QStringLiteral("January")));
    }

    void a_lit_column_is_painted_where_the_lamps_burn_and_none_in_a_rest()
    {
        desk::YearStrip strip;
        strip.resize(600, 400);
        strip.show_year(invented(), words::Formatter(words::UnitSystem::metric, QLocale::c()));
        strip.choose_month(12);
        const QImage picture = strip.grab().toImage();
        const auto orange_in = [&picture](double from, double to) { // shares of the width
            int count = 0;
            for (int x = int(from * picture.width()); x < int(to * picture.width()); ++x) {
                for (int y = 0; y < picture.height() / 2; ++y) {
                    const QColor at = picture.pixelColor(x, y);
                    count += at.red() > at.blue() + 60 ? 1 : 0;
                }
            }
            return count;
        };
        QVERIFY(orange_in(0.45, 0.55) > 500);
        QCOMPARE(orange_in(0.09, 0.12), 0);
    }
};

QTEST_MAIN(YearTest)
#include "year_test.moc"
