#include "core/json/archive.hpp"

#include "core/json/front.hpp"
#include "core/json/parse.hpp"
#include "core/json/problem_codes.hpp"
#include "tests/catch.hpp"

namespace nest {

using namespace loam;

enum class Colour { red, green, blue };
constexpr std::array<std::string_view, 3> colour_names{"red", "green", "blue"};

struct Leaf {
    double x_m = 0.0; // begins like a foreign key and is none
    json::Extras extras;
    friend bool operator==(const Leaf&, const Leaf&) = default;
};

struct Tree {
    std::string id = "t";
    std::optional<double> height_m;
    std::int64_t count = 1;
    std::optional<Decimal> price;
    std::optional<bool> alive;
    Colour colour = Colour::red;
    std::vector<Colour> fruits;
    std::vector<std::string> tags;
    std::vector<Leaf> leaves;
    Leaf crown;
    std::string name;
    json::Extras extras;
    friend bool operator==(const Tree&, const Tree&) = default;
};

void describe(json::Archive& archive, Leaf& leaf)
{
    archive.number({"x_m", "Place in m."}, leaf.x_m, {0.0, 10.0});
    archive.extras(leaf.extras);
}

void describe(json::Archive& archive, Tree& tree)
{
    archive.text({"id", "Name."}, tree.id, {1, 8, json::element_id});
    archive.number({"height_m", "Height in m."}, tree.height_m, {0.0, 100.0, true});
    archive.integer({"count", "How many."}, tree.count, {1.0, 9.0});
    archive.decimal({"price", "Price."}, tree.price, {0.0, 100.0});
    archive.flag({"alive", "Alive."}, tree.alive);
    archive.choice({"colour", "Colour."}, tree.colour, colour_names);
    archive.choices({"fruits", "Colours of fruit."}, tree.fruits, colour_names);
    archive.texts({"tags", "Words."}, tree.tags, {1, 4}, {0, 2});
    archive.list({"leaves", "Leaves."}, tree.leaves, {0, 3});
    archive.object_or_default({"crown", "Crown."}, tree.crown);
    archive.text_or_empty({"name", "Label."}, tree.name, {0, 3});
    archive.extras(tree.extras);
}

json::Problems problems_of(std::string_view text, Tree& tree)
{
    const auto node = json::parse(text);
    REQUIRE(node.index() == 0);
    json::Problems problems;
    json::read_into(std::get<json::Node>(node), tree, problems);
    return problems;
}

json::Problems problems_of(std::string_view text)
{
    Tree tree;
    return problems_of(text, tree);
}

json::Problem only(std::string_view members)
{
    const auto problems = problems_of("{\"id\": \"t\", \"count\": 1, \"colour\": \"red\"" +
                                      (members.empty() ? std::string() : ", " + std::string(members)) + "}");
    REQUIRE(problems.size() == 1);
    return problems.front();
}

} // namespace nest

using namespace nest;
namespace code = loam::json::problem;

TEST_CASE("A structure that is written and read again is the same")
{
    Tree tree{.id = "a-1",
              .height_m = 0.1,
              .count = 9,
              .price = Decimal::parse("0.180"),
              .alive = false,
              .colour = Colour::blue,
              .fruits = {Colour::green, Colour::red},
              .tags = {"ab", "ü"},
              .leaves = {{.x_m = 1.5, .extras = {}}, {}},
              .crown = {.x_m = 2.0, .extras = {{"x_", json::Node::of(true)}}},
              .name = "abc",
              .extras = {{"x_1", json::Node::literal("1.50")}, {"x_2", json::Node::array()}}};
    const std::string text = json::write(json::to_node(tree));
    CHECK(text.find("\"price\": 0.180") != std::string::npos);
    Tree reread;
    CHECK(problems_of(text, reread).empty());
    CHECK(reread == tree);
    CHECK(json::write(json::to_node(reread)) == text);
}

TEST_CASE("Absent optionals, empty lists and fresh structures are left out")
{
    CHECK(json::write(json::to_node(Tree{})) == "{\"id\": \"t\", \"count\": 1, \"colour\": \"red\"}\n");
}

