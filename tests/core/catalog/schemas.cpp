// To write the committed schemas anew: run this test program with the argument "[write-schemas]".
#include <fstream>

#include "shipped.hpp"
#include "tests/catch.hpp"

using namespace loam::catalog;

static const std::vector<std::string> kinds{"species", "rules", "materials", "devices", "assumptions", "prices"};

TEST_CASE("the committed schemas are what the program prints")
{
    for (const std::string& kind : kinds) {
        INFO(kind << ": to write it anew, run test_catalog \"[write-schemas]\"");
        CHECK(shipped::text_of("schema/" + kind + ".schema.json") == schema(kind).value());
    }
}

TEST_CASE("a kind of file that we don't have has no schema")
{
    CHECK_FALSE(schema("weather").has_value());
    CHECK_FALSE(schema("").has_value());
}

TEST_CASE("write the schemas into the source tree", "[.][write-schemas]")
{
    for (const std::string& kind : kinds) {
        std::ofstream out(std::string(LOAM_SOURCE_DIR) + "/resources/schema/" + kind + ".schema.json",
                          std::ios::binary);
        out << schema(kind).value();
        REQUIRE(out.good());
    }
}
