#include <array>
#include <random>
#include <regex>
#include <set>
#include <string>

#include "core/json/archive.hpp"
#include "core/json/nearest_name.hpp"
#include "core/json/pattern.hpp"
#include "core/json/pointer.hpp"
#include "core/json/problem_codes.hpp"
#include "core/json/shown.hpp"
#include "core/json/utf8.hpp"
#include "tests/catch.hpp"

using namespace loam::json;

// "kitten" and "sitting" are the usual textbook pair for edit distance (common practice, no source).
TEST_CASE("The edit distance counts insertions, deletions, substitutions and swaps")
{
    CHECK(edit_distance("kitten", "sitting") == 3);
    CHECK(edit_distance("", "abc") == 3);
    CHECK(edit_distance("abc", "abc") == 0);
    CHECK(edit_distance("ab", "ba") == 1);
    CHECK(edit_distance("setponit_c", "setpoint_c") == 1);
}

TEST_CASE("A mistyped name finds the nearest, a strange one finds none")
{
    constexpr std::array<std::string_view, 4> names{"setpoint_c", "power_w", "height_above_base_m", "x_m"};
    CHECK(nearest_name("setpont_c", names) == "setpoint_c");
    CHECK(nearest_name("setpoint", names) == "setpoint_c");
    CHECK(nearest_name("power", names) == "power_w");
    CHECK(nearest_name("height", names) == "height_above_base_m");
    CHECK(nearest_name("wattage", names) == std::nullopt);
    CHECK(nearest_name("", names) == std::nullopt);
    CHECK(nearest_name(std::string(1'000'000, 'x'), names) == std::nullopt);
    CHECK(nearest_name("power", {}) == std::nullopt);
}

// std::regex is the outside judge: the matcher by hand must agree with it on near misses of every shape.
TEST_CASE("The named patterns mean what their regular expressions say")
{
    const std::array<std::string_view, 6> patterns{kebab_id,   dotted_id, element_id,
                                                   clock_time, iso_date,  currency_code};
    const std::array<std::string, 9> seeds{
        "terrapene-ornata", "substrate.coir-chips", "d1", "AU-NSW", "23:59", "2026-12-31", "USD", "a_b", ""};
    const std::string letters = "a0Z-_.:1239 ";
    std::mt19937 random(11);
    for (const std::string_view pattern : patterns) {
        const std::regex regex{std::string(pattern)};
        std::size_t accepted = 0;
        for (int i = 0; i < 4000; ++i) {
            std::string text = seeds[random() % seeds.size()];
            for (unsigned changes = static_cast<unsigned>(random() % 3); changes > 0 && !text.empty(); --changes) {
                text[random() % text.size()] = letters[random() % letters.size()];
            }
            INFO(pattern << " on '" << text << "'");
            REQUIRE(matches(pattern, text) == std::regex_match(text, regex));
            accepted += matches(pattern, text) ? 1 : 0;
        }
        CHECK(accepted > 100);
        CHECK_FALSE(matches(pattern, "2026-12-31\n"));
    }
}

// RFC 6901, section 3.
TEST_CASE("A JSON Pointer escapes its two special characters")
{
    CHECK(pointer_to("/a", "b/c~d") == "/a/b~1c~0d");
    CHECK(pointer_to("", 3) == "/3");
}

TEST_CASE("Control characters are found, other characters are not")
{
    CHECK(has_control_character("a\nb"));
    CHECK(has_control_character("\x7F"));
    CHECK(has_control_character("\xC2\x85"));
    CHECK_FALSE(has_control_character("\xC2\xA0 ü 12 °C"));
    CHECK(code_points("ü°\xF0\x9F\x90\xA2") == 3);
}

TEST_CASE("What a problem repeats of a file is cut between characters")
{
    CHECK(shown("short") == "short");
    std::string text;
    for (int i = 0; i < 40; ++i) {
        text += "€"; // three bytes
    }
    const std::string cut = shown("a" + text);
    CHECK(cut.size() < 70);
    CHECK_FALSE(first_invalid_utf8(cut));
}

TEST_CASE("Problem codes are unique")
{
    CHECK(std::set<std::string_view>(problem::all.begin(), problem::all.end()).size() == problem::all.size());
}
