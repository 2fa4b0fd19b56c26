// The view of days and drills, on courses made by hand.
#include <QComboBox>
#include <QTextBrowser>
#include <QtCharts/QAreaSeries>
#include <QtCharts/QLineSeries>
#include <QtCharts/QValueAxis>
#include <QtTest>

#include "app/desk/views/course_chart.hpp"
#include "app/desk/views/course_targets.hpp"
#include "app/desk/views/courses_view.hpp"
#include "app/desk/views/humidity_strip.hpp"
#include "tests/app/invented_course.hpp"

using namespace loam;

namespace {

assess::HeatCase heat_case(const std::string& id, double min_c, double max_c)
{
    assess::HeatCase heat;
    heat.id = id;
    for (const assess::Zone zone : {assess::Zone::warm, assess::Zone::cool}) {
        assess::ZoneResult& result = heat.zones.emplace_back();
        result.zone = zone;
        result.measure = climate::Measure::ground;
        result.target_c.min = zone == assess::Zone::cool || id == "winter-night" ? min_c : min_c + 5.0;
        result.target_c.max = max_c;
    }
    return heat;
}

assess::EnclosureResult enclosure_with_courses()
{
    assess::EnclosureResult enclosure;
    enclosure.id = "e1";
    enclosure.heat = {heat_case("winter-day", 22.0, 30.0), heat_case("winter-night", 18.0, 22.0)};
    enclosure.days = {invented_course("winter"), invented_course("summer")};
    enclosure.warm_up = invented_course("warm-up");
    enclosure.drills = {invented_course("power-cut")};
    enclosure.drills[0].limits.push_back({.species = "s",
                                          .direction = Direction::below,
                                          .limit_c = 10.0,
                                          .earliest_h = 5.0,
                                          .likely_h = 8.0,
                                          .source = {}});
    return enclosure;
}

assess::HumidityCase humidity_case(const std::string& id, double min, double max)
{
    assess::HumidityCase humidity;
    humidity.id = id;
    humidity.target = {min, max, {}};
    return humidity;
}

// Dry at 40 %, and damp at 80 % from the second point on.
assess::CourseResult damp_course(const std::string& id)
{
    assess::CourseResult course = invented_course(id);
    for (climate::CoursePoint& point : course.course.points) {
        point.humidity = point.hour < 6.0 ? 0.4 : 0.8;
    }
    course.humidity_spread = {-0.1, 0.0, 0.1};
    return course;
}

int differing(const QImage& one, const QImage& other, const QRect& within)
{
    int count = 0;
    for (int y = within.top(); y <= within.bottom(); ++y) {
        for (int x = within.left(); x <= within.right(); ++x) {
            count += one.pixel(x, y) != other.pixel(x, y) ? 1 : 0;
        }
    }
    return count;
}

} // namespace

class CoursesTest : public QObject {
    Q_OBJECT

    plan::Plan plan_;
    catalog::Catalog catalog_;

    words::Speaker speaker(words::UnitSystem units = words::UnitSystem::metric) const
    {
        return words::Speaker(words::Formatter(units, QLocale::c()), plan_, catalog_);
    }
    static QList<QLineSeries*> lines_of(const QChart& chart)
    {
        QList<QLineSeries*> lines;
        for (QAbstractSeries* series : chart.series()) {
            if (auto* line = qobject_cast<QLineSeries*>(series)) {
                lines << line;
            }
        }
        return lines;
    }

private slots:
    void the_chooser_names_days_warming_up_and_drills()
    {
        desk::CoursesView view;
        auto* chooser = view.findChild<QComboBox*>(QStringLiteral("courseChooser"));
        QVERIFY(!chooser->isEnabled());
        view.show_courses(enclosure_with_courses(), true, speaker());
        QStringList names;
        for (int row = 0; row < chooser->count(); ++row) {
            names << chooser->itemText(row);
        }
        QCOMPARE(names, QStringList({QStringLiteral("Winter day"), QStringLiteral("Summer day"),
                                     QStringLiteral("Warming up"), QStringLiteral("Power cut")}));
        auto* text = view.findChild<QTextBrowser*>(QStringLiteral("courseText"));
        QVERIFY(text->toPlainText().contains(QStringLiteral("on such a day")));
        chooser->setCurrentIndex(3);
        QVERIFY(text->toPlainText().contains(QStringLiteral("after 5 h at the earliest")));
        QVERIFY(text->toPlainText().contains(QStringLiteral("vet")));
        // The choice stays where a new result has it.
        view.show_courses(enclosure_with_courses(), true, speaker());
        QCOMPARE(chooser->currentText(), QStringLiteral("Power cut"));
        QVERIFY(view.explanation().has_value());
    }

