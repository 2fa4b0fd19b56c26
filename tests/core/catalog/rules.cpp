#include <set>

#include "shipped.hpp"
#include "tests/catch.hpp"

using namespace loam;
using namespace loam::catalog;

namespace {

std::string one_rule(const std::string& formula)
{
    return R"({"format": "loamstead-rules", "version": 1, "rules": [{"id": "r", "title": "t", "kind": "welfare",
               "jurisdiction": "none", "measure": "total", "source": {"citation": "c", "confidence": "memory"},
               "formula": )" +
           formula + "}]}";
}

} // namespace

TEST_CASE("rules of all four weights are shipped, and statutory ones say where they hold")
{
    std::set<RuleKind> kinds;
    for (const Rule& each : shipped::catalog().rules) {
        INFO(each.id);
        kinds.insert(each.kind);
        if (each.kind == RuleKind::statutory) {
            CHECK(each.jurisdiction != "none");
        }
        CHECK_FALSE(each.title.empty());
    }
    CHECK(kinds.size() >= 3);
    CHECK(shipped::catalog().rules.size() >= 15);
}

TEST_CASE("every shipped rule asks for a positive area")
{
    for (const Rule& each : shipped::catalog().rules) {
        INFO(each.id);
        if (const auto* multiple = std::get_if<space::SizeMultiple>(&each.formula)) {
            CHECK(multiple->length_factor > 0.0);
            CHECK(multiple->width_factor > 0.0);
            CHECK(multiple->length_factor + 1e-12 >= multiple->width_factor);
        } else {
            for (const auto& size : std::get<space::SizeClasses>(each.formula).classes) {
                CHECK(size.area_m2 > 0.0);
            }
        }
    }
}

TEST_CASE("larger classes of a rule never ask for less")
{
    for (const Rule& each : shipped::catalog().rules) {
        if (const auto* sizes = std::get_if<space::SizeClasses>(&each.formula)) {
            for (std::size_t i = 1; i < sizes->classes.size(); ++i) {
                INFO(each.id << " class " << i);
                CHECK(sizes->classes[i].area_m2 >= sizes->classes[i - 1].area_m2);
            }
        }
    }
}

TEST_CASE("the Austrian classes for snakes are those of the ordinance")
{
    // Austria, 2. Tierhaltungsverordnung, BGBl. II 486/2004, Annex 3, 2.1 (confirmed): for one or two animals.
    struct Row {
        double area_m2, each_further_m2, height_m;
    };
    const std::vector<Row> ground{{0.1, 0.015, 0.2}, {0.2, 0.05, 0.3}, {0.5, 0.15, 0.4},
                                  {0.9, 0.2, 0.6},   {1.2, 0.4, 0.8},  {1.5, 0.6, 1.2}};
    const std::vector<Row> climbing{
        {0.2, 0.05, 0.4}, {0.5, 0.1, 0.6}, {0.9, 0.2, 1.0}, {1.2, 0.4, 1.5}, {1.5, 0.6, 1.8}};
    const auto compare = [](const char* id, const std::vector<Row>& rows) {
        const Rule* const rule = shipped::catalog().find_rule(id);
        INFO(id);
        REQUIRE(rule != nullptr);
        CHECK(rule->jurisdiction == "AT");
        CHECK(rule->kind == RuleKind::statutory);
        const auto& sizes = std::get<space::SizeClasses>(rule->formula);
        CHECK(sizes.covers == 2);
        REQUIRE(sizes.classes.size() == rows.size());
        for (std::size_t i = 0; i < rows.size(); ++i) {
            CHECK(sizes.classes[i].area_m2 == rows[i].area_m2);
            CHECK(sizes.classes[i].each_further_m2 == rows[i].each_further_m2);
            CHECK(sizes.classes[i].height_m == rows[i].height_m);
        }
    };
    compare("at04-ground-snake", ground);
    compare("at04-climbing-snake", climbing);
}

TEST_CASE("the German box for land tortoises is eight by four shell lengths for two, with its steps")
{
    // German expert group's minimum requirements 1997: 8 by 4 for Testudo, +10 % for the 3rd and 4th, +20 % from the
    // 5th (secondary; "each" is implied there).
    const Rule* const rule = shipped::catalog().find_rule("bmel97-tortoise-8x4");
    REQUIRE(rule != nullptr);
    const auto& box = std::get<space::SizeMultiple>(rule->formula);
    CHECK(box.length_factor == 8.0);
    CHECK(box.width_factor == 4.0);
    CHECK(box.covers == 2);
    CHECK(box.further == std::vector<space::ShareStep>{{3, 4, 0.1}, {5, std::nullopt, 0.2}});
    CHECK(rule->source.confidence != Confidence::confirmed);
}

// A Rule that nobody filled in holds a multiple; a file that gives classes alone must not be read as giving both.
TEST_CASE("a rule by size classes alone is read as those classes, and one by a multiple alone as that multiple")
{
    const auto formula_of = [](const std::string& formula) {
        Catalog catalog;
        INFO(shipped::listed(add_layer(catalog, {{"f", one_rule(formula)}})));
        REQUIRE(catalog.find_rule("r") != nullptr);
        return catalog.find_rule("r")->formula;
    };
    REQUIRE(std::holds_alternative<space::SizeMultiple>(Rule{}.formula));
    const auto sizes = formula_of(R"({"classes": {"covers": 2, "classes": [
        {"up_to_m": 0.5, "area_m2": 0.25, "each_further_m2": 0.1}, {"area_m2": 1, "each_further_m2": 0.2}]}})");
    const space::SizeClasses two{
        .covers = 2, .classes = {{0.5, 0.25, 0.1, {}, {}, {}}, {{}, 1.0, 0.2, {}, {}, {}}}, .further = {}};
    CHECK(sizes == space::AreaFormula{two});
    const auto multiple = formula_of(R"({"multiple": {"length_factor": 5, "width_factor": 3, "covers": 1}})");
    CHECK(multiple == space::AreaFormula{space::SizeMultiple{5.0, 3.0, {}, {}, 1, {}}});
}

TEST_CASE("a rule needs exactly one formula, in ascending classes")
{
    const auto problems_of = [](const std::string& formula) {
        Catalog catalog;
        return shipped::listed(add_layer(catalog, {{"f", one_rule(formula)}}));
    };
    const std::string multiple = R"("multiple": {"length_factor": 1, "width_factor": 0.5, "covers": 1})";
    const std::string open = R"({"area_m2": 1, "each_further_m2": 0})";
    const std::string small = R"({"up_to_m": 0.5, "area_m2": 0.5, "each_further_m2": 0})";
    const auto classes = [](const std::string& list) {
        return R"("classes": {"covers": 1, "classes": [)" + list + "]}";
    };
    CHECK(problems_of("{" + multiple + "}").empty());
    CHECK(problems_of("{" + classes(small + ", " + open) + "}").empty());
    CHECK(problems_of("{}") == "f /rules/0/formula: not-exactly-one [multiple, classes]\n");
    CHECK(problems_of("{" + multiple + ", " + classes(open) + "}") ==
          "f /rules/0/formula: not-exactly-one [multiple, classes]\n");
    CHECK(problems_of("{" + classes(open + ", " + small) + "}") ==
          "f /rules/0/formula/classes/classes: classes-order\n");
    CHECK(problems_of("{" + classes(small + ", " + small) + "}") ==
          "f /rules/0/formula/classes/classes: classes-order\n");
}
