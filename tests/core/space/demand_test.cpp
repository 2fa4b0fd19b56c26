#include "tests/catch.hpp"

#include "core/space/demand.hpp"

using namespace loam::space;

namespace {

// BMEL 1997, land tortoises: 8 x 4 carapace lengths for two, third and fourth +10 %, from the fifth +20 % each
// (the multiples confirmed for Chersina; the steps by a secondary page).
AreaFormula box_of_8_by_4()
{
    return SizeMultiple{8.0, 4.0, std::nullopt, std::nullopt, 2, {{3, 4, 0.10}, {5, std::nullopt, 0.20}}};
}

// Austria, 2. Tierhaltungsverordnung, annex 3, 2.1: ground snakes (confirmed).
AreaFormula ground_snakes()
{
    SizeClasses rule;
    rule.covers = 2;
    rule.classes = {{0.5, 0.2, 0.05, std::nullopt, std::nullopt, 0.3},
                    {1.0, 0.5, 0.15, std::nullopt, std::nullopt, 0.4},
                    {1.5, 0.9, 0.2, std::nullopt, std::nullopt, 0.6},
                    {2.0, 1.2, 0.4, std::nullopt, std::nullopt, 0.8}};
    return rule;
}

// Directive 2010/63/EU, annex III, table 10.2: snakes (confirmed).
AreaFormula laboratory_snakes()
{
    SizeClasses rule;
    rule.classes = {{0.30, 0.0300, 0.0150, {}, {}, 0.10},
                    {0.40, 0.0400, 0.0200, {}, {}, 0.12},
                    {0.50, 0.0600, 0.0300, {}, {}, 0.15},
                    {0.75, 0.1200, 0.0600, {}, {}, 0.20},
                    {{}, 0.2500, 0.1200, {}, {}, 0.28}};
    return rule;
}

double area_of(const AreaFormula& rule, BodyMeasure measure, std::vector<BodyGroup> animals)
{
    const auto asked = demand(rule, measure, animals);
    REQUIRE(asked);
    return asked->area_m2;
}

} // namespace

TEST_CASE("Eight by four shell lengths cover two, and further animals add their shares")
{
    // A(n) = 32 PL^2 (1 + 0.10 clamp(n-2, 0, 2) + 0.20 max(n-4, 0)), worked by hand for PL 20 cm.
    const double expected_m2[] = {1.28, 1.28, 1.408, 1.536, 1.792, 2.048};
    for (int count = 1; count <= 6; ++count) {
        CAPTURE(count);
        CHECK(area_of(box_of_8_by_4(), BodyMeasure::carapace, {{count, 0.20}}) == Approx(expected_m2[count - 1]));
    }
}

TEST_CASE("A second animal at half as much again and later ones at a fifth make 2.1 areas for five")
{
    // New South Wales code of 2013, by a keeper's summary (secondary): adult bearded dragon 0.375 m2.
    SizeClasses rule;
    rule.classes = {{std::nullopt, 0.375, 0.0, {}, {}, {}}};
    rule.further = {{2, 2, 0.5}, {3, std::nullopt, 0.2}};
    CHECK(area_of(rule, BodyMeasure::snout_vent, {{1, 0.21}}) == Approx(0.375));
    CHECK(area_of(rule, BodyMeasure::snout_vent, {{2, 0.21}}) == Approx(0.5625));
    CHECK(area_of(rule, BodyMeasure::snout_vent, {{5, 0.21}}) == Approx(2.1 * 0.375));
}

TEST_CASE("Size classes add a fixed area for each animal beyond those they cover")
{
    CHECK(area_of(ground_snakes(), BodyMeasure::total, {{2, 1.2}}) == Approx(0.9));
    CHECK(area_of(ground_snakes(), BodyMeasure::total, {{3, 1.2}}) == Approx(1.1));
    CHECK(area_of(laboratory_snakes(), BodyMeasure::total, {{1, 1.2}}) == Approx(0.25));
    CHECK(area_of(laboratory_snakes(), BodyMeasure::total, {{3, 1.2}}) == Approx(0.49));
    CHECK(demand(ground_snakes(), BodyMeasure::total, {{1, 1.2}})->height_m == Approx(0.6));
}

