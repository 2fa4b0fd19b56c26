// The UV map on the sheet, and under the pointer.
#include <QtTest>

#include "app/drawing/probe.hpp"
#include "app/drawing/shapes.hpp"
#include "tests/app/desk/shown_drawing.hpp"
#include "tests/app/drawn_box.hpp"

using namespace loam;

namespace {

plan::Enclosure box()
{
    plan::Enclosure enclosure = test::drawn_box();
    plan::Fitting hide;
    hide.id = "f1";
    hide.kind = plan::FittingKind::hide;
    hide.x_m = 0.2;
    hide.y_m = 0.2;
    hide.length_m = hide.width_m = 0.2;
    enclosure.fittings = {hide};
    return enclosure;
}

// In cells of 0.1 m: an index that rises to the right, not known in the rightmost column.
assess::EnclosureResult result()
{
    assess::EnclosureResult enclosure;
    enclosure.id = "e1";
    light::UvMap& map = enclosure.uv.map;
    map.grid = {10, 5, 0.1, 0.1};
    for (std::size_t cell = 0; cell < map.grid.cells(); ++cell) {
        const double likely = 5.0 * map.grid.x_m(cell) - 0.25;
        map.uvi.push_back(cell % 10 != 9 ? std::optional(Range{0.9 * likely, likely, 1.1 * likely}) : std::nullopt);
        map.at_most.push_back(5.0);
        map.back_m.push_back(0.15);
    }
    enclosure.uv.uvi_at_basking = Range{2.0, 2.5, 3.0};
    enclosure.uv.basking.back = {0.55, 0.25, 0.15};
    return enclosure;
}

drawing::Picture picture_of(const assess::EnclosureResult& enclosure)
{
    return test::picture_of(box(), enclosure, drawing::Layer::uv);
}

} // namespace

class UvLayerTest : public QObject {
    Q_OBJECT

private slots:
    void under_the_pointer_stands_the_index_with_its_range()
    {
        const assess::EnclosureResult enclosure = result();
        const drawing::Picture uv = picture_of(enclosure);
        const QRectF area(0, 0, 900, 400);
        const drawing::Frame frame = drawing::lay_out(uv.enclosure, area, uv.font);
        const auto said = [&](double x_m, double y_m) {
            return drawing::probe_lines(drawing::on_plan(frame, x_m, y_m), area, uv);
        };
        QCOMPARE(said(0.55, 0.45), QStringList({QStringLiteral("UV index  2.3–2.8 (likely 2.5)"),
                                                QStringLiteral("at a back, over the base  15 cm")}));
        QCOMPARE(said(0.95, 0.25).first(), QStringLiteral("UV index  not known"));
        QCOMPARE(said(0.3, 0.3).last(), QStringLiteral("inside the hide  none"));
        QVERIFY(drawing::probe_lines(frame.section.center(), area, uv).isEmpty());
    }

    void what_is_not_known_is_hatched_in_its_own_place_only()
    {
        assess::EnclosureResult enclosure = result();
        const drawing::Picture uv = picture_of(enclosure);
        const QImage before = test::painted(uv);
        for (std::size_t cell = 9; cell < 50; cell += 10) {
            enclosure.uv.map.uvi[cell] = exactly(0.0);
        }
        const QImage after = test::painted(uv);
        const drawing::Frame frame = drawing::lay_out(uv.enclosure, QRectF(before.rect()), uv.font);
        const int y = static_cast<int>(drawing::on_plan(frame, 0.0, 0.45).y());
        int changed = 0;
        for (int x = static_cast<int>(frame.plan.left()) + 2; x < static_cast<int>(frame.plan.right()) - 2; ++x) {
            const double x_m = (x - frame.plan.left()) / frame.pixels_per_m;
            const bool differs = before.pixel(x, y) != after.pixel(x, y);
            changed += differs && x_m > 0.9 ? 1 : 0;
            QVERIFY(x_m > 0.75 || !differs);
        }
        QVERIFY(changed > 5);
    }

    void the_keyboard_chooses_what_is_laid_over_the_floor()
    {
        test::ShownDrawing shown(box(), result());
        QComboBox* layers = shown.layers;
        QComboBox* cases = shown.cases;
        QVERIFY(layers->focusPolicy() & Qt::TabFocus);
        QVERIFY(cases->isEnabled());
        const QImage heat = shown.image();
        layers->setFocus();
        QTest::keyClick(layers, Qt::Key_Down);
        QCOMPARE(layers->currentText(), QStringLiteral("UV index"));
        QVERIFY(shown.image() != heat);
        QVERIFY(!cases->isEnabled()); // UV is alike in every season
        QTest::keyClick(layers, Qt::Key_Up);
        QCOMPARE(shown.image(), heat);
    }
};

QTEST_MAIN(UvLayerTest)
#include "uv_layer_test.moc"
