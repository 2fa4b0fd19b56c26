// Files that want to hurt: each must be refused, fast, with a reason.
#include <chrono>
#include <random>

#include "core/json/problem_codes.hpp"
#include "tests/catch.hpp"
#include "tests/core/plan/plan_text.hpp"

using namespace loam;
using namespace loam::plan;
using namespace loam::plan::test;
namespace code = loam::json::problem;

namespace {

std::string first_code(std::string_view text)
{
    const auto problems = refused(text);
    return problems.empty() ? "ok" : problems.front().code;
}

std::string with_animals(std::size_t count)
{
    const std::string animal = R"({"id": "a1", "species": "terrapene-ornata", "count": 1})";
    std::string list = "\"animals\": [" + animal;
    list.reserve(count * (animal.size() + 1));
    for (std::size_t i = 1; i < count; ++i) {
        list += "," + animal;
    }
    return with("\"animals\": [", list + "], \"x_rest\": [");
}

std::string with_small_animals(std::size_t count)
{
    std::string list = "\"animals\": [{}";
    for (std::size_t i = 1; i < count; ++i) {
        list += ",{}";
    }
    return with("\"animals\": [", list + "], \"x_rest\": [");
}

template <class Work> double seconds(Work work)
{
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

} // namespace

TEST_CASE("Numbers that no household has are refused by their bounds")
{
    for (const char* const literal : {"1e308", "-1e308", "-0.5", "0", "1000"}) {
        INFO(literal);
        const auto problems = refused(with("\"length_m\": 1.2", std::string("\"length_m\": ") + literal));
        REQUIRE(problems.size() == 1);
        CHECK(problems[0].where == "/enclosures/0/shell/length_m");
        CHECK(problems[0].args.at(0) == literal);
        CHECK(problems[0].args.at(2) == "10");
    }
    CHECK(first_code(with("1.2", "NaN")) == code::not_finite);
    CHECK(first_code(with("1.2", "1e400")) == code::not_finite);
}

TEST_CASE("A million animals are refused without being visited")
{
    const std::string hundred_thousand = with_small_animals(100'000);
    double taken = seconds([&] {
        const auto problems = refused(hundred_thousand);
        REQUIRE(problems.size() == 1);
        CHECK(problems[0] ==
              json::Problem{"/enclosures/0/animals", std::string(code::too_many_items), {"100000", "100"}});
    });
    CHECK(taken < 5.0);
    const std::string million = with_small_animals(1'000'000);
    taken = seconds([&] { CHECK(first_code(million) == code::too_many_values); });
    CHECK(taken < 5.0);
    CHECK(first_code(with_animals(1'000'000)) == code::too_large);
}

TEST_CASE("A file of 100 MB is refused by its size alone, at once")
{
    const std::string text = good_text() + std::string(100'000'000, ' ');
    const double taken = seconds([&] { CHECK(first_code(text) == code::too_large); });
    CHECK(taken < 0.5);
}

TEST_CASE("Deep nesting is refused wherever it stands")
{
    const std::string deep = std::string(100'000, '[') + std::string(100'000, ']');
    CHECK(first_code(deep) == code::too_deep);
    CHECK(first_code(with("\"format\"", "\"x_deep\": " + deep + ", \"format\"")) == code::too_deep);
}

TEST_CASE("Broken text is refused, a byte order mark is not")
{
    CHECK(first_code("") == code::empty);
    CHECK(first_code(with("By the window", "\xFF\xFE")) == code::invalid_utf8);
    CHECK(first_code(with("By the window", "\\ud800")) == code::syntax);
    CHECK(first_code(with("By the window", "\\u0000")) == code::control_character);
    CHECK(first_code(with("\"title\"", "\"currency\"")) == code::duplicate_key);
    CHECK(first_code("\xEF\xBB\xBF" + good_text()) == "ok");
}

TEST_CASE("Every beginning of a good file is refused, never half read")
{
    const std::string text = good_text();
    const std::size_t end = text.find_last_of('}');
    for (std::size_t length = 0; length <= end; length += 7) {
        REQUIRE(first_code(std::string_view(text).substr(0, length)) != "ok");
    }
}

// Deterministic: the same seed changes the same bytes on every machine.
TEST_CASE("A damaged file is refused or read, and what is read can be saved and read again")
{
    const std::string alphabet = "{}[]\",:0123456789.eE+-x_ntf\\u\n\x01\xC3\xFF";
    std::mt19937 random(2024);
    std::size_t read_well = 0;
    for (int round = 0; round < 6000; ++round) {
        std::string text = data(round % 2 == 0 ? "every-member.json" : "version-0.json");
        for (auto changes = 1 + random() % 3; changes > 0; --changes) {
            const std::size_t place = random() % text.size();
            switch (random() % 4) {
            case 0:
                text[place] = alphabet[random() % alphabet.size()];
                break;
            case 1:
                text.insert(place, 1, alphabet[random() % alphabet.size()]);
                break;
            case 2:
                text.erase(place, 1 + random() % 12);
                break;
            default:
                text.insert(place, text.substr(random() % text.size(), 1 + random() % 40));
                break;
            }
        }
        auto result = read(text);
        if (const auto* const good = std::get_if<Loaded>(&result)) {
            ++read_well;
            REQUIRE(loaded(write(good->plan)) == good->plan);
        } else {
            REQUIRE_FALSE(std::get<json::Problems>(result).empty());
        }
    }
    CHECK(read_well > 100);
}
