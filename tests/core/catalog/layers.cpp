#include "core/catalog/problem_codes.hpp"
#include "core/json/problem_codes.hpp"
#include "shipped.hpp"
#include "tests/catch.hpp"

using namespace loam;
using namespace loam::catalog;

static std::string assumptions(const std::string& entries)
{
    return R"({"format": "loamstead-assumptions", "version": 1, "assumptions": [)" + entries + "]}";
}

static std::string night(const std::string& spread)
{
    return R"({"id": "room.winter.night_c", "unit": "degC", "reason": "Our cellar", "spread": )" + spread + "}";
}

static const std::string good_spread =
    R"({"low": 9, "likely": 10, "high": 11, "source": {"citation": "Measured", "confidence": "confirmed"}})";

static bool has(const std::vector<FileProblem>& problems, std::string_view where, std::string_view code)
{
    for (const FileProblem& each : problems) {
        if (each.problem.where == where && each.problem.code == code) {
            return true;
        }
    }
    return false;
}

TEST_CASE("a later file replaces the entry of the same id and leaves the rest alone")
{
    Catalog catalog = shipped::catalog();
    const auto problems = add_layer(catalog, {{"mine.json", assumptions(night(good_spread))}});
    CHECK(problems.empty());
    CHECK(catalog.find_assumption("room.winter.night_c")->spread.likely == 10.0);
    CHECK(catalog.assumptions.size() == shipped::catalog().assumptions.size());
    CHECK(*catalog.find_assumption("room.winter.day_c") == *shipped::catalog().find_assumption("room.winter.day_c"));
}

TEST_CASE("a later file adds an entry of a new id")
{
    Catalog catalog;
    REQUIRE(add_layer(catalog, {{"mine.json", assumptions(night(good_spread))}}).empty());
    CHECK(catalog.assumptions.size() == 1);
    CHECK(catalog.find_assumption("room.winter.day_c") == nullptr);
}

TEST_CASE("a file with one bad entry adds none of its entries and says where it is bad")
{
    Catalog catalog = shipped::catalog();
    const std::string reversed =
        R"({"low": 12, "likely": 10, "high": 11, "source": {"citation": "Measured", "confidence": "confirmed"}})";
    const std::string other = R"({"id": "x", "unit": "1", "reason": "r", "spread": )" + good_spread + "}";
    const auto problems = add_layer(catalog, {{"mine.json", assumptions(other + ", " + night(reversed))}});
    CHECK(catalog == shipped::catalog());
    REQUIRE(problems.size() == 1);
    CHECK(problems[0].file == "mine.json");
    CHECK(problems[0].problem.where == "/assumptions/1/spread");
    CHECK(problems[0].problem.code == problem::out_of_order);
    CHECK(problems[0].problem.args == std::vector<std::string>{"low", "12", "likely", "10"});
}

TEST_CASE("a bad file does not keep the good ones beside it from counting")
{
    Catalog catalog;
    const auto problems = add_layer(catalog, {{"bad.json", "{"}, {"good.json", assumptions(night(good_spread))}});
    CHECK(problems.size() == 1);
    CHECK(problems[0].file == "bad.json");
    CHECK(catalog.assumptions.size() == 1);
}

TEST_CASE("an id that stands twice in one file is a slip, not an override")
{
    Catalog catalog;
    const auto problems =
        add_layer(catalog, {{"mine.json", assumptions(night(good_spread) + ", " + night(good_spread))}});
    CHECK(has(problems, "/assumptions/1", problem::duplicate_id));
    CHECK(catalog.assumptions.empty());
}

TEST_CASE("a file that is no guidance file is refused by what it says it is")
{
    Catalog catalog;
    CHECK(has(add_layer(catalog, {{"a", R"({"format": "something-else", "version": 1})"}}), "/format",
              problem::unknown_format));
    CHECK(has(add_layer(catalog, {{"a", R"({"version": 1})"}}), "/format", json::problem::missing));
    CHECK(has(add_layer(catalog, {{"a", "[]"}}), "/format", json::problem::missing));
    CHECK(has(add_layer(catalog, {{"a", R"({"format": 7})"}}), "/format", problem::unknown_format));
}

TEST_CASE("a newer version of the format is refused")
{
    Catalog catalog;
    const auto problems = add_layer(catalog, {{"a", R"({"format": "loamstead-rules", "version": 2, "rules": []})"}});
    CHECK(has(problems, "/version", json::problem::wrong_constant));
}

TEST_CASE("a mistyped key is refused with the name that was probably meant")
{
    Catalog catalog;
    std::string text = assumptions(night(good_spread));
    text.replace(text.find("reason"), 6, "raeson");
    const auto problems = add_layer(catalog, {{"a", text}});
    REQUIRE(has(problems, "/assumptions/0/raeson", json::problem::unknown_key));
    for (const FileProblem& each : problems) {
        if (each.problem.code == json::problem::unknown_key) {
            CHECK(each.problem.args == std::vector<std::string>{"raeson", "reason"});
        }
    }
}

TEST_CASE("a price list in another currency replaces the shipped one as a whole")
{
    Catalog catalog = shipped::catalog();
    PriceList mine = catalog.prices;
    mine.currency = "EUR";
    mine.items.resize(1);
    REQUIRE(add_layer(catalog, {{"mine.json", write(mine)}}).empty());
    CHECK(catalog.prices == mine);
}

TEST_CASE("a species sheet that names what is not there is found by looking at all files together")
{
    Catalog catalog = shipped::catalog();
    Species odd = catalog.species.at(0);
    odd.id = "invented-species";
    odd.rules = {"no-such-rule"};
    odd.substrates = {"no-such-bed", "float-glass"};
    odd.diet.food_item = "food.moonlight";
    catalog.species.push_back(odd);
    catalog.devices.pop_back();
    const auto problems = check(catalog);
    CHECK(problems.size() == 5);
    CHECK(has(problems, "/rules/0", problem::unknown_rule));
    CHECK(has(problems, "/substrates/0", problem::unknown_material));
    CHECK(has(problems, "/substrates/1", problem::not_a_substrate));
    CHECK(has(problems, "/diet/food_item", problem::unserved_need));
    CHECK(has(problems, "", problem::missing_device));
    CHECK(problems[0].file == "species/invented-species");
}