    void courses_that_are_still_to_come_leave_the_last_ones_in_view()
    {
        desk::CoursesView view;
        view.show_courses(enclosure_with_courses(), true, speaker());
        auto* chooser = view.findChild<QComboBox*>(QStringLiteral("courseChooser"));
        auto* waiting = view.findChild<QWidget*>(QStringLiteral("courseWaiting"));
        QVERIFY(waiting->isHidden());
        assess::EnclosureResult early;
        early.id = "e1";
        view.show_courses(early, false, speaker());
        QCOMPARE(chooser->count(), 4);
        QVERIFY(!waiting->isHidden());
        view.show_courses(early, true, speaker()); // there are none
        QCOMPARE(chooser->count(), 0);
        QVERIFY(waiting->isHidden());
        view.show_courses(enclosure_with_courses(), true, speaker());
        early.id = "e2"; // those of another box are not its own
        view.show_courses(early, false, speaker());
        QCOMPARE(chooser->count(), 0);
    }

    void each_line_is_in_the_readers_unit_and_has_a_stroke_of_its_own()
    {
        desk::CourseChart chart;
        const assess::CourseResult course = invented_course("winter");
        chart.show_course(course, {}, words::Formatter(words::UnitSystem::us, QLocale::c()));
        const QList<QLineSeries*> lines = lines_of(*chart.chart());
        QCOMPARE(lines.size(), 4);
        QSet<int> strokes;
        for (QLineSeries* line : lines) {
            strokes << static_cast<int>(line->pen().style());
            QCOMPARE(line->count(), 5);
        }
        QCOMPARE(strokes.size(), 4);
        QCOMPARE(lines[1]->at(4).y(), 66.2); // 19 degC, by the definition of the scale
        // Low and high of the cool side at 6 h: 25 degC less and more 1 K.
        auto* band = qobject_cast<QAreaSeries*>(chart.chart()->series().at(1));
        QVERIFY(band != nullptr);
        QCOMPARE(band->lowerSeries()->at(1).y(), 24.0 * 1.8 + 32.0);
        QCOMPARE(band->upperSeries()->at(1).y(), 26.0 * 1.8 + 32.0);
    }

    void the_axis_holds_every_range_and_target_and_a_limit_that_is_near()
    {
        desk::CourseChart chart;
        assess::CourseResult course = invented_course("power-cut");
        course.limits = enclosure_with_courses().drills[0].limits; // 10 degC; the lowest in the course is 18
        chart.show_course(course, {}, words::Formatter(words::UnitSystem::metric, QLocale::c()));
        const auto* degrees = qobject_cast<QValueAxis*>(chart.chart()->axes(Qt::Vertical).front());
        QVERIFY(degrees->min() <= 10.0);
        QVERIFY(degrees->max() >= 45.0); // basking, 41 degC, and the 4 K above it
        course.limits[0].limit_c = -20.0;
        chart.show_course(course, {}, words::Formatter(words::UnitSystem::metric, QLocale::c()));
        degrees = qobject_cast<QValueAxis*>(chart.chart()->axes(Qt::Vertical).front());
        QVERIFY(degrees->min() > 0.0);
    }

    void targets_are_the_days_while_lit_and_the_nights_in_the_dark()
    {
        const std::vector<desk::TargetBand> bands =
            desk::target_bands(enclosure_with_courses(), invented_course("winter"));
        QCOMPARE(bands.size(), std::size_t(3));
        for (const desk::TargetBand& band : bands) {
            const bool night = band.when.from_h >= 12.0;
            QCOMPARE(band.when, night ? (words::Hours{12.0, 24.0}) : (words::Hours{0.0, 12.0}));
            QCOMPARE(*band.target_c.max, night ? 22.0 : 30.0);
            QCOMPARE(band.every_zone, night); // one band for both sides
        }
        // A fault may begin at any hour: in the dark it has no target.
        QCOMPARE(desk::target_bands(enclosure_with_courses(), invented_course("power-cut")).size(), std::size_t(2));
    }