TEST_CASE("A body of exactly a class's upper length belongs to that class")
{
    CHECK(area_of(ground_snakes(), BodyMeasure::total, {{1, 1.0}}) == Approx(0.5));
    CHECK(area_of(ground_snakes(), BodyMeasure::total, {{1, 1.0001}}) == Approx(0.9));
}

TEST_CASE("Published multiples give the worked areas of a box turtle and a royal python")
{
    // Husbandry sheets (confirmed): 5 x 3 and 5 x 5 carapace lengths at 15 cm; RSPCA royal python 120 x 40 x 40 cm.
    const SizeMultiple five_by_three = {5.0, 3.0, {}, {}, 1, {}};
    const SizeMultiple five_by_five = {5.0, 5.0, {}, {}, 1, {}};
    CHECK(area_of(five_by_three, BodyMeasure::carapace, {{1, 0.15}}) == Approx(0.3375));
    CHECK(area_of(five_by_five, BodyMeasure::carapace, {{1, 0.15}}) == Approx(0.5625));
    const SizeMultiple stretched = {1.0, 1.0 / 3.0, 1.0 / 3.0, {}, 1, {}};
    const auto python = demand(stretched, BodyMeasure::total, {{1, 1.2}});
    REQUIRE(python);
    CHECK(*python->length_m == Approx(1.2));
    CHECK(*python->width_m == Approx(0.4));
    CHECK(*python->height_m == Approx(0.4));
    CHECK(meets({1.2, 0.4, 0.4, 0.48}, *python)); // a snake may be longer than the short side
}

TEST_CASE("The largest animal of mixed sizes sets the length, and all count")
{
    // Swiss Animal Protection Ordinance SR 455.1, annex 2, preliminary remark A (confirmed).
    const auto mixed = demand(box_of_8_by_4(), BodyMeasure::carapace, {{2, 0.10}, {1, 0.20}});
    const auto large = demand(box_of_8_by_4(), BodyMeasure::carapace, {{3, 0.20}});
    REQUIRE(mixed);
    CHECK(mixed->area_m2 == Approx(large->area_m2));
    CHECK(*mixed->length_m == Approx(1.6));
    CHECK(mixed->animals == 3);
}

TEST_CASE("What a rule asks never falls with a larger or another animal")
{
    for (const AreaFormula& rule : {box_of_8_by_4(), ground_snakes(), laboratory_snakes()}) {
        double before_m2 = 0.0;
        for (double body_m = 0.05; body_m < 2.0; body_m += 0.05) {
            const double here_m2 = area_of(rule, BodyMeasure::total, {{2, body_m}});
            CHECK(here_m2 >= before_m2);
            CHECK(area_of(rule, BodyMeasure::total, {{3, body_m}}) > here_m2);
            before_m2 = here_m2;
        }
    }
}

TEST_CASE("A rule that says nothing of the animals at hand is not known to apply")
{
    const SizeMultiple for_one = {5.0, 5.0, {}, {}, 1, {}};
    CHECK_FALSE(demand(for_one, BodyMeasure::carapace, {{2, 0.15}}));     // no word on a second animal
    CHECK_FALSE(demand(ground_snakes(), BodyMeasure::total, {{1, 2.1}})); // beyond the last class
    CHECK_FALSE(demand(for_one, BodyMeasure::carapace, {}));
    CHECK_FALSE(demand(for_one, BodyMeasure::carapace, {{1, 0.0}}));
    SizeClasses silent;
    silent.classes = {{std::nullopt, 0.2, 0.0, {}, {}, {}}};
    CHECK(demand(silent, BodyMeasure::total, {{1, 0.5}}));
    CHECK_FALSE(demand(silent, BodyMeasure::total, {{2, 0.5}}));
}

TEST_CASE("A least height holds where the multiple of the body is lower")
{
    const SizeMultiple rule = {4.0, 3.0, 2.0, 0.30, 2, {}};
    CHECK(*demand(rule, BodyMeasure::snout_vent, {{1, 0.10}})->height_m == Approx(0.30));
    CHECK(*demand(rule, BodyMeasure::snout_vent, {{1, 0.20}})->height_m == Approx(0.40));
}
