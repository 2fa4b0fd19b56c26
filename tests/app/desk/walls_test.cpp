// Walls and top in the drawing: chosen by key, painted, and read under the pointer.
#include <QCheckBox>
#include <QtTest>

#include "app/drawing/probe.hpp"
#include "app/drawing/shapes.hpp"
#include "app/drawing/wall_layer.hpp"
#include "tests/app/desk/shown_drawing.hpp"
#include "tests/app/drawn_box.hpp"

using namespace loam;

namespace {

plan::Enclosure box()
{
    return test::bedded_box(0.4);
}

// The back wall warms to the right, from 20 degC on; half of the top is closed.
assess::EnclosureResult result()
{
    assess::EnclosureResult enclosure;
    enclosure.id = "e1";
    assess::HeatCase& heat = enclosure.heat.emplace_back(test::on_drawn_floor("winter-day"));
    climate::FloorField& floor = heat.detail.floor;
    for (auto* values : {&floor.ground_c, &floor.surface_c, &floor.operative_c, &floor.humidity, &floor.beam_w_m2}) {
        values->assign(50, 24.0);
    }
    climate::PanelField back;
    back.plane = climate::Plane::back;
    back.columns = 10;
    back.rows = 3;
    back.along_m = back.up_m = 0.1;
    back.from_z_m = 0.1;
    back.across_m = 0.5;
    climate::PanelField top = back;
    top.plane = climate::Plane::ceiling;
    top.rows = 5;
    top.from_z_m = 0.4;
    for (climate::PanelField* panel : {&back, &top}) {
        for (std::size_t cell = 0; cell < panel->columns * panel->rows; ++cell) {
            panel->inside_c.push_back(20.0 + static_cast<double>(cell % 10));
            panel->outside_c.push_back(18.0);
            panel->closed.push_back(panel == &back || cell % 10 < 5 ? 1 : 0);
        }
    }
    heat.detail.panels = {back, top};
    return enclosure;
}

drawing::Picture picture_of(const assess::EnclosureResult& enclosure)
{
    drawing::Picture made = test::picture_of(box(), enclosure);
    made.unfolded = true;
    return made;
}

} // namespace

class WallsTest : public QObject {
    Q_OBJECT

private slots:
    void walls_and_top_stand_around_the_floor_to_its_scale_on_the_page_and_clear_of_one_another()
    {
        const assess::EnclosureResult enclosure = result();
        const drawing::Picture walls = picture_of(enclosure);
        for (const QSizeF& page : {QSizeF(831, 354), QSizeF(1470, 500), QSizeF(500, 900)}) {
            const QRectF area(QPointF(0, 0), page);
            const drawing::Frame frame = drawing::lay_out(walls, area);
            QVERIFY(frame.unfolded);
            const double scale = frame.pixels_per_m;
            QVERIFY(std::abs(frame.plan.width() - 1.0 * scale) < 1e-6);
            std::vector<QRectF> parts{frame.plan, frame.section};
            for (const climate::Plane plane : {climate::Plane::front, climate::Plane::back, climate::Plane::left,
                                               climate::Plane::right, climate::Plane::ceiling}) {
                const QRectF part = drawing::panel_rect(frame, walls.enclosure.shell, plane);
                const bool side = plane == climate::Plane::left || plane == climate::Plane::right;
                const double up_m = plane == climate::Plane::ceiling ? 0.5 : 0.4;
                QVERIFY(std::abs((side ? part.width() : part.height()) - up_m * scale) < 1e-6);
                QVERIFY(std::abs((side ? part.height() : part.width()) - (side ? 0.5 : 1.0) * scale) < 1e-6);
                parts.push_back(part);
            }
            for (std::size_t i = 0; i < parts.size(); ++i) {
                QVERIFY(area.contains(parts[i]));
                for (std::size_t j = 0; j < i; ++j) {
                    QVERIFY(!parts[i].intersects(parts[j]));
                }
            }
        }
        drawing::Picture uv = walls;
        uv.layer = drawing::Layer::uv;
        QVERIFY(!drawing::lay_out(uv, QRectF(0, 0, 831, 354)).unfolded);
    }

