// The probe that follows the mouse over the drawing.
#include <QtTest>

#include "app/drawing/probe.hpp"
#include "tests/app/desk/shown_drawing.hpp"
#include "tests/app/drawn_box.hpp"

using namespace loam;

namespace {

plan::Enclosure box()
{
    return test::bedded_box();
}

// Warmer to the right, 25 degC at ground level in the middle.
assess::EnclosureResult result()
{
    assess::EnclosureResult enclosure;
    enclosure.id = "e1";
    assess::HeatCase& heat = enclosure.heat.emplace_back(test::on_drawn_floor("winter-day"));
    climate::FloorField& floor = heat.detail.floor;
    for (std::size_t i = 0; i < 50; ++i) {
        const double x_m = (static_cast<double>(i % 10) + 0.5) * 0.1;
        floor.ground_c.push_back(20.0 + 10.0 * x_m);
        floor.surface_c.push_back(22.0 + 10.0 * x_m);
        floor.operative_c.push_back(21.0 + 10.0 * x_m);
        floor.humidity.push_back(0.5);
        floor.beam_w_m2.push_back(0.0);
    }
    climate::SectionField& section = heat.detail.section;
    section.nx = 10;
    section.nz = 2;
    section.z_m = {0.025, 0.075};
    section.temperature_c.assign(20, 28.0);
    section.lower_air_c = 24.0;
    section.upper_air_c = 26.0;
    return enclosure;
}

} // namespace

class ProbeTest : public QObject {
    Q_OBJECT

    assess::EnclosureResult result_ = result();
    QRectF area_{0, 0, 900, 400};

    drawing::Picture picture(words::UnitSystem units = words::UnitSystem::metric) const
    {
        drawing::Picture made = test::picture_of(box(), result_);
        made.formatter = words::Formatter(units, QLocale::c());
        return made;
    }

private slots:
    void on_the_floor_it_tells_surface_ground_level_and_back()
    {
        const drawing::Frame frame = drawing::lay_out(box(), area_, QFont());
        QCOMPARE(drawing::probe_lines(frame.plan.center(), area_, picture()),
                 QStringList({QStringLiteral("surface, by infrared  27 °C"),
                              QStringLiteral("ground level, shaded thermometer  25 °C"),
                              QStringLiteral("felt by the back (operative)  26 °C")}));
        QCOMPARE(drawing::probe_lines(frame.plan.center(), area_, picture(words::UnitSystem::us)).at(1),
                 QStringLiteral("ground level, shaded thermometer  77 °F")); // by definition of the scale
    }

    void in_the_section_it_tells_the_bed_or_the_air()
    {
        const drawing::Frame frame = drawing::lay_out(box(), area_, QFont());
        const auto said = [&](double z_m) {
            return drawing::probe_lines({frame.section.center().x(), frame.section.bottom() - z_m * frame.pixels_per_m},
                                        area_, picture());
        };
        QCOMPARE(said(0.05), QStringList(QStringLiteral("bed  28 °C")));
        QCOMPARE(said(0.15), QStringList(QStringLiteral("lower air  24 °C")));
        QCOMPARE(said(0.40), QStringList(QStringLiteral("upper air  26 °C")));
        QVERIFY(drawing::probe_lines(QPointF(1, 1), area_, picture()).isEmpty());
    }

    void an_older_result_is_read_and_marked()
    {
        drawing::Picture stale = picture();
        stale.stale = true;
        const drawing::Frame frame = drawing::lay_out(box(), area_, QFont());
        const QStringList said = drawing::probe_lines(frame.plan.center(), area_, stale);
        QCOMPARE(said.size(), 4);
        QCOMPARE(said.last(), QStringLiteral("from before the last change"));
        stale.result = nullptr;
        QVERIFY(drawing::probe_lines(frame.plan.center(), area_, stale).isEmpty());
    }

    void the_readout_follows_the_mouse_and_goes_with_it()
    {
        test::ShownDrawing shown(box(), result_);
        QWidget* sheet = shown.sheet;
        const QImage before = shown.image();
        const QRectF area = sheet->rect();
        const QPoint point = drawing::lay_out(box(), area, sheet->font()).plan.center().toPoint();
        QTest::mouseMove(sheet, point);
        QTRY_VERIFY(shown.image() != before);
        QEvent leave(QEvent::Leave);
        QCoreApplication::sendEvent(sheet, &leave);
        QCOMPARE(shown.image(), before);
    }
};

QTEST_MAIN(ProbeTest)
#include "probe_test.moc"
