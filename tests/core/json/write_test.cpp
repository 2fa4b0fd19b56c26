#include <algorithm>
#include <cmath>
#include <limits>
#include <random>

#include "core/json/node.hpp"
#include "core/json/number_text.hpp"
#include "core/json/parse.hpp"
#include "tests/catch.hpp"

using namespace loam::json;

TEST_CASE("Leaf objects and short lists stand on one line, others on many")
{
    Node list = Node::array();
    list.add(Node::object().add("id", Node::of("a")).add("x_m", Node::of(0.5)));
    Node node = Node::object();
    node.add("title", Node::of("t")).add("list", list).add("none", Node::array()).add("void", Node::object());
    CHECK(write(node) == "{\n"
                         "  \"title\": \"t\",\n"
                         "  \"list\": [\n"
                         "    {\"id\": \"a\", \"x_m\": 0.5}\n"
                         "  ],\n"
                         "  \"none\": [],\n"
                         "  \"void\": {}\n"
                         "}\n");
}

TEST_CASE("A leaf that is too long for a line is broken")
{
    Node node = Node::object();
    node.add("a", Node::of(std::string(60, 'x'))).add("b", Node::of(std::string(60, 'y')));
    const std::string text = write(node);
    CHECK(text.find("{\n  \"a\"") == 0);
}

TEST_CASE("Texts are escaped so that they read back the same")
{
    std::string every;
    for (char c = 0; c < 127; ++c) {
        every += c;
    }
    every += "ü\xF0\x9F\x90\xA2";
    const Node node = Node::object().add(every, Node::of(every));
    const auto reread = parse(write(node));
    REQUIRE(reread.index() == 0);
    CHECK(std::get<Node>(reread) == node);
}

TEST_CASE("A double is written by the shortest text that reads back the same")
{
    CHECK(number_text(0.1) == "0.1");
    CHECK(number_text(100000.0) == "100000");
    CHECK(number_text(-0.0) == "0");
    CHECK(number_text(1e22) == "1e+22");
    CHECK(number_text(0.000001) == "0.000001");
    CHECK(number_text(std::numeric_limits<double>::quiet_NaN()).empty());
    CHECK(Node::of(std::numeric_limits<double>::infinity()).kind == Kind::null);
    std::mt19937_64 random(7);
    std::uniform_real_distribution<double> exponent(-300.0, 300.0);
    for (int i = 0; i < 20'000; ++i) {
        const double value = std::pow(10.0, exponent(random)) * (i % 2 == 0 ? 1.0 : -1.0);
        REQUIRE(double_of(number_text(value)) == value);
    }
}

TEST_CASE("A whole number may be spelled with a fraction or an exponent")
{
    CHECK(integer_of("5") == 5);
    CHECK(integer_of("5.0") == 5);
    CHECK(integer_of("5e1") == 50);
    CHECK(!integer_of("5.5"));
    CHECK(!integer_of("1e300"));
    CHECK(!double_of("1e400"));
    CHECK(!double_of("12x"));
    CHECK(!double_of(""));
    CHECK(double_of("1e-400") == 0.0);
    CHECK(double_of("0." + std::string(400, '0') + "1") == 0.0);
}

TEST_CASE("A long list of numbers fills its lines, and reads back the same")
{
    Node list = Node::array();
    for (int i = 0; i < 100; ++i) {
        list.add(i % 10 == 9 ? Node() : Node::of(1.25 * i));
    }
    Node node = Node::object();
    node.add("row", list);
    const std::string text = write(node);
    std::size_t lines = 0;
    std::size_t longest = 0;
    for (std::size_t from = 0; from < text.size(); ++lines) {
        const std::size_t to = text.find('\n', from);
        longest = std::max(longest, to - from);
        from = to + 1;
    }
    CHECK(lines < 14); // 100 numbers of six characters at the most, and five lines around them
    CHECK(longest <= 110);
    CHECK(text.find(", \n") == std::string::npos);
    const auto back = parse(text);
    REQUIRE(std::holds_alternative<Node>(back));
    CHECK(std::get<Node>(back) == node);
}
