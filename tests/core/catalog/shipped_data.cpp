// Laws over every shipped file, checked on the plain JSON and so independently of the descriptions that read it.
#include <set>
#include <variant>

#include "core/catalog/names.hpp"
#include "core/catalog/problem_codes.hpp"
#include "core/json/number_text.hpp"
#include "core/json/parse.hpp"
#include "shipped.hpp"
#include "tests/catch.hpp"

using namespace loam;

namespace {

const std::vector<std::string> folders{"materials", "devices", "assumptions", "prices", "rules", "species"};

template <class Visit> void each_object(const json::Node& node, const std::string& where, const Visit& visit)
{
    if (node.kind == json::Kind::object) {
        visit(node, where);
    }
    for (std::size_t i = 0; i < node.items.size(); ++i) {
        const std::string step = node.kind == json::Kind::object ? node.keys[i] : std::to_string(i);
        each_object(node.items[i], where + "/" + step, visit);
    }
}

template <class Visit> void each_shipped_object(const Visit& visit)
{
    for (const auto& folder : folders) {
        for (const auto& file : shipped::files(folder)) {
            const auto parsed = json::parse(file.text);
            REQUIRE(std::holds_alternative<json::Node>(parsed));
            each_object(std::get<json::Node>(parsed), file.name + " ", visit);
        }
    }
}

double number_at(const json::Node& object, std::string_view key)
{
    return json::double_of(object.find(key)->text).value();
}

} // namespace

TEST_CASE("every shipped guidance file opens without a problem and the whole agrees with itself")
{
    const auto problems = catalog::check(shipped::catalog());
    INFO(shipped::listed(problems));
    CHECK(problems.empty());
}

TEST_CASE("every shipped range is in order")
{
    int seen = 0;
    each_shipped_object([&](const json::Node& object, const std::string& where) {
        for (const auto& keys : {std::vector{"min", "max"}, {"low", "likely", "high"}, {"low", "typical", "high"}}) {
            for (std::size_t i = 1; i < keys.size(); ++i) {
                if (object.find(keys[i - 1]) != nullptr && object.find(keys[i]) != nullptr) {
                    INFO(where);
                    CHECK(number_at(object, keys[i - 1]) <= number_at(object, keys[i]));
                    ++seen;
                }
            }
        }
    });
    CHECK(seen > 400);
}

TEST_CASE("every shipped band and spread names its source, at some length")
{
    int seen = 0;
    each_shipped_object([&](const json::Node& object, const std::string& where) {
        const bool band = object.find("min") != nullptr || object.find("max") != nullptr;
        const bool spread = object.find("likely") != nullptr && where.find("/packs/") == std::string::npos;
        if (band || spread) {
            INFO(where);
            const json::Node* const source = object.find("source");
            REQUIRE(source != nullptr);
            CHECK(source->find("citation")->text.size() >= 10);
            ++seen;
        }
    });
    CHECK(seen > 200);
}

TEST_CASE("no shipped source claims both practice and a confirmed reading")
{
    each_shipped_object([](const json::Node& object, const std::string& where) {
        const json::Node* const citation = object.find("citation");
        if (citation == nullptr || object.find("confidence") == nullptr) {
            return;
        }
        INFO(where << ": " << citation->text);
        const bool says_none =
            citation->text.rfind("Common practice, no source", 0) == 0 || citation->text.rfind("No source", 0) == 0;
        CHECK((!says_none || object.find("confidence")->text == "practice"));
    });
}

TEST_CASE("ids are unique across all the files of a folder")
{
    // A second entry would silently replace the first, as a user's file may.
    for (const auto& folder : folders) {
        std::set<std::string> ids;
        for (const auto& file : shipped::files(folder)) {
            const auto parsed = json::parse(file.text);
            const json::Node& whole = std::get<json::Node>(parsed);
            const json::Node* const list = whole.find(folder == "prices" ? "items" : folder);
            INFO(file.name);
            REQUIRE(list != nullptr);
            for (const json::Node& entry : list->items) {
                const std::string id = entry.find(folder == "devices" ? "kind" : "id")->text;
                INFO(id);
                CHECK(ids.insert(id).second);
            }
        }
        CHECK_FALSE(ids.empty());
    }
}
