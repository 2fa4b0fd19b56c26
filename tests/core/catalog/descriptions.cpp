// Reading and writing are one description, so whatever is read must come back from what is written of it.
#include <variant>

#include "core/catalog/files.hpp"
#include "core/catalog/problem_codes.hpp"
#include "core/json/front.hpp"
#include "core/json/parse.hpp"
#include "shipped.hpp"
#include "tests/catch.hpp"

using namespace loam;
using namespace loam::catalog;

template <class Entry> static void comes_back(const std::vector<Entry>& entries)
{
    const std::string text = json::write(json::to_node(Sheet<Entry>{entries, {}}));
    Sheet<Entry> back;
    json::Problems problems;
    json::read_into(std::get<json::Node>(json::parse(text)), back, problems);
    INFO(shipped::listed(problems));
    REQUIRE(problems.empty());
    CHECK(back.entries == entries);
    CHECK(json::write(json::to_node(back)) == text);
}

TEST_CASE("every shipped entry comes back from what is written of it")
{
    comes_back(shipped::catalog().species);
    comes_back(shipped::catalog().rules);
    comes_back(shipped::catalog().materials);
    comes_back(shipped::catalog().devices);
    comes_back(shipped::catalog().assumptions);
}

TEST_CASE("members of the keeper's own are kept through reading and writing")
{
    Material mine = shipped::catalog().materials.at(0);
    mine.extras.emplace_back("x_shelf", json::Node::of(std::string_view("third")));
    comes_back(std::vector{mine});
}

static std::string problems_of(const Material& material)
{
    json::Problems problems;
    Material back;
    json::read_into(json::to_node(material), back, problems);
    return shipped::listed(problems);
}

TEST_CASE("a material that lacks a figure for one of its uses is refused")
{
    Material bed = *shipped::catalog().find_material("peat");
    CHECK(problems_of(bed).empty());
    bed.settling.reset();
    CHECK(problems_of(bed) == "/settling: missing-for-use [settling] [substrate]\n");
    bed.uses.push_back(MaterialUse::cover);
    CHECK(problems_of(bed).find("/default_thickness_m: missing-for-use") != std::string::npos);
    bed.uses.clear();
    CHECK(problems_of(bed) == "/uses: missing [uses]\n");
}

TEST_CASE("a missing end of a spread is told as missing, not as out of order too")
{
    Material peat = *shipped::catalog().find_material("peat");
    json::Node node = json::to_node(peat);
    for (std::size_t i = 0; i < node.keys.size(); ++i) {
        if (node.keys[i] == "density_kg_m3") {
            node.items[i].keys.pop_back(); // the source, last of its members
            node.items[i].items.pop_back();
            node.items[i].keys.erase(node.items[i].keys.begin());
            node.items[i].items.erase(node.items[i].items.begin());
        }
    }
    json::Problems problems;
    Material back;
    json::read_into(node, back, problems);
    CHECK(shipped::listed(problems) == "/density_kg_m3/low: missing [low]\n/density_kg_m3/source: missing [source]\n");
}

TEST_CASE("a device whose shares sum to more than its watts is refused")
{
    DeviceTraits lamp = *shipped::catalog().find_device("flood-lamp");
    lamp.convective_share->likely = 0.25;
    json::Problems problems;
    DeviceTraits back;
    json::read_into(json::to_node(lamp), back, problems);
    REQUIRE(problems.size() == 1);
    CHECK(problems[0].code == problem::shares_exceed_one);
}

TEST_CASE("no problem code stands for two things")
{
    std::vector<std::string_view> codes(problem::all.begin(), problem::all.end());
    std::sort(codes.begin(), codes.end());
    CHECK(std::adjacent_find(codes.begin(), codes.end()) == codes.end());
}