    void a_walls_lower_edge_meets_the_floors_and_its_left_is_the_floors_left()
    {
        using climate::Plane;
        const assess::EnclosureResult enclosure = result();
        const drawing::Frame frame = drawing::lay_out(picture_of(enclosure), QRectF(0, 0, 831, 354));
        const auto meets = [&](Plane plane, double along_m, double x_m, double y_m) {
            const QPointF apart = drawing::on_panel(frame, plane, along_m, 0.0) - drawing::on_plan(frame, x_m, y_m);
            return apart.manhattanLength() <= frame.fold + 1e-9;
        };
        QVERIFY(meets(Plane::front, 0.3, 0.3, 0.0));
        QVERIFY(meets(Plane::back, 0.3, 0.3, 0.5));
        QVERIFY(meets(Plane::left, 0.2, 0.0, 0.2));
        QVERIFY(meets(Plane::right, 0.2, 1.0, 0.2));
        QVERIFY(drawing::on_panel(frame, Plane::front, 0.3, 0.4).y() > frame.plan.bottom());
        QVERIFY(drawing::on_panel(frame, Plane::left, 0.2, 0.4).x() < frame.plan.left());
    }

    void under_the_pointer_a_wall_tells_both_its_faces_and_the_height()
    {
        const assess::EnclosureResult enclosure = result();
        const drawing::Picture walls = picture_of(enclosure);
        const QRectF area(0, 0, 900, 400);
        const drawing::Frame frame = drawing::lay_out(walls, area);
        const auto said = [&](climate::Plane plane, double along_m, double up_m) {
            return drawing::probe_lines(drawing::on_panel(frame, plane, along_m, up_m), area, walls);
        };
        QCOMPARE(said(climate::Plane::back, 0.75, 0.25),
                 QStringList({QStringLiteral("back wall, inside  27 °C"), QStringLiteral("outside  18 °C"),
                              QStringLiteral("over the base  25 cm")}));
        QCOMPARE(said(climate::Plane::ceiling, 0.25, 0.25),
                 QStringList({QStringLiteral("top, inside  22 °C"), QStringLiteral("outside  18 °C")}));
        QCOMPARE(said(climate::Plane::ceiling, 0.75, 0.25), QStringList(QStringLiteral("top: open here")));
        QVERIFY(said(climate::Plane::back, 0.75, 0.05).isEmpty()); // in the bed
        QVERIFY(drawing::probe_lines(frame.plan.center(), area, walls).first().startsWith(QStringLiteral("surface")));
    }

    void the_colours_of_a_wall_are_those_of_the_floor()
    {
        const assess::EnclosureResult enclosure = result();
        const drawing::Picture walls = picture_of(enclosure);
        QImage image(900, 400, QImage::Format_ARGB32);
        QPainter painter(&image);
        drawing::paint(painter, QRectF(image.rect()), walls);
        painter.end();
        const drawing::Frame frame = drawing::lay_out(walls, QRectF(image.rect()));
        // The cell of 24 degC on the wall and the floor, which is of 24 degC all over.
        const QColor wall = image.pixelColor(drawing::on_panel(frame, climate::Plane::back, 0.46, 0.22).toPoint());
        const QColor floor = image.pixelColor(frame.plan.center().toPoint());
        QVERIFY(std::abs(wall.lightness() - floor.lightness()) <= 6);
        const QColor warmer = image.pixelColor(drawing::on_panel(frame, climate::Plane::back, 0.86, 0.22).toPoint());
        QVERIFY(warmer.lightness() > floor.lightness() + 20);
    }

    void a_box_to_tick_folds_them_out_where_temperatures_are_shown()
    {
        test::ShownDrawing shown(box(), result());
        auto* walls = shown.view.findChild<QCheckBox*>(QStringLiteral("wallsBox"));
        QComboBox* layers = shown.layers;
        QVERIFY(!walls->isChecked());
        QVERIFY(!walls->accessibleName().isEmpty());
        const QImage folded = shown.image();
        walls->setFocus();
        QTest::keyClick(walls, Qt::Key_Space);
        QVERIFY(walls->isChecked());
        QVERIFY(shown.image() != folded);
        layers->setCurrentIndex(1);
        QVERIFY(!walls->isEnabled());
        layers->setCurrentIndex(0);
        QTest::keyClick(walls, Qt::Key_Space);
        QCOMPARE(shown.image(), folded);
    }
};

QTEST_MAIN(WallsTest)
#include "walls_test.moc"
