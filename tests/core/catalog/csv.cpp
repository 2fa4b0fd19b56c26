// The examples of RFC 4180, section 2, and what spreadsheets make of it.
#include "core/catalog/csv.hpp"

#include "core/catalog/problem_codes.hpp"
#include "core/json/problem_codes.hpp"
#include "tests/catch.hpp"

using namespace loam;
using namespace loam::catalog;
using Cells = std::vector<std::string>;

static std::vector<Cells> cells_of(std::string_view text)
{
    const csv::Table table = csv::read(text);
    CHECK(table.problems.empty());
    std::vector<Cells> cells;
    for (const csv::Row& row : table.rows) {
        cells.push_back(row.cells);
    }
    return cells;
}

TEST_CASE("the examples of RFC 4180 are read as it says")
{
    CHECK(cells_of("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n") ==
          std::vector<Cells>{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(cells_of("aaa,bbb,ccc\r\nzzz,yyy,xxx") == std::vector<Cells>{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(cells_of("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx") ==
          std::vector<Cells>{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(cells_of("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx") ==
          std::vector<Cells>{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(cells_of("\"aaa\",\"b\"\"bb\",\"ccc\"") == std::vector<Cells>{{"aaa", "b\"bb", "ccc"}});
}

TEST_CASE("line ends, byte order marks and separators of spreadsheets make no difference")
{
    const std::vector<Cells> expected{{"a", "b"}, {"1", "2"}};
    CHECK(cells_of("a,b\n1,2\n") == expected);
    CHECK(cells_of("a,b\r1,2\r") == expected);
    CHECK(cells_of("\xEF\xBB\xBF"
                   "a,b\r\n1,2\r\n") == expected);
    CHECK(cells_of("a;b\n1;2\n") == expected);
    CHECK(cells_of("a\tb\n1\t2\n") == expected);
    CHECK(cells_of("a,b\n\n,\n1,2\n\n") == expected); // empty rows are passed over
    CHECK(cells_of("").empty());
}

TEST_CASE("a separator within quotes in the first row does not count")
{
    CHECK(csv::read("\"a,b,c\";d\n1;2\n").separator == ';');
}

TEST_CASE("rows count as a spreadsheet counts them")
{
    const csv::Table table = csv::read("a,b\n\"x\ny\",1\n\nz,2\n");
    REQUIRE(table.rows.size() == 3);
    CHECK(table.rows[1].number == 2);
    CHECK(table.rows[2].number == 4);
}

TEST_CASE("a quote that never closes and text beside a quoted cell are told by row")
{
    const auto open = csv::read("a,b\n1,\"2\n3,4\n");
    REQUIRE(open.problems.size() == 1);
    CHECK(open.problems[0] == json::Problem{"row 2", std::string(problem::csv_open_quote), {}});
    const auto stray = csv::read("a,b\n1,\"2\"x\n3,4\n");
    REQUIRE(stray.problems.size() == 1);
    CHECK(stray.problems[0] == json::Problem{"row 2", std::string(problem::csv_stray_quote), {}});
}

TEST_CASE("text in an older encoding or in UTF-16 is refused with its place")
{
    const auto latin = csv::read("name,price\ncaf\xE9,1\n"); // Latin-1
    REQUIRE(latin.problems.size() == 1);
    CHECK(latin.problems[0] == json::Problem{"", std::string(json::problem::invalid_utf8), {"2", "4"}});
    CHECK(csv::read(std::string_view("\xFF\xFE"
                                     "a\0,\0",
                                     6))
              .problems.size() == 1);
}

TEST_CASE("too large a text and too many rows are refused")
{
    const auto large = csv::read(std::string(csv::largest_text_bytes + 1, 'a'));
    REQUIRE(large.problems.size() == 1);
    CHECK(large.problems[0].code == json::problem::too_large);
    std::string many;
    for (std::size_t i = 0; i <= csv::most_rows; ++i) {
        many += "1,2\n";
    }
    const auto long_table = csv::read(many);
    REQUIRE(long_table.problems.size() == 1);
    CHECK(long_table.problems[0].code == problem::csv_too_many_rows);
}

TEST_CASE("whatever stands in the cells comes back from a written row")
{
    const Cells hard{"plain",
                     "with,comma",
                     "with;semicolon",
                     "with \"quotes\"",
                     "line\r\nbreak",
                     "=1+1",
                     "+5",
                     "-5",
                     "@name",
                     "'quoted",
                     "'=1",
                     "''=1",
                     "\tx",
                     " padded ",
                     "köder",
                     "",
                     "'"};
    const csv::Table table = csv::read(csv::row(hard));
    REQUIRE(table.rows.size() == 1);
    Cells back;
    for (const std::string& cell : table.rows[0].cells) {
        back.push_back(csv::plain(cell));
    }
    CHECK(back == hard);
}

TEST_CASE("no written cell begins as a formula")
{
    for (const char* text : {"=HYPERLINK(1)", "+1", "-1", "@x", "\t=1", "\r=1", "'=1"}) {
        const csv::Table table = csv::read(csv::row({text, "end"}));
        INFO(text);
        CHECK(table.rows.at(0).cells.at(0).front() == '\'');
    }
}
