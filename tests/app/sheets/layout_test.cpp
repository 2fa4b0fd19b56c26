// Arithmetic of a page's layout, by hand.
#include <QtTest>
#include <numeric>

#include "app/sheets/column_widths.hpp"

using namespace loam::sheets;

class LayoutTest : public QObject {
    Q_OBJECT

private slots:
    void columns_share_the_room_as_they_are_asked_to()
    {
        QCOMPARE(column_widths({1.0, 3.0}, {10.0, 10.0}, 200.0), (std::vector<double>{50.0, 150.0}));
    }

    void a_column_too_narrow_for_its_widest_word_takes_from_the_others()
    {
        // 60 for the first; the 140 that are left go 1 : 3.
        QCOMPARE(column_widths({1.0, 1.0, 3.0}, {60.0, 10.0, 10.0}, 200.0), (std::vector<double>{60.0, 35.0, 105.0}));
        // With that the second would have 35 and lacks 5.
        QCOMPARE(column_widths({1.0, 1.0, 3.0}, {60.0, 40.0, 10.0}, 200.0), (std::vector<double>{60.0, 40.0, 100.0}));
    }

    void where_no_widths_are_enough_the_shares_decide()
    {
        QCOMPARE(column_widths({1.0, 1.0}, {150.0, 60.0}, 200.0), (std::vector<double>{100.0, 100.0}));
    }

    void a_line_breaks_at_spaces_and_after_hyphens_never_at_a_no_break_space()
    {
        const QFontMetricsF metrics{QFont(QStringLiteral("DejaVu Sans"))};
        const auto width = [&](const char* text) { return unbreakable_width(QString::fromUtf8(text), metrics); };
        const auto advance = [&](const char* text) { return metrics.horizontalAdvance(QString::fromUtf8(text)); };
        QCOMPARE(width("a broadest b"), advance("broadest"));
        QCOMPARE(width("heat-resistant"), advance("resistant"));
        QCOMPARE(width("12\xc2\xa0kg of"), advance("12\xc2\xa0kg"));
        QCOMPARE(width(""), 0.0);
    }
};

QTEST_MAIN(LayoutTest)
#include "layout_test.moc"
