// Humidity over the floor on the sheet, and under the pointer.
#include <QtTest>

#include "app/drawing/probe.hpp"
#include "app/drawing/shapes.hpp"
#include "tests/app/desk/shown_drawing.hpp"
#include "tests/app/drawn_box.hpp"

using namespace loam;

namespace {

plan::Enclosure box()
{
    return test::bedded_box();
}

// The lower air at 24 degC, over a floor of 20 degC at the left to 30 at the right, where it is drier by a tenth.
assess::HeatCase heat_case(const std::string& id, double humidity)
{
    assess::HeatCase heat = test::on_drawn_floor(id);
    heat.detail.converged = true;
    heat.detail.lower_air_c = exactly(24.0);
    heat.detail.air_humidity = exactly(humidity);
    climate::FloorField& floor = heat.detail.floor;
    for (std::size_t cell = 0; cell < 50; ++cell) {
        const double here_c = 20.5 + static_cast<double>(cell % 10);
        floor.surface_c.push_back(here_c + 1.0);
        floor.ground_c.push_back(here_c);
        floor.operative_c.push_back(here_c);
        floor.beam_w_m2.push_back(0.0);
        floor.humidity.push_back(humidity + 0.01 * (4.5 - static_cast<double>(cell % 10)));
    }
    return heat;
}

assess::EnclosureResult result()
{
    assess::EnclosureResult enclosure;
    enclosure.id = "e1";
    enclosure.heat = {heat_case("winter-day", 0.6), heat_case("summer-day", 0.8)};
    return enclosure;
}

drawing::Picture picture_of(const assess::EnclosureResult& enclosure)
{
    return test::picture_of(box(), enclosure, drawing::Layer::moisture);
}

int differing(const QImage& one, const QImage& other, const QRectF& within)
{
    int count = 0;
    for (int y = static_cast<int>(within.top()); y < static_cast<int>(within.bottom()); ++y) {
        for (int x = static_cast<int>(within.left()); x < static_cast<int>(within.right()); ++x) {
            count += one.pixel(x, y) != other.pixel(x, y) ? 1 : 0;
        }
    }
    return count;
}

} // namespace

class MoistureLayerTest : public QObject {
    Q_OBJECT

private slots:
    // Source of the dew point of 24 degC and 60 %: npm package psychrolib 1.1.1 (15.763 degC).
    void under_the_pointer_stands_the_humidity_of_that_place()
    {
        const assess::EnclosureResult enclosure = result();
        const drawing::Picture damp = picture_of(enclosure);
        const QRectF area(0, 0, 900, 400);
        const drawing::Frame frame = drawing::lay_out(damp.enclosure, area, damp.font);
        QCOMPARE(drawing::probe_lines(drawing::on_plan(frame, 0.2, 0.25), area, damp),
                 QStringList({QStringLiteral("humidity at ground level, shaded  63%"),
                              QStringLiteral("temperature there  22 °C"),
                              QStringLiteral("dew point of the lower air  15.8 °C")}));
        QCOMPARE(drawing::probe_lines(drawing::on_section(frame, 0.5, 0.2), area, damp).first(),
                 QStringLiteral("humidity of the lower air  60%"));
        QVERIFY(drawing::probe_lines(drawing::on_section(frame, 0.5, 0.05), area, damp).isEmpty()); // bed
        QVERIFY(drawing::probe_lines(drawing::on_section(frame, 0.5, 0.45), area, damp).isEmpty()); // upper air
    }

    void drops_stand_along_the_wall_that_runs_wet()
    {
        assess::EnclosureResult enclosure = result();
        climate::CaseResult& detail = enclosure.heat[0].detail;
        detail.panels = {{.plane = climate::Plane::left,
                          .columns = 1,
                          .rows = 1,
                          .along_m = 0.5,
                          .up_m = 0.4,
                          .from_z_m = 0.1,
                          .across_m = 0.0,
                          .inside_c = {13.0},
                          .outside_c = {12.0},
                          .closed = {1}}};
        const QImage dry = test::painted(picture_of(enclosure));
        detail.condensation = true;
        const QImage wet = test::painted(picture_of(enclosure));
        const drawing::Frame frame = drawing::lay_out(box(), QRectF(dry.rect()), QFont());
        const QRectF wall(frame.plan.left(), frame.plan.top(), 14.0, frame.plan.height());
        QVERIFY(differing(dry, wet, wall) > 100);
        QCOMPARE(differing(dry, wet, frame.plan.adjusted(16.0, 0, 0, 0)), 0);
        QCOMPARE(differing(dry, wet, frame.section), 0);
    }

    void the_keyboard_chooses_it_and_it_follows_the_case()
    {
        test::ShownDrawing shown(box(), result());
        QComboBox* layers = shown.layers;
        QComboBox* cases = shown.cases;
        layers->setFocus();
        QTest::keyClick(layers, Qt::Key_End);
        QCOMPARE(layers->currentText(), QStringLiteral("humidity"));
        QVERIFY(cases->isEnabled());
        const QImage winter = shown.image();
        cases->setFocus();
        QTest::keyClick(cases, Qt::Key_Down);
        QVERIFY(shown.image() != winter);
    }
};

QTEST_MAIN(MoistureLayerTest)
#include "moisture_layer_test.moc"
