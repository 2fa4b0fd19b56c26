#include "core/json/parse.hpp"

#include <clocale>
#include <string>

#include "core/json/problem_codes.hpp"
#include "tests/catch.hpp"

using namespace loam::json;

namespace {

Node parsed(std::string_view text)
{
    auto result = parse(text);
    REQUIRE(std::holds_alternative<Node>(result));
    return std::get<Node>(std::move(result));
}

Problems refused(std::string_view text, const Limits& limits = {})
{
    auto result = parse(text, limits);
    REQUIRE(std::holds_alternative<Problems>(result));
    return std::get<Problems>(std::move(result));
}

Problem only_problem(std::string_view text)
{
    const Problems problems = refused(text);
    REQUIRE(problems.size() == 1);
    return problems.front();
}

Problem at(std::string_view code, std::string line, std::string column)
{
    return {"", std::string(code), {std::move(line), std::move(column)}};
}

} // namespace

TEST_CASE("A number keeps the text it was written with")
{
    const Node node = parsed("[0.180, 1e2, -5, 100000000000000000000, 1.50]");
    CHECK(node.items[0].text == "0.180");
    CHECK(node.items[1].text == "1e2");
    CHECK(node.items[2].text == "-5");
    CHECK(node.items[3].text == "100000000000000000000");
    CHECK(node.items[4].text == "1.50");
}

TEST_CASE("The members of an object keep their order")
{
    const Node node = parsed(R"({"b": 1, "a": {"z": true, "y": null}})");
    CHECK(node.keys == std::vector<std::string>{"b", "a"});
    REQUIRE(node.find("a") != nullptr);
    CHECK(node.find("a")->keys == std::vector<std::string>{"z", "y"});
    CHECK(node.find("a")->items[0] == Node::of(true));
    CHECK(node.find("a")->items[1] == Node{});
    CHECK(node.find("c") == nullptr);
}

TEST_CASE("A locale with a decimal comma changes no number")
{
    const char* const given = std::setlocale(LC_NUMERIC, nullptr);
    const std::string before = given == nullptr ? "C" : given;
    bool tried = false;
    for (const char* const name : {"de_DE.UTF-8", "fr_FR.UTF-8", "de_AT.UTF-8", "nl_NL.UTF-8"}) {
        if (std::setlocale(LC_NUMERIC, name) != nullptr) {
            tried = true;
            CHECK(parsed("[0.180]").items[0].text == "0.180");
            break;
        }
    }
    std::setlocale(LC_NUMERIC, before.c_str());
    if (!tried) {
        WARN("no locale with a decimal comma is installed: not checked");
    }
}

// RFC 8259, section 8.1: a byte order mark may be ignored.
TEST_CASE("A byte order mark at the start is accepted, elsewhere it is an error")
{
    CHECK(parsed("\xEF\xBB\xBF{}").kind == Kind::object);
    CHECK(only_problem("{}\xEF\xBB\xBF").code == problem::syntax);
}

TEST_CASE("Line and column of an error are told, the column in characters")
{
    CHECK(only_problem("{\n  \"a\": 1,,\n}") == at(problem::syntax, "2", "10"));
    CHECK(only_problem("[\"\xC3\xBC\xC3\xBC\" 1]") == at(problem::syntax, "1", "7"));
    CHECK(only_problem("[1 2]") == at(problem::syntax, "1", "4"));
}

TEST_CASE("What JSON does not allow is refused")
{
    for (const char* const text : {"{a: 1}", "['a']", "[1,]", "{\"a\": 1,}", "[01]", "[.5]", "[5.]", "[+1]", "// x\n[]",
                                   "[] []", "[1] x", "[tru]", "[\"\t\"]", "[\"\\x\"]", "{\"a\"}", "[0x10]", "]"}) {
        INFO(text);
        CHECK(only_problem(text).code == problem::syntax);
    }
}

TEST_CASE("Text that ends early is told apart from text that is wrong")
{
    for (const char* const text : {"{", "[1, 2", "{\"a\": ", "[\"abc", "{\"a\": 1", "[tr", "[1e"}) {
        INFO(text);
        CHECK(only_problem(text).code == problem::truncated);
    }
    CHECK(only_problem("").code == problem::empty);
    CHECK(only_problem(" \n\t\r").code == problem::empty);
    CHECK(only_problem("\xEF\xBB\xBF").code == problem::empty);
}

TEST_CASE("Numbers that are not finite are refused")
{
    for (const char* const text : {"[NaN]", "[Infinity]", "[-Infinity]", "[1e400]", "[-1e400]", "NaN"}) {
        INFO(text);
        CHECK(only_problem(text).code == problem::not_finite);
    }
    CHECK(parsed("[1e308, 1e-400]").items.size() == 2);
    CHECK(only_problem("[Nonsense]").code == problem::syntax);
}

// Ill-formed sequences after Markus Kuhn, "UTF-8 decoder capability and stress test" (from memory).
TEST_CASE("Ill-formed UTF-8 and lone surrogates are refused")
{
    for (const char* const text : {"[\"\x80\"]", "[\"\xC0\xAF\"]", "[\"\xE0\x80\xAF\"]", "[\"\xED\xA0\x80\"]",
                                   "[\"\xF4\x90\x80\x80\"]", "[\"\xFF\"]", "[\"\xC3\"]", "[\"\xE2\x82\"]"}) {
        CHECK(only_problem(text).code == problem::invalid_utf8);
    }
    CHECK(only_problem("{\n\"a\": \"\xFF\"}") == at(problem::invalid_utf8, "2", "7"));
    CHECK(only_problem(R"(["\ud800"])").code == problem::syntax);
    CHECK(only_problem(R"(["\udc00\ud800"])").code == problem::syntax);
    CHECK(parsed(R"(["\ud83d\udc22"])").items[0].text == "\xF0\x9F\x90\xA2");
}

TEST_CASE("Every key that stands twice in one object is a problem")
{
    const Problems problems = refused(R"({"a": 1, "b": [{"c": 1, "c": {"d": 1}}], "a": 2, "a": 3})");
    REQUIRE(problems.size() == 3);
    CHECK(problems[0] == Problem{"/b/0/c", std::string(problem::duplicate_key), {"c"}});
    CHECK(problems[1] == Problem{"/a", std::string(problem::duplicate_key), {"a"}});
    CHECK(parsed(R"([{"a": 1}, {"a": 1}])").items.size() == 2);
}

TEST_CASE("Depth, size and number of values are limited")
{
    const std::string deep = std::string(64, '[') + std::string(64, ']');
    CHECK(parse(deep).index() == 0);
    CHECK(only_problem("[" + deep + "]") == Problem{"", std::string(problem::too_deep), {"64"}});
    CHECK(only_problem(std::string(100'000, '[')).code == problem::too_deep);
    CHECK(refused("[1, 2, 3]", {.max_nodes = 3}).front() == Problem{"", std::string(problem::too_many_values), {"3"}});
    CHECK(parse("[1, 2]", {.max_nodes = 3}).index() == 0);
    CHECK(refused("[1, 2]", {.max_bytes = 5}).front() == Problem{"", std::string(problem::too_large), {"5", "6"}});
}