    void the_humidity_asked_for_is_the_days_and_the_nights_and_of_a_fault_the_seasons()
    {
        assess::EnclosureResult enclosure = enclosure_with_courses();
        enclosure.humidity = {humidity_case("winter-day", 0.5, 0.7), humidity_case("winter-night", 0.6, 0.9)};
        const auto day = desk::humidity_bands(enclosure, damp_course("winter"));
        QCOMPARE(day.size(), std::size_t(2));
        QCOMPARE(day[0].when, (words::Hours{0.0, 12.0}));
        QCOMPARE(*day[0].target.max, 0.7);
        QCOMPARE(day[1].when, (words::Hours{12.0, 24.0}));
        QCOMPARE(*day[1].target.min, 0.6);
        const auto fault = desk::humidity_bands(enclosure, damp_course("power-cut"));
        QCOMPARE(fault.size(), std::size_t(1));
        QCOMPARE(fault[0].when, (words::Hours{0.0, 24.0}));
        QCOMPARE(*fault[0].target.min, 0.5);
    }

    void the_strip_shows_the_line_its_target_and_each_misting()
    {
        desk::HumidityStrip strip;
        strip.resize(500, 120);
        strip.align(50.0, 450.0);
        const auto picture = [&](const assess::CourseResult& course, const std::vector<desk::HumidityBand>& targets) {
            strip.show_course(course, targets, words::Formatter(words::UnitSystem::metric, QLocale::c()));
            return strip.grab().toImage();
        };
        assess::CourseResult course = damp_course("winter");
        const std::vector<desk::HumidityBand> target{{{0.5, 0.7, {}}, {0.0, 24.0}}};
        const QImage plain = picture(course, target);
        course.course.misted_h = {6.0}; // a quarter of the way from 50 to 450
        const QImage misted = picture(course, target);
        QVERIFY(differing(plain, misted, QRect(144, 0, 13, 120)) > 40);
        QCOMPARE(differing(plain, misted, QRect(0, 0, 140, 120)), 0);
        QCOMPARE(differing(plain, misted, QRect(160, 0, 340, 120)), 0);
        course = damp_course("winter");
        QVERIFY(differing(plain, picture(course, {}), QRect(50, 0, 400, 120)) > 400); // the hatching
        course.course.points[2].humidity = 0.5;
        const QImage drier = picture(course, target);
        QVERIFY(differing(plain, drier, QRect(150, 0, 200, 120)) > 100);
        QCOMPARE(differing(plain, drier, QRect(52, 30, 90, 80)), 0);
    }

    void humidity_and_temperatures_run_over_the_same_hours()
    {
        desk::CoursesView view;
        view.resize(700, 420);
        view.show();
        QVERIFY(QTest::qWaitForWindowExposed(&view));
        auto* chart = view.findChild<desk::CourseChart*>();
        auto* strip = view.findChild<desk::HumidityStrip*>();
        double left = 0.0;
        double right = 0.0;
        connect(chart, &desk::CourseChart::plotMoved, this, [&](double from, double to) {
            left = from;
            right = to;
        });
        assess::EnclosureResult enclosure = enclosure_with_courses();
        enclosure.days = {damp_course("winter")};
        view.show_courses(enclosure, true, speaker());
        QTRY_VERIFY(right > left + 100.0);
        QCOMPARE(chart->mapTo(&view, QPoint(0, 0)).x(), strip->mapTo(&view, QPoint(0, 0)).x());
        const auto run_alike = [&] {
            const QRectF plot = chart->chart()->plotArea();
            const auto x_of = [&](const QPointF& point) {
                return chart->mapFromScene(chart->chart()->mapToScene(point)).x();
            };
            return std::abs(strip->plot().left() - x_of(plot.topLeft())) <= 1.0 &&
                   std::abs(strip->plot().right() - x_of(plot.topRight())) <= 1.0;
        };
        QTRY_VERIFY(run_alike());
        view.resize(900, 420);
        QTRY_VERIFY(run_alike());
        QVERIFY(strip->isVisible());
        QVERIFY(strip->geometry().top() >= chart->geometry().bottom());
        auto* text = view.findChild<QTextBrowser*>(QStringLiteral("courseText"));
        QVERIFY(text->toPlainText().contains(QStringLiteral(
            "Humidity at ground level on the cool side, likely: lowest 40% at the beginning, highest 80% after 6 h.")));
    }
};

QTEST_MAIN(CoursesTest)
#include "courses_test.moc"
