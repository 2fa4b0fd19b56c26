// Laws of moving, resizing and turning; what is right follows from plane geometry.
#include "app/drawing/placing.hpp"

#include <random>

#include "app/drawing/snapping.hpp"
#include "core/plan/file.hpp"
#include "tests/app/drawn_box.hpp"
#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

using namespace loam;
using drawing::Alignment;

namespace {

plan::Fitting fitting(const char* id, const QRectF& at_m, std::optional<double> rotation_deg = {})
{
    plan::Fitting made;
    made.id = id;
    made.x_m = at_m.left();
    made.y_m = at_m.top();
    made.length_m = at_m.width();
    made.width_m = at_m.height();
    made.rotation_deg = rotation_deg;
    return made;
}

plan::Enclosure furnished()
{
    plan::Enclosure box;
    box.id = "e1";
    box.shell.length_m = 0.9;
    box.shell.width_m = 0.45;
    box.shell.height_m = 0.5;
    box.fittings.push_back(fitting("f1", {0.1, 0.1, 0.2, 0.1}));
    box.fittings.push_back(fitting("f2", {0.5, 0.2, 0.15, 0.15}, 30.0));
    plan::Cover towel;
    towel.id = "c1";
    towel.x_m = 0.3;
    towel.length_m = 0.4;
    towel.width_m = 0.3;
    box.shell.top.covers.push_back(towel);
    plan::Device lamp;
    lamp.id = "d1";
    lamp.x_m = 0.2;
    lamp.y_m = 0.2;
    plan::Device mat;
    mat.id = "d2";
    mat.kind = plan::DeviceKind::heat_mat;
    mat.place = plan::Place::left_wall;
    mat.y_m = 0.1;
    mat.z_m = 0.1;
    mat.length_m = 0.2;
    mat.width_m = 0.15;
    plan::Device below = mat;
    below.id = "d3";
    below.place = plan::Place::under_base;
    box.equipment = {lamp, mat, below};
    return box;
}

bool inside(const drawing::Placed& what, const plan::Shell& shell)
{
    constexpr double rounding_m = 1e-4; // places are kept to a tenth of a millimetre
    const QRectF box = what.by_middle ? QRectF(what.footprint_m.center(), QSizeF()) : what.footprint_m;
    return box.left() >= -rounding_m && box.right() <= shell.length_m + rounding_m && box.top() >= -rounding_m &&
           box.bottom() <= shell.width_m + rounding_m;
}

} // namespace

TEST_CASE("Whatever is done to a thing on the plan, it stays in the box and the others stay as they are")
{
    std::mt19937 random(7);
    std::uniform_real_distribution<double> by(-0.6, 0.6);
    plan::Enclosure box = furnished();
    const auto ids = drawing::placed_things(box);
    for (int round = 0; round < 1000; ++round) {
        const QString id = ids[static_cast<std::size_t>(random()) % ids.size()].id;
        const plan::Enclosure before = box;
        switch (random() % 4) {
        case 0:
            box = drawing::moved(box, id, {by(random), by(random)});
            break;
        case 1:
            box = drawing::resized(box, id, {by(random), by(random)});
            break;
        case 2:
            box = drawing::aligned(box, id, static_cast<Alignment>(random() % 6));
            break;
        default:
            box = drawing::moved(drawing::resized(box, id, {-0.6, -0.6}), id, {by(random), by(random)});
            break;
        }
        for (const drawing::Placed& one : drawing::placed_things(box)) {
            INFO(round << ' ' << one.id.toStdString());
            CHECK(inside(one, box.shell));
            CHECK((one.id == id || one.footprint_m == drawing::placed_thing(before, one.id)->footprint_m));
        }
    }
}

TEST_CASE("A mat on a wall goes along that wall only")
{
    const plan::Enclosure box = drawing::moved(furnished(), QStringLiteral("d2"), {0.3, 0.05});
    CHECK(box.equipment[1].y_m == Approx(0.15));
    CHECK(box.equipment[1].x_m == 0.0);
    CHECK(box.equipment[1].z_m == 0.1);
}

TEST_CASE("Four quarters are a whole turn, and a quarter swaps length and width about the middle")
{
    for (const char* id : {"f1", "f2", "c1", "d3"}) {
        const QString what = QString::fromLatin1(id);
        plan::Enclosure box = furnished();
        const QRectF before = drawing::placed_thing(box, what)->footprint_m;
        box = drawing::turned(box, what);
        const QRectF after = drawing::placed_thing(box, what)->footprint_m;
        INFO(id);
        CHECK(after.center().x() == Approx(before.center().x()));
        CHECK(after.center().y() == Approx(before.center().y()));
        CHECK(after.width() == Approx(before.height()));
        for (int more = 0; more < 3; ++more) {
            box = drawing::turned(box, what);
        }
        CHECK(box == furnished());
    }
    CHECK(drawing::turned(furnished(), QStringLiteral("d1")) == furnished()); // a lamp is round
}

TEST_CASE("Fittings stand in one another where their outlines do, turned as they are; side by side they don't")
{
    plan::Enclosure box = furnished();
    CHECK(drawing::standing_in(box, QStringLiteral("f1")).isEmpty());
    box.fittings[1].rotation_deg.reset();
    box.fittings[1].x_m = 0.3; // edge to edge
    box.fittings[1].y_m = 0.1;
    CHECK(drawing::standing_in(box, QStringLiteral("f1")).isEmpty());
    box.fittings[1].x_m = 0.29;
    CHECK(drawing::standing_in(box, QStringLiteral("f1")) == QStringList{QStringLiteral("f2")});
    // Boxes around them overlap, the turned outline does not.
    box.fittings[1] = fitting("f2", {0.29, 0.19, 0.1, 0.1}, 45.0);
    CHECK(drawing::standing_in(box, QStringLiteral("f1")).isEmpty());
    CHECK(drawing::standing_in(box, QStringLiteral("d1")).isEmpty()); // a lamp hangs above
}

TEST_CASE("Coming near another thing's edge or the box's brings in line with it, and the guide lies there")
{
    const plan::Enclosure box = furnished();
    const drawing::Placed what = *drawing::placed_thing(box, QStringLiteral("f1"));
    const auto to = [&](double x_m, double y_m, bool free) {
        return drawing::snapped(box, what, {x_m - what.footprint_m.left(), y_m - what.footprint_m.top()}, 0.01, free);
    };
    const auto at_front = to(0.033, 0.006, false);
    CHECK(what.footprint_m.top() + at_front.by_m.y() == Approx(0.0).margin(1e-12));
    REQUIRE_FALSE(at_front.guides.empty());
    const double guide_m = at_front.guides.back().y1(); // along one of its edges
    CHECK((guide_m == Approx(0.0) || guide_m == Approx(what.footprint_m.height())));
    const auto beside = to(0.306, 0.2, false); // the cover begins at 0.3
    CHECK(what.footprint_m.left() + beside.by_m.x() == Approx(0.3));
    const auto free = to(0.306, 0.006, true);
    CHECK(free.guides.empty());
    CHECK(what.footprint_m.left() + free.by_m.x() == Approx(0.306));
}