TEST_CASE("All problems are told at once, each with its pointer")
{
    const auto problems = problems_of(R"({"id": "", "height_m": "high", "count": 1.5, "colour": "rde",
        "leaves": [{"x_m": -1}, 7, {}, {"x_m": 1}], "tags": ["toolong", 3], "crown": null, "heigth_m": 1})");
    std::vector<std::string> found;
    for (const auto& problem : problems) {
        found.push_back(problem.where + " " + problem.code);
    }
    CHECK(found == std::vector<std::string>{"/id too-short", "/height_m wrong-type", "/count not-whole",
                                            "/colour unknown-choice", "/tags/0 too-long", "/tags/1 wrong-type",
                                            "/leaves too-many-items", "/crown wrong-type", "/heigth_m unknown-key"});
    CHECK(problems.back().args == std::vector<std::string>{"heigth_m", "height_m"});
    CHECK(problems[3].args == std::vector<std::string>{"rde", "red, green, blue", "red"});
}

TEST_CASE("Each kind of problem says what was found and what is allowed")
{
    CHECK(problems_of("{}").size() == 3);
    CHECK(problems_of("{}").front() == json::Problem{"/id", std::string(code::missing), {"id"}});
    CHECK(only(R"("height_m": 0)") == json::Problem{"/height_m", std::string(code::not_above), {"0", "0", "100"}});
    CHECK(only(R"("height_m": 1e308)") ==
          json::Problem{"/height_m", std::string(code::above_maximum), {"1e308", "0", "100"}});
    CHECK(only(R"("price": -0.5)") == json::Problem{"/price", std::string(code::below_minimum), {"-0.5", "0", "100"}});
    CHECK(only(R"("price": 1e1)") == json::Problem{"/price", std::string(code::not_plain_decimal), {"1e1"}});
    CHECK(only(R"("alive": 1)") == json::Problem{"/alive", std::string(code::wrong_type), {"boolean", "number"}});
    CHECK(only(R"("name": "\u0007")") == json::Problem{"/name", std::string(code::control_character), {}});
    CHECK(only(R"("fruits": ["red", "red"])") ==
          json::Problem{"/fruits/1", std::string(code::repeated_choice), {"red"}});
    CHECK(only(R"("leaves": [{"x_m": 1, "y": 1}])") ==
          json::Problem{"/leaves/0/y", std::string(code::unknown_key), {"y"}});
    CHECK(only(R"("a/b": 1)").where == "/a~1b");
}

TEST_CASE("A document that is no object has one problem")
{
    CHECK(problems_of("[1]") == json::Problems{{"", std::string(code::wrong_type), {"object", "array"}}});
}

TEST_CASE("A hostile number of problems is counted, not listed")
{
    std::string text = "{";
    for (int i = 0; i < 5000; ++i) {
        text += "\"k" + std::to_string(i) + "\": 1, ";
    }
    text += "\"id\": \"t\", \"count\": 1, \"colour\": \"red\"}";
    const auto problems = problems_of(text);
    REQUIRE(problems.size() == json::ReadArchive::most_listed + 1);
    CHECK(problems.back() == json::Problem{"", std::string(code::more_problems), {"4800"}});
}

TEST_CASE("A coordinate is not kept as a foreign member, and minus zero reads as zero")
{
    Tree tree;
    CHECK(
        problems_of(R"({"id": "t", "count": 1, "colour": "red", "leaves": [{"x_m": -0.0, "x_mm": 3}]})", tree).empty());
    REQUIRE(tree.leaves.size() == 1);
    CHECK_FALSE(std::signbit(tree.leaves[0].x_m));
    CHECK(tree.leaves[0].extras == json::Extras{{"x_mm", json::Node::literal("3")}});
}

// JSON Schema draft 2020-12, validation vocabulary.
TEST_CASE("The schema states bounds, names, lists and the ban on unknown members")
{
    const json::Node schema = json::schema_of<Tree>("urn:t", "Tree");
    CHECK(schema.find("$schema")->text == "https://json-schema.org/draft/2020-12/schema");
    CHECK(*schema.find("additionalProperties") == json::Node::of(false));
    CHECK(schema.find("patternProperties")->keys == std::vector<std::string>{"^x_"});
    CHECK(schema.find("required")->items.size() == 3);
    const json::Node& properties = *schema.find("properties");
    CHECK(properties.find("height_m")->find("exclusiveMinimum")->text == "0");
    CHECK(properties.find("count")->find("type")->text == "integer");
    CHECK(properties.find("colour")->find("enum")->items.size() == 3);
    CHECK(properties.find("leaves")->find("maxItems")->text == "3");
    CHECK(properties.find("fruits")->find("uniqueItems")->boolean);
}
