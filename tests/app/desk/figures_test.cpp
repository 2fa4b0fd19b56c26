// The table of figures: what decides a range stands beside it.
#include <QTreeWidget>
#include <QtTest>

#include "app/desk/views/figure_rows.hpp"
#include "app/desk/views/figures_view.hpp"

using namespace loam;

class FiguresTest : public QObject {
    Q_OBJECT

    plan::Plan plan_;
    catalog::Catalog catalog_;

    std::vector<desk::FigureGroup> groups() const
    {
        assess::Assessment assessment;
        assess::EnclosureResult& enclosure = assessment.enclosures.emplace_back();
        assess::HeatCase& heat = enclosure.heat.emplace_back();
        heat.id = "winter-day";
        heat.known = true;
        assess::ZoneResult& zone = heat.zones.emplace_back();
        zone.zone = assess::Zone::cool;
        zone.temperature_c = {20.0, 22.0, 24.0};
        zone.limited_by = "mesh.open-fraction";
        zone.limited_share = 0.41;
        const words::Speaker speaker(words::Formatter(words::UnitSystem::metric, QLocale::c()), plan_, catalog_);
        return desk::figure_groups(assessment, enclosure, speaker);
    }

private slots:
    void a_zone_names_what_decides_its_range_and_what_would_narrow_it()
    {
        const desk::FigureRow* cool = nullptr;
        const std::vector<desk::FigureGroup> all = groups();
        for (const desk::FigureGroup& group : all) {
            for (const desk::FigureRow& row : group.rows) {
                cool = row.name == QStringLiteral("cool side") ? &row : cool;
            }
        }
        QVERIFY(cool != nullptr);
        QCOMPARE(cool->decided_by, QStringLiteral("the open share of the mesh, 41%"));
        QVERIFY(cool->why.inputs.contains(QStringLiteral("Measuring it would narrow it")));
    }

    void the_column_is_there_where_there_is_room_and_the_tip_always()
    {
        desk::FiguresView view;
        view.show_groups(groups());
        view.resize(1100, 400);
        view.show();
        constexpr int range_column = 3;
        constexpr int decided_column = 5;
        QVERIFY(!view.isColumnHidden(decided_column));
        view.resize(640, 400);
        QTRY_VERIFY(view.isColumnHidden(decided_column));
        const QList<QTreeWidgetItem*> found =
            view.findItems(QStringLiteral("Cool side"), Qt::MatchExactly | Qt::MatchRecursive);
        QCOMPARE(found.size(), 1);
        QVERIFY(found.front()->toolTip(range_column).contains(QStringLiteral("open share of the mesh")));
    }
};

QTEST_MAIN(FiguresTest)
#include "figures_test.moc"
